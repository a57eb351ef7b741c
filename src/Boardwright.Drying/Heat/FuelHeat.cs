using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Heat;

/// <summary>Heat that one kilogram of wood fuel, as fired, gives to the water of a boiler.</summary>
/// <remarks>
/// <para>Balance after Ince, per lb as fired, w = water as a share of the wet mass: higher value H (1 − w); less fuel water
/// w q, q = (212 − Ta) + 970.3 + 0.46 (Tf − 212); less water from hydrogen 9 · 0.06 (1 − w) q; less dry gas
/// 0.24 (1 − w)[6.1 (1 + excess) + 1 − 0.54](Tf − Ta); less 4 % for the rest. Constants from memory of the source.</para>
/// <para>Validity: fires that burn out; smouldering boilers do worse. Foresters' moisture is on the wet basis, kilns' on the dry.</para>
/// </remarks>
/// <source id="ince-1979" locator="heat balance"/>
/// <method page="docs/methods/fuel.md"/>
/// <param name="HigherKilojoulesPerKilogram">Higher heating value as fired.</param>
/// <param name="FuelWaterLoss">Spent on the water in the fuel, kJ/kg.</param>
/// <param name="HydrogenLoss">Spent on the water that hydrogen makes, kJ/kg.</param>
/// <param name="DryGasLoss">Up the chimney with dry gas, kJ/kg.</param>
/// <param name="OtherLoss">Radiation and the rest, kJ/kg.</param>
public sealed record FuelHeat(double HigherKilojoulesPerKilogram, double FuelWaterLoss, double HydrogenLoss, double DryGasLoss, double OtherLoss)
{
    /// <summary>Higher heating value of oven-dry hardwood, kJ/kg.</summary>
    public const double DryHigherKilojoulesPerKilogram = 20_000.0;

    /// <summary>1 Btu/lb in kJ/kg.</summary>
    public const double KilojoulesPerBtuPerPound = 2.326;

    private const double HydrogenShare = 0.06;
    private const double AirPerFuel = 6.1;
    private const double OtherShare = 0.04;

    /// <summary>What reaches the water.</summary>
    public double RecoverableKilojoulesPerKilogram => HigherKilojoulesPerKilogram - FuelWaterLoss - HydrogenLoss - DryGasLoss - OtherLoss;

    /// <summary>Recoverable over higher.</summary>
    public double Efficiency => RecoverableKilojoulesPerKilogram / HigherKilojoulesPerKilogram;

    /// <summary>Balance of a fuel in a fire.</summary>
    /// <param name="moisture">Of the fuel, on the oven-dry basis.</param>
    /// <param name="fire">Stack, air and excess.</param>
    /// <param name="dryHigherKilojoulesPerKilogram">Higher heating value of the oven-dry fuel.</param>
    public static FuelHeat Of(MoistureContent moisture, FireSetting fire, double dryHigherKilojoulesPerKilogram = DryHigherKilojoulesPerKilogram)
    {
        ArgumentNullException.ThrowIfNull(fire);
        var water = WetBasis(moisture);
        var dry = 1.0 - water;
        var stack = fire.Stack.Fahrenheit;
        var air = fire.Air.Fahrenheit;
        var perPoundOfWater = 212.0 - air + 970.3 + 0.46 * (stack - 212.0);
        var higher = dryHigherKilojoulesPerKilogram * dry;
        return new(
            higher,
            KilojoulesPerBtuPerPound * water * perPoundOfWater,
            KilojoulesPerBtuPerPound * 9.0 * HydrogenShare * dry * perPoundOfWater,
            KilojoulesPerBtuPerPound * 0.24 * dry * ((1.0 + fire.ExcessAir) * AirPerFuel + 1.0 - 9.0 * HydrogenShare) * (stack - air),
            OtherShare * higher);
    }

    /// <summary>Share of the wet mass that is water, from moisture content on the oven-dry basis.</summary>
    public static double WetBasis(MoistureContent moisture) => moisture.Fraction / (1.0 + moisture.Fraction);

    /// <summary>Net calorific value as received, MJ/kg: net of the heat of the vapour that leaves.</summary>
    /// <source id="iso-18125" locator="conversion to as received"/>
    /// <method page="docs/methods/fuel.md"/>
    public static double NetMegajoulesPerKilogram(double dryNetMegajoulesPerKilogram, double waterShareOfWetMass) =>
        dryNetMegajoulesPerKilogram * (1.0 - waterShareOfWetMass) - 2.443 * waterShareOfWetMass;

    /// <summary>Heat from one solid cubic metre (green volume) of fuel, kWh, for a heat per kg as fired.</summary>
    public static double KilowattHoursPerSolidCubicMetre(Species species, MoistureContent moisture, double kilojoulesPerKilogram)
    {
        ArgumentNullException.ThrowIfNull(species);
        return kilojoulesPerKilogram * 1000.0 * species.BasicSpecificGravity * (1.0 + moisture.Fraction) / 3600.0;
    }
}
