using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Pours;

/// <summary>60 mm where the label allows 50 and the model runs away (T-8, invented): no mix for it all at once, whoever signs; one for each layer.</summary>
public sealed class PourLayerTests
{
    private static readonly MixTyped Whole = new("7.30", "2.78", "3", "5", "A-26-09", "B-26-07", "Wren", Keep: true);
    private static readonly MixTyped Half = new("3.15", "1.20", "1", "5", "A-26-09", "B-26-07", "Wren", Keep: true);

    private readonly YardBook book = DemonstrationBook.Open();

    public PourLayerTests() => Done(PourSign.Write(book, "T-8", "Ivo Marl", hasRead: true, "Wren", PostedKey.None));

    [Fact]
    public void Mix_for_more_than_a_layer_may_be_is_refused_whoever_signed()
    {
        var refused = Assert.Single(Refused(PourWeigh.Write(book, "T-8", Whole, PostedKey.None)));

        Assert.Equal("Depth in one layer", refused.What);
        Assert.Contains("10.08 kg, which fill 60 mm", refused.Given, StringComparison.Ordinal);
        Assert.StartsWith("at most 50 mm in a layer (the label), so 2 layers of 30 mm, each after the one before has peaked and cooled", refused.Accepted, StringComparison.Ordinal);
        Assert.Contains("No signature lifts it", refused.Accepted, StringComparison.Ordinal);
        Assert.Empty(book.State.Pours["T-8"].Mixes);
    }

    [Fact]
    public void Two_mixes_for_one_layer_count_together()
    {
        Done(PourWeigh.Write(book, "T-8", Half, PostedKey.None));

        Assert.Contains("8.70 kg", Assert.Single(Refused(PourWeigh.Write(book, "T-8", Half, PostedKey.None))).Given, StringComparison.Ordinal);
    }

    [Fact]
    public void One_layer_is_mixed_and_poured_and_the_next_waits_until_it_has_cooled()
    {
        Done(PourWeigh.Write(book, "T-8", Half, PostedKey.None));
        Assert.StartsWith("Pour it at once", Sheet(book.Now).NextDo, StringComparison.Ordinal);
        Assert.Contains(Refused(PourFill.Write(book, "T-8", null, "Wren", PostedKey.None)), reason => reason.What == "Depth poured, mm");
        Done(PourFill.Write(book, "T-8", "30", "Wren", PostedKey.None));

        var pour = book.State.Pours["T-8"];
        Assert.Equal((30.0, false), (pour.LeftMm, pour.IsFull));
        var cool = Sheet(book.Now).Layers.CoolAt!.Value;
        Assert.InRange((cool - book.Now).TotalHours, 12.0, 120.0);
        Assert.StartsWith($"Pour the next layer, 30 mm, from {cool:ddd d MMM HH:mm}", Sheet(book.Now).NextDo, StringComparison.Ordinal);
        Assert.Contains("has not peaked and cooled", Assert.Single(Refused(PourWeigh.Write(book, "T-8", Half, PostedKey.None))).Given, StringComparison.Ordinal);
    }

    [Fact]
    public void Second_layer_goes_on_the_first_when_that_has_cooled_and_the_table_is_full()
    {
        var early = book.Now.AddDays(-6.0);
        var key = new PostedKey(null, null, $"{early:yyyy-MM-dd HH:mm}");
        Done(PourWeigh.Write(book, "T-8", Half, key));
        Done(PourFill.Write(book, "T-8", "30", "Wren", key));

        Done(PourWeigh.Write(book, "T-8", Half with { PartA = "4.1", PartB = "1.56" }, PostedKey.None));
        Done(PourFill.Write(book, "T-8", null, "Wren", PostedKey.None));

        Assert.Equal([30.0, 30.0], book.State.Pours["T-8"].Layers.Select(layer => layer.DepthMm));
        Assert.True(book.State.Pours["T-8"].IsFull);
        Assert.StartsWith("Demould from", Sheet(book.Now).NextDo, StringComparison.Ordinal);
    }

    [Fact]
    public void Layers_weighed_one_by_one_come_to_the_whole()
    {
        var pour = book.State.Pours["T-8"];
        var first = Done(Done(PourLayers.Of(book.State, pour)).NextMix(book.State, pour));

        Assert.Equal(30.0, Done(PourLayers.Fills(book.State, pour, first.Total)), 0.01);
        Assert.Equal(60.0, Done(PourLayers.Fills(book.State, pour, Done(PourModel.Mix(book.State, pour)).Total)), 0.01);
    }

    [Fact]
    public void Hot_shop_allows_less_than_the_label()
    {
        var pour = book.State.Pours["T-5"];
        var shop = Done(PourShop.For(book.State, pour, "30 30 30 30 30 30 30 30"));
        var layers = PourLayers.Of(pour, Done(PourCure.For(book.State, pour, shop)));

        Assert.True(layers.MostMm < 45.0);
        Assert.Contains("passes 60 °C in this shop", layers.Words(pour), StringComparison.Ordinal);
        Assert.Contains(Done(PourSheet.Of(book.State, "T-5", "30 30 30 30 30 30 30 30")).Faults, fault => fault.Contains("too deep for one pour", StringComparison.Ordinal));
    }

    [Fact]
    public void Cold_is_not_offered_where_the_label_forbids_the_depth()
    {
        var said = string.Join(' ', Sheet(book.Now).Advice);

        Assert.Contains("This is a runaway", said, StringComparison.Ordinal);
        Assert.DoesNotContain("colder", said, StringComparison.Ordinal);
        Assert.Contains("No signature lifts this", Assert.Single(Sheet(book.Now).Faults), StringComparison.Ordinal);
    }

    [Fact]
    public void Table_weighed_off_ratio_has_no_forecast()
    {
        var sheet = Done(PourSheet.Of(book.State, "Q-4", null));

        Assert.True(sheet.WillNotCure);
        Assert.Empty(sheet.CureFigures);
        Assert.Contains("will not cure", Assert.Single(sheet.Advice), StringComparison.Ordinal);
        Assert.NotEmpty(Done(PourSheet.Of(book.State, "Q-3", null)).CureFigures);
    }

    private PourSheet Sheet(DateTime now) => Done(PourSheet.Of(book.State, "T-8", null, null, now));

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(
        outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");

    private static IReadOnlyList<Refusal> Refused(Outcome<IReadOnlyList<Entry>> written) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(written).Reasons;
}
