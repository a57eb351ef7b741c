using Boardwright.Quantities;

namespace Boardwright.Wood.Tests;

public sealed class SpeciesTableTests
{
    [Theory]
    [InlineData("sugar maple", "sugar maple")]
    [InlineData("SUGAR  Maple ", "sugar maple")]
    [InlineData("Acer saccharum", "sugar maple")]
    [InlineData("hard maple", "sugar maple")]
    [InlineData("quercus alba", "white oak")]
    [InlineData("basswood", "American basswood")]
    [InlineData("sycamore", "American sycamore")]
    [InlineData("Quercus prinus", "chestnut oak")]
    [InlineData("sug", "sugar maple")]
    [InlineData("white oak", "white oak")]
    [InlineData("northern r", "northern red oak")]
    [InlineData("red oak", "northern red oak")]
    [InlineData("Walnut", "black walnut")]
    [InlineData("beech", "American beech")]
    public void A_species_is_found_by_any_of_its_names_or_an_unambiguous_beginning(string text, string expected) =>
        Assert.Equal(expected, Assert.IsType<Outcome<Species>.Done>(SpeciesTable.Find("species", text)).Value.CommonName);

    [Theory]
    [InlineData("white", "white oak")]
    [InlineData("oak", "northern red oak")]
    [InlineData("locust", "honeylocust, black locust")]
    [InlineData("aple", "sugar maple")]
    [InlineData("sugr maple", "sugar maple")]
    [InlineData("acer", "red maple")]
    [InlineData("", "such as")]
    [InlineData("teak", "none is near")]
    public void A_name_that_is_not_one_species_is_refused_with_near_names(string text, string named)
    {
        var reason = Assert.Single(Assert.IsType<Outcome<Species>.Refused>(SpeciesTable.Find("--species", text)).Reasons);

        Assert.Equal("--species", reason.What);
        Assert.Equal(text, reason.Given);
        Assert.Contains(named, reason.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_name_of_the_table_finds_its_own_species()
    {
        Assert.Equal(60, SpeciesTable.All.Count);
        foreach (var species in SpeciesTable.All)
        {
            foreach (var name in new[] { species.CommonName, species.ScientificName }.Concat(species.AlsoCalled))
                Assert.Equal(species, Assert.IsType<Outcome<Species>.Done>(SpeciesTable.Find("species", name)).Value);
        }
    }

    [Fact]
    public void Numbers_of_the_table_are_possible_wood()
    {
        foreach (var species in SpeciesTable.All)
        {
            Assert.InRange(species.BasicSpecificGravity, 0.25, 0.85);
            Assert.NotEmpty(species.Source);
            Assert.Contains(species.Mark, new[] { "P", "M" });
            if (species.ShrinkageRadialPercent is { } radial && species.ShrinkageTangentialPercent is { } tangential)
                Assert.InRange(tangential / radial, 1.2, 3.0);
        }
    }
}
