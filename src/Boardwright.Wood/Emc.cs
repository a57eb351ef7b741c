using Boardwright.Numerics;
using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Equilibrium moisture content: where wood neither gains nor loses water in steady air.</summary>
/// <remarks>
/// <para>Equation (Hailwood-Horrobin, two hydrates), h relative humidity as a fraction, T in C:
/// M = 1800/W [ Kh/(1 - Kh) + (K1 K h + 2 K1 K2 K² h²)/(1 + K1 K h + K1 K2 K² h²) ] percent, with
/// W = 349 + 1.29 T + 0.0135 T², K = 0.805 + 0.000736 T - 0.00000273 T², K1 = 6.27 - 0.00938 T - 0.000303 T², K2 = 1.91 + 0.0407 T - 0.000293 T².</para>
/// <para>Validity: -1 to 132 C as tabulated; colder air down to -40 C is extrapolated. Air at ordinary pressure; not superheated
/// steam. Above 95 % humidity unreliable. Species, hysteresis, stress and earlier heating are not in the equation.</para>
/// <para>Accuracy: within 0.06 % moisture content of every cell of table 4-2.</para>
/// </remarks>
/// <source id="fpl-wood-handbook-2021" locator="eq. 4-5"/>
/// <source id="fpl-wood-handbook-2010" locator="table 4-2"/>
/// <method page="docs/methods/emc.md"/>
public static class Emc
{
    internal const double MinCelsius = -40.0;

    internal const double MaxCelsius = 132.3;

    /// <summary>Coldest air the equation is used for; below -1 C it is extrapolated.</summary>
    public static Temperature Min => Temperature.FromCelsius(MinCelsius);

    /// <summary>Hottest air the equation is used for: 270 F, the end of the table.</summary>
    public static Temperature Max => Temperature.FromCelsius(MaxCelsius);

    /// <summary>Equilibrium moisture content in air of this temperature and humidity.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -40 to 132.3 C.</exception>
    public static MoistureContent At(Temperature dryBulb, RelativeHumidity humidity) =>
        MoistureContent.Trusted(Percent(Checked(dryBulb), humidity.Fraction) / 100.0);

    /// <summary>Relative humidity that holds wood at this moisture content.</summary>
    /// <returns>The humidity, or null when even saturated air holds the wood drier than that.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside -40 to 132.3 C.</exception>
    public static RelativeHumidity? HumidityFor(Temperature dryBulb, MoistureContent moisture)
    {
        var celsius = Checked(dryBulb);
        var saturated = At(dryBulb, RelativeHumidity.FromFraction(1.0));
        if (moisture >= saturated)
            return moisture == saturated ? RelativeHumidity.FromFraction(1.0) : null;

        // The equation rises from 0 with the humidity, so the ends always bracket the root.
        var humidity = Root.Between(h => Percent(celsius, h) - moisture.Percent, 0.0, 1.0, 1e-13);
        return RelativeHumidity.FromFraction(Math.Clamp(humidity ?? 0.0, 0.0, 1.0));
    }

    /// <summary>Kernel of <see cref="At"/>: percent of oven-dry mass at degrees Celsius and humidity as a fraction, 0 to 1, unchecked.</summary>
    public static double Percent(double celsius, double humidityFraction)
    {
        var w = 349.0 + (1.29 + 0.0135 * celsius) * celsius;
        var kh = (0.805 + (0.000736 - 0.00000273 * celsius) * celsius) * humidityFraction;
        var k1 = 6.27 - (0.00938 + 0.000303 * celsius) * celsius;
        var k2 = 1.91 + (0.0407 - 0.000293 * celsius) * celsius;
        var first = k1 * kh;
        var second = k1 * k2 * kh * kh;
        return 1800.0 / w * (kh / (1.0 - kh) + (first + 2.0 * second) / (1.0 + first + second));
    }

    internal static double Checked(Temperature dryBulb) => dryBulb.Celsius is >= MinCelsius and <= MaxCelsius
        ? dryBulb.Celsius
        : throw new ArgumentOutOfRangeException(nameof(dryBulb), dryBulb.Celsius, "Accepted: -40 to 132.3 C.");
}
