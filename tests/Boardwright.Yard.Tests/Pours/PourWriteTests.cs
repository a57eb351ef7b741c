using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Pours;

/// <summary>Writing a pour, step by step, as typed.</summary>
public sealed class PourWriteTests
{
    private static readonly MixTyped Right = new("5.06", "1.92 kg", "2", "5", "A-26-09", "B-26-07", "Wren", Keep: true);

    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public void A_mix_is_kept_with_what_was_typed_and_taken_from_stock()
    {
        var before = book.State.Resins["slow casting"].PartB!.OnHand.Kilograms;

        var entry = Done(PourWeigh.Write(book, "T-1", Right, PostedKey.None))[0];

        Assert.Equal("1.92 kg", entry.Typed("part_b_kg"));
        Assert.Equal(5.06, book.State.Pours["T-1"].Mixes[0].PartA.Kilograms, 1e-9);
        Assert.Equal(before - 1.92, book.State.Resins["slow casting"].PartB!.OnHand.Kilograms, 1e-9);
    }

    [Fact]
    public void Weighings_off_ratio_are_asked_about_and_written_only_as_weighed()
    {
        var off = Right with { PartB = "2.60", Keep = false };
        Today("T-7");

        var reasons = Refused(PourWeigh.Write(book, "T-7", off, PostedKey.None));
        var refused = Assert.Single(reasons);
        Assert.True(Question.Asks(reasons));
        Done(PourWeigh.Write(book, "T-7", off with { Keep = true }, PostedKey.None));

        Assert.Equal("Ratio", refused.What);
        Assert.Contains("1.92 kg of B", refused.Accepted, StringComparison.Ordinal);
        Assert.Equal(2.60, book.State.Pours["T-7"].Mixes[0].PartB.Kilograms, 1e-9);
    }

    [Fact]
    public void Every_wrong_field_is_named_at_once()
    {
        var refusals = Refused(PourWeigh.Write(book, "T-1", new("much", "", "0", "5", "", "B-1", "Nobody", false), PostedKey.None));

        Assert.Equal(["Part A, kg", "Part B, kg", "Buckets", "Lot of part A", "Who"], refusals.Select(refusal => refusal.What));
    }

    [Fact]
    public void An_old_lot_is_asked_about()
    {
        Today("T-7");
        Done(book.Write("Wren", new ResinCounted("slow casting", ResinPart.B, 3.0, "B-25-01", new(2026, 6, 30))));

        Assert.Equal("Lot B-25-01", Assert.Single(Refused(PourWeigh.Write(book, "T-7", Right with { LotB = "B-25-01", Keep = false }, PostedKey.None))).What);
    }

    [Fact]
    public void Mix_for_another_day_of_wood_still_wet_and_a_lot_nobody_counted_is_asked_about()
    {
        var before = book.State.Resins["slow casting"].PartB!.OnHand.Kilograms;
        var odd = new MixTyped("5.67", "2.16", "2", "5", "A-26-09", "B-99", "Wren");

        var reasons = Refused(PourWeigh.Write(book, "T-5", odd, PostedKey.None));
        Assert.True(Question.Asks(reasons));
        Assert.Equal(["Lot of part B", "Another day", "Wood of S-21"], reasons.Select(reason => reason.What));
        Assert.Empty(book.State.Pours["T-5"].Mixes);

        Done(PourWeigh.Write(book, "T-5", odd with { Keep = true }, PostedKey.None));
        Assert.Equal(before, book.State.Resins["slow casting"].PartB!.OnHand.Kilograms, 1e-9);
        Assert.Equal("B-99", book.State.Pours["T-5"].Mixes[0].LotB);
    }

    [Fact]
    public void Mix_past_its_gel_time_has_set_in_the_bucket_and_is_not_poured()
    {
        Done(PourWeigh.Write(book, "T-1", Right, PostedKey.None));
        Assert.StartsWith("Pour it at once", Sheet("T-1", book.Now.AddHours(1.0)).NextDo, StringComparison.Ordinal);

        var later = book.Now.AddDays(3.0);
        Assert.Contains("set in the bucket", Sheet("T-1", later).NextDo, StringComparison.Ordinal);
        var (liquid, set) = PourBucket.Of(book.State, book.State.Pours["T-1"], later);
        Assert.Empty(liquid);
        Assert.Single(set);

        // What was mixed yesterday and is typed in as poured now.
        var old = DemonstrationBook.Open();
        Done(old.Write([new NewEntry("Wren", new ResinMixed("T-1", 5.06, 1.92, 2, 5.0, "A-26-09", "B-26-07"), old.Now.AddDays(-2.0))]));
        Assert.Contains("fresh mix", Assert.Single(Refused(PourFill.Write(old, "T-1", null, "Wren", PostedKey.None))).Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_form_that_arrives_twice_is_kept_once()
    {
        var key = new PostedKey("01931000-0000-7000-8000-0000000000aa", null);

        var first = Done(PourWeigh.Write(book, "T-1", Right, key))[0];
        var again = Done(PourWeigh.Write(book, "T-1", Right, key))[0];

        Assert.Equal(first.Number, again.Number);
        Assert.Single(book.State.Pours["T-1"].Mixes);
    }

    [Fact]
    public void A_form_that_waited_on_a_phone_keeps_its_time()
    {
        Done(PourWarmth.Write(book, "17.5", null, "Wren", new(null, "7200")));

        Assert.Equal(17.5, book.State.ShopC[book.Now.AddHours(-2.0)]);
    }

    [Theory]
    [InlineData("64F", "7:05", 17.78)]
    [InlineData("18 C", "21:30", 18.0)]
    public void Shop_temperature_takes_either_unit_and_an_hour_of_today(string typed, string hour, double celsius)
    {
        Done(PourWarmth.Write(book, typed, hour, "Wren", PostedKey.None));

        Assert.Equal(celsius, book.State.ShopC[book.State.Today.ToDateTime(TimeOnly.Parse(hour, System.Globalization.CultureInfo.InvariantCulture))], 0.01);
    }

    [Fact]
    public void Nothing_is_poured_before_it_is_weighed_nor_demoulded_before_it_is_poured()
    {
        Assert.Contains(Refused(PourFill.Write(book, "T-1", null, "Wren", PostedKey.None)), refusal => refusal.Given == "nothing weighed yet");
        Assert.Contains(Refused(PourDemould.Write(book, "T-1", PourDemould.Sights[0], null, "Wren", PostedKey.None)), refusal => refusal.Given == "not poured");
    }

    [Fact]
    public void A_table_moved_to_another_day_leaves_enough_for_the_class()
    {
        Done(PourMove.Write(book, "T-8", "2026-12-19", "2026-12-26", "wood at 13.8 %, to be dried", "Wren", PostedKey.None));

        Assert.True(Done(PourModel.Stock(book.State, "slow casting")).IsEnough);
        Assert.Equal(new DateOnly(2026, 12, 19), book.State.Pours["T-8"].PourOn);
        Assert.DoesNotContain(MorningSheet.For(book.State, "Wren").Tasks, task => task.Do.StartsWith("Order", StringComparison.Ordinal));
    }

    [Fact]
    public void Odd_days_of_a_pour_are_refused_each()
    {
        Assert.Equal(["Pour on", "Demould on", "Why"], Refused(PourMove.Write(book, "T-8", "soon", "19.12.", " ", "Wren", PostedKey.None)).Select(refusal => refusal.What));
        Assert.Equal(["Demould on"], Refused(PourMove.Write(book, "T-8", "2026-12-19", "2026-12-12", "later", "Wren", PostedKey.None)).Select(refusal => refusal.What));
        Assert.Equal(["Pour on"], Refused(PourMove.Write(book, "T-8", "2026-10-01", "2026-12-12", "earlier", "Wren", PostedKey.None)).Select(refusal => refusal.What));
    }

    [Fact]
    public void A_table_goes_from_mix_to_out_of_its_mould()
    {
        Done(PourWeigh.Write(book, "T-1", Right, PostedKey.None));
        Done(PourFill.Write(book, "T-1", "41", "Wren", PostedKey.None));
        Done(PourDemould.Write(book, "T-1", "soft all over", "no bubbles", "Wren", PostedKey.None));

        var pour = book.State.Pours["T-1"];
        Assert.NotNull(pour.PouredAt);
        Assert.Equal("soft all over; no bubbles", pour.Seen);
        Assert.NotNull(Done(PourSheet.Of(book.State, "T-1", null)).Soft);
    }

    private PourSheet Sheet(string tag, DateTime now) => Done(PourSheet.Of(book.State, tag, null, null, now));

    private void Today(string tag) => Done(PourMove.Write(book, tag, "2026-11-02", "2026-11-09", "a free day", "Wren", PostedKey.None));

    private static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;

    private static IReadOnlyList<Refusal> Refused<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Refused>(outcome).Reasons;
}
