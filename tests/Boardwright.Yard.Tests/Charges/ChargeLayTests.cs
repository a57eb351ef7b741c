using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

public sealed class ChargeLayTests
{
    [Fact]
    public void Stacks_for_a_kiln_are_laid_with_their_stickers_and_what_stays_open()
    {
        var lay = Laid("K2", "S-07", "S-01", "S-05");

        Assert.Empty(lay.Layout.Over);
        Assert.Equal("S-05", lay.Layout.Places[0].From[0].Name); // 5/4 under 4/4
        Assert.Equal(["S-01", "S-05", "S-07"], lay.Layout.Places.SelectMany(place => place.From).Select(part => part.Name).Distinct().Order());
        Assert.Equal(
            new[] { "S-07", "S-01", "S-05" }.Sum(tag => DemonstrationBook.Yard.Stacks[tag].Footage.Count),
            lay.Layout.Places.Sum(place => place.Footage.Count), 1e-6);
        Assert.Equal(["Stickers", "Heaviest place", "Room left empty"], lay.Figures.Select(figure => figure.Label));
        Assert.Contains(lay.Minds, mind => mind.Contains("one thickness", StringComparison.Ordinal));
    }

    [Fact]
    public void A_press_takes_no_stickers_and_its_plates_are_named()
    {
        var lay = Laid("K3", "S-19");

        Assert.DoesNotContain(lay.Figures, figure => figure.Label == "Stickers");
        Assert.Contains(lay.Minds, mind => mind.Contains("opposite polarity", StringComparison.Ordinal));
    }

    [Fact]
    public void Load_heavier_than_the_kiln_carries_is_named()
    {
        var yard = DemonstrationBook.Yard;
        var light = Assert.IsType<Outcome<ChargeLay>.Done>(ChargeLay.Of(yard, "K3", ["S-19"])).Value;
        var carries = light.Weights.Sum(weight => weight.Kilograms);
        var weak = yard with { Kilns = yard.Kilns.SetItem("K3", yard.Kilns["K3"] with { Installed = yard.Kilns["K3"].Installed with { LoadMaxKg = carries - 1.0 } }) };
        var lay = Assert.IsType<Outcome<ChargeLay>.Done>(ChargeLay.Of(weak, "K3", ["S-19"])).Value;

        Assert.DoesNotContain(light.Minds, mind => mind.Contains("carries", StringComparison.Ordinal));
        Assert.Contains(lay.Minds, mind => mind.StartsWith($"It weighs {carries:#,0} kg; K3 carries {carries - 1.0:#,0}", StringComparison.Ordinal));
        Assert.Contains("of 2,400 that K3 carries", light.Figures.Single(figure => figure.Label == "Heaviest place").Basis, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("K9", "S-07", "K1, K2, K3")]
    [InlineData("K1", "S-99", "a stack of the book")]
    [InlineData("K1", "", "at least one stack")]
    public void What_is_not_in_the_book_is_refused_with_what_is(string kiln, string stacks, string accepted)
    {
        var refused = Assert.IsType<Outcome<ChargeLay>.Refused>(ChargeLay.Of(DemonstrationBook.Yard, kiln, stacks.Split(',', StringSplitOptions.RemoveEmptyEntries)));

        Assert.Contains(accepted, Assert.Single(refused.Reasons).Accepted, StringComparison.Ordinal);
    }

    private static ChargeLay Laid(string kiln, params string[] stacks) => Assert.IsType<Outcome<ChargeLay>.Done>(ChargeLay.Of(DemonstrationBook.Yard, kiln, stacks)).Value;
}
