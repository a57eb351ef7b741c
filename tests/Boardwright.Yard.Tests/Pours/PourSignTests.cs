using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Pours;

/// <summary>A student's wood at 13.8 % (T-8, invented): warned in words, allowed with a signature that stays with the pour.</summary>
public sealed class PourSignTests
{
    private static readonly MixTyped Mix = new("5.00", "1.90", "2", "5", "A-26-09", "B-26-07", "Wren", Keep: true);

    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public void Wood_too_wet_is_not_mixed_for_or_poured_without_a_signature()
    {
        var refused = Assert.Single(Refused(PourWeigh.Write(book, "T-8", Mix, PostedKey.None)));

        Assert.Equal("Signature", refused.What);
        Assert.Contains("13.8 % is too wet", refused.Accepted, StringComparison.Ordinal);
        Assert.Contains(Refused(PourFill.Write(book, "T-8", null, "Wren", PostedKey.None)), reason => reason.What == "Signature");
    }

    [Fact]
    public void A_signature_lets_it_go_on_and_stays_with_the_pour()
    {
        Done(PourSign.Write(book, "T-8", "Ivo Marl", hasRead: true, "Wren", PostedKey.None));

        Done(PourWeigh.Write(book, "T-8", Mix, PostedKey.None));
        Done(PourFill.Write(book, "T-8", "40", "Wren", PostedKey.None));

        var signed = book.State.Pours["T-8"].RiskSigned!;
        Assert.Equal(("Ivo Marl", "Wren"), (signed.By, signed.Witness));
        Assert.Contains("13.8 %", signed.Warning, StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_can_be_signed_for_depth_cannot()
    {
        Done(PourSign.Write(book, "T-8", "Ivo Marl", hasRead: true, "Wren", PostedKey.None));

        var sheet = Assert.IsType<Outcome<PourSheet>.Done>(PourSheet.Of(book.State, "T-8", null)).Value;

        Assert.Null(sheet.ToSign);
        Assert.Contains("too deep", Assert.Single(sheet.Faults), StringComparison.Ordinal);
        Assert.DoesNotContain("shrinks away", Assert.Single(MorningSheet.For(book.State, null).Tasks, task => task.At == "T-8" && task.Do.Contains("cannot be poured", StringComparison.Ordinal)).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_signature_is_under_one_warning_and_not_under_another()
    {
        Done(PourSign.Write(book, "T-8", "Ivo Marl", hasRead: true, "Wren", PostedKey.None));
        var plan = book.State.Entries.Last(entry => entry.Fact is PourPlanned { Pour: "T-8" });
        var wetter = (PourPlanned)plan.Fact;
        Done(book.Write([new NewEntry("Wren", wetter with { Pieces = [.. wetter.Pieces.Select(piece => piece with { McPct = 14.9 })] }, Corrects: plan.Number, Reason: "read again")]));

        Assert.Contains("one for another warning", Assert.Single(Refused(PourWeigh.Write(book, "T-8", Mix, PostedKey.None))).Given, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("T-8", "", true, "Signed by")]
    [InlineData("T-8", "Ivo Marl", false, "Warning")]
    [InlineData("T-1", "Ivo Marl", true, "T-1")]
    [InlineData("T-99", "Ivo Marl", true, "T-99")]
    public void A_signature_needs_a_name_a_tick_and_a_warning(string tag, string name, bool hasRead, string what) =>
        Assert.Equal(what, Assert.Single(Refused(PourSign.Write(book, tag, name, hasRead, "Wren", PostedKey.None))).What);

    [Fact]
    public void Taken_out_the_signature_does_not_count_any_more()
    {
        var signed = Done(PourSign.Write(book, "T-8", "Ivo Marl", hasRead: true, "Wren", PostedKey.None))[0];

        Done(EntryCorrect.Withdraw(book, signed.Number, "Wren", "changed their mind"));

        Assert.Contains(Refused(PourWeigh.Write(book, "T-8", Mix, PostedKey.None)), reason => reason.What == "Signature");
    }

    private static IReadOnlyList<Entry> Done(Outcome<IReadOnlyList<Entry>> written) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(written).Value;

    private static IReadOnlyList<Refusal> Refused(Outcome<IReadOnlyList<Entry>> written) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(written).Reasons;
}
