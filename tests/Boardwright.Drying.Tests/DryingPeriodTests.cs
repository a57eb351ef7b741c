using Boardwright.Testing;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests;

public class DryingPeriodTests
{
    [Theory]
    [InlineData("sugar maple")]
    [InlineData("northern red oak")]
    [InlineData("American sycamore")]
    public void Yard_coefficient_is_what_its_rule_gives(string species)
    {
        var row = PublishedTable.Rows("air-drying").Single(row => row.Quantity == "air_period_days" && row.Text("species") == species);

        Assert.Equal(1.0, DryingCoefficients.For(Given.Species(species)).AirM2PerS / Fit.Air(row), 0.02);
    }

    [Theory]
    [InlineData("black walnut")]
    [InlineData("white oak")]
    [InlineData("yellow-poplar")]
    public void Kiln_coefficient_is_what_its_rule_gives(string species)
    {
        var rows = PublishedTable.Rows("air-drying").Where(row => row.Quantity == "kiln_period_days" && row.Text("species") == species).ToList();

        Assert.Equal(1.0, DryingCoefficients.For(Given.Species(species)).KilnM2PerS / Fit.Kiln(rows), 0.02);
    }

    [Fact]
    public void Wood_without_a_period_follows_its_gravity_and_says_so()
    {
        var sassafras = DryingCoefficients.For(Given.Species("sassafras"));

        Assert.Equal("C", sassafras.Mark);
        Assert.True(sassafras.AirSpread > DryingCoefficients.For(Given.Species("sugar maple")).AirSpread);
        Assert.All(SpeciesTable.All, species => Assert.InRange(DryingCoefficients.For(species).AirM2PerS, 1e-11, 2e-10));
    }
}
