using Boardwright.Quantities;

namespace Boardwright.Wood.Tests;

public sealed class WoodHeatTests
{
    [Fact]
    public void Conductivity_of_a_species_takes_its_gravity_at_that_moisture()
    {
        // A worked value of the same equation: Gb 0.54, shrinkage of volume 12.3 %, 10 % moisture.
        var wood = Expect.Species("American elm") with { BasicSpecificGravity = 0.54, ShrinkageVolumetricPercent = 12.3 };

        Assert.Equal(0.1567, WoodHeat.Conductivity(wood, MoistureContent.FromPercent(10)), 0.00005);
    }

    [Fact]
    public void Conductivity_differs_from_the_inch_pound_print_of_the_equation_by_its_rounding_only()
    {
        // Printed beside the SI constants: k = G (1.34 + 0.028 x) + 0.129 Btu in/(h ft² F). The two roundings part by 0.45 %.
        const double WattsPerMetreKelvin = 1055.05585262 * 0.0254 / (3600.0 * 0.09290304 / 1.8);
        var printed = (0.60 * (1.34 + 0.028 * 12.0) + 0.129) * WattsPerMetreKelvin;

        Assert.Equal(1.0, WoodHeat.ConductivityAt(0.60, 12.0) / printed, 0.005);
    }

    [Fact]
    public void Specific_heat_is_continuous_at_fibre_saturation_and_goes_to_that_of_water()
    {
        var warm = Temperature.FromCelsius(50);

        Assert.Equal(WoodHeat.SpecificHeat(warm, MoistureContent.FromPercent(29.9999)), WoodHeat.SpecificHeat(warm, MoistureContent.FromPercent(30.0001)), 0.1);
        Assert.InRange(WoodHeat.SpecificHeat(warm, MoistureContent.FromPercent(400)), 3500.0, 4180.0);
    }

    [Fact]
    public void Mean_heat_of_sorption_is_the_average_of_the_differential_heat()
    {
        var warm = Temperature.FromCelsius(60);
        var saturation = MoistureContent.FromPercent(30);
        const int Steps = 7200;
        var sum = 0.0;
        for (var step = 0; step < Steps; step++)
            sum += HeatOfSorption.KilojoulesPerKilogram(warm, MoistureContent.FromPercent(8.0 + 72.0 * (step + 0.5) / Steps), saturation);

        var mean = HeatOfSorption.MeanKilojoulesPerKilogram(warm, MoistureContent.FromPercent(80), MoistureContent.FromPercent(8), saturation);

        Assert.Equal(sum / Steps, mean, 1e-4);
        Assert.InRange(mean / MoistAir.LatentHeatKilojoulesPerKilogram(60), 0.018, 0.025);
    }

    [Fact]
    public void Free_water_needs_no_heat_of_sorption() =>
        Assert.Equal(0.0, HeatOfSorption.KilojoulesPerKilogram(Temperature.FromCelsius(60), MoistureContent.FromPercent(45), MoistureContent.FromPercent(30)));

    [Fact]
    public void The_two_fits_of_the_heat_of_sorption_differ_as_documented()
    {
        Assert.Equal(289.0, HeatOfSorption.SkaarKilojoulesPerKilogram(MoistureContent.FromPercent(10)), 1.0);
        Assert.Equal(420.0, HeatOfSorption.KilojoulesPerKilogram(Temperature.FromCelsius(60), MoistureContent.FromPercent(10), MoistureContent.FromPercent(30)), 1.0);
    }
}
