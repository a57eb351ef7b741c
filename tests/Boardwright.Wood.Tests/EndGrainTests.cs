namespace Boardwright.Wood.Tests;

/// <summary>The key of end grains. Its features are from memory of textbooks (mark M): these tests hold the key together, they are no check of botany.</summary>
public class EndGrainTests
{
    [Fact]
    public void Every_wood_of_the_key_is_a_species_of_the_table_by_that_name() =>
        Assert.All(EndGrain.All, one => Assert.Equal(one.Species, Assert.IsType<Quantities.Outcome<Species>.Done>(SpeciesTable.Find("species", one.Species)).Value.CommonName));

    [Fact]
    public void Ring_porous_woods_have_rows_of_large_pores_and_no_others_do() =>
        Assert.All(EndGrain.All, one => Assert.Equal(one.Pores == PoreZone.Ring, one.LargeRows > 0));

    // Red and white oak: plugs, flames against single pores, colour; wavy bands with one row or several: elm and hackberry (wood-anatomy-texts, from memory).
    [Theory]
    [InlineData("white oak", "northern red oak", "Plugs in pores")]
    [InlineData("white oak", "northern red oak", "Latewood")]
    [InlineData("American elm", "hackberry", "Pores")]
    [InlineData("American elm", "hackberry", "Rays")]
    [InlineData("sugar maple", "silver maple", "Rays")]
    [InlineData("American basswood", "yellow birch", "Rays")]
    public void Woods_that_are_taken_for_each_other_differ_where_the_lens_is_told_to_look(string one, string other, string feature)
    {
        Assert.Contains(Of(one).Differences(Of(other)), difference => difference.Feature == feature);
        Assert.Contains(Of(other).Differences(Of(one)), difference => difference.Feature == feature);
    }

    [Fact]
    public void Oaks_are_alike_in_rays_and_rings_and_those_are_not_listed() =>
        Assert.DoesNotContain(Of("white oak").Differences(Of("northern red oak")), difference => difference.Feature is "Rays" or "Rings");

    [Fact]
    public void Every_wood_has_a_tell_of_its_own() => Assert.Equal(EndGrain.All.Count, EndGrain.All.Select(one => one.Tell).Distinct().Count());

    private static EndGrain Of(string species) => EndGrain.All.Single(one => one.Species == species);
}
