using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Wood.Tests;

public sealed class DensityTests
{
    public static IEnumerable<object[]> OfSpecies => PublishedTable.Theory("density", "density_kg_per_m3").Where(row => ((PublishedRow)row[0]).Has("species"));

    [Theory, MemberData(nameof(OfSpecies))]
    public void Density_of_a_species_agrees(PublishedRow row)
    {
        var species = Expect.Species(row.Text("species"));

        Assert.Equal(row["sg_green"], species.BasicSpecificGravity);
        Assert.Equal(row["shrinkage_volumetric_pct"], species.ShrinkageVolumetricPercent);
        row.Agrees(WoodDensity.At(species, row.Moisture("mc_pct")).KilogramsPerCubicMetre);
    }

    [Fact]
    public void Wood_tallied_green_weighs_as_the_shrunken_wood_does()
    {
        var oak = Expect.Species("northern red oak");
        var dry = MoistureContent.FromPercent(7);
        var shrunken = Volume.FromCubicMetres(Shrinkage.Ratio(13.7, oak.ShrinkageStart, MoistureContent.FromPercent(80), dry));

        Assert.Equal(WoodWeight.Of(oak, dry, shrunken).Kilograms, WoodWeight.OfGreenVolume(oak, dry, Volume.FromCubicMetres(1)).Kilograms, 1e-9);
    }

    [Fact]
    public void Every_species_gets_heavier_with_water_and_never_wetter_than_its_cells_hold()
    {
        foreach (var species in SpeciesTable.All)
        {
            var maximum = MoistureLimits.Maximum(species).Percent;
            Assert.True(MoistureLimits.Sinking(species).Percent < maximum);
            Assert.InRange(species.GreenMoistureAverage?.Percent ?? 0.0, 0.0, maximum);
            for (var percent = 0.0; percent < maximum; percent += 5.0)
                Assert.True(WoodDensity.At(species, MoistureContent.FromPercent(percent + 1.0)) > WoodDensity.At(species, MoistureContent.FromPercent(percent)));

            Assert.Equal(1000.0, WoodDensity.At(species, MoistureLimits.Sinking(species)).KilogramsPerCubicMetre, species.BasicSpecificGravity < 0.76 ? 1e-6 : 20.0);
        }
    }

    [Fact]
    public void Weight_leads_back_to_the_moisture_and_what_no_such_wood_weighs_is_refused()
    {
        var cherry = Expect.Species("black cherry");
        var green = Volume.FromCubicMetres(2.0);

        Assert.Equal(33.0, Expect.Done(WoodWeight.MoistureOf(cherry, WoodWeight.OfGreenVolume(cherry, MoistureContent.FromPercent(33), green), green)).Percent, 1e-9);
        Assert.Equal("weight", Expect.Refused(WoodWeight.MoistureOf(cherry, Mass.FromKilograms(900), green)).What);
        Assert.Equal("weight", Expect.Refused(WoodWeight.MoistureOf(cherry, Mass.FromKilograms(2400), green)).What);
    }

    [Fact]
    public void A_species_without_printed_shrinkage_of_volume_takes_the_estimate() =>
        Assert.Equal(26.5 * 0.52, WoodDensity.VolumetricPercent(Expect.Species("red mulberry")), 1e-12);

    [Fact]
    public void Wood_in_a_liquid_is_pushed_up_by_the_difference_of_densities()
    {
        var held = Expect.Done(Flotation.Of(Density.FromKilogramsPerCubicMetre(600), Density.FromKilogramsPerCubicMetre(1100), Volume.FromLitres(10)));

        Assert.Equal(5.0, held.HoldDown.Kilograms, 1e-12);
        Assert.Equal(49.03325, held.BuoyancyNewtons, 1e-9);
        Assert.Equal(600.0 / 1100.0, held.SubmergedFraction, 1e-12);
    }

    [Fact]
    public void Wood_that_sinks_needs_no_weight_and_is_wholly_under()
    {
        var sunk = Expect.Done(Flotation.Of(Density.FromKilogramsPerCubicMetre(1150), Density.FromKilogramsPerCubicMetre(1000), Volume.FromLitres(2)));

        Assert.Equal(-2.941995, sunk.BuoyancyNewtons, 1e-9);
        Assert.Equal(0.0, sunk.HoldDown.Kilograms);
        Assert.Equal(1.0, sunk.SubmergedFraction);
    }

    [Fact]
    public void Floating_in_no_liquid_is_refused() =>
        Assert.Equal("liquid-density", Expect.Refused(Flotation.Of(Density.FromKilogramsPerCubicMetre(600), default, Volume.FromLitres(1))).What);

    [Fact]
    public void Weights_add_up_with_volume() => Gen.Select(Gen.Double[0.01, 10.0], Gen.Double[0.01, 10.0], Gen.Double[0.0, 100.0]).Always(
        (one, other, percent) =>
        {
            var elm = Expect.Species("American elm");
            var moisture = MoistureContent.FromPercent(percent);
            var apart = WoodWeight.Of(elm, moisture, Volume.FromCubicMetres(one)) + WoodWeight.Of(elm, moisture, Volume.FromCubicMetres(other));
            Assert.Equal(apart.Kilograms, WoodWeight.Of(elm, moisture, Volume.FromCubicMetres(one + other)).Kilograms, 1e-6);
        },
        draws: 200);
}
