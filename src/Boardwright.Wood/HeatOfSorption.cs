using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Heat needed beyond the latent heat of free water to take bound water out of wood.</summary>
/// <remarks>
/// <para>Equation: differential heat 0.4 hfg (1 - M/Ms)² below the fibre saturation Ms, none above; hfg = 2501 - 2.326 t kJ/kg, t in C.</para>
/// <para>A second fit, 1170 exp(-0.14 M) kJ/kg with M in percent, gives 289 where the first gives 420 (10 %, 60 C): the literature is no surer
/// than that. Over drying from 80 to 8 % the extra is about 2 % of the heat of evaporation. It must not be got by differentiating the
/// sorption equation over temperature.</para>
/// </remarks>
/// <source id="stanish-1986" locator="differential heat of sorption"/>
/// <source id="skaar-1988" locator="fit to Weichert's data"/>
/// <method page="docs/methods/wood-heat.md"/>
public static class HeatOfSorption
{
    private const double Share = 0.4;

    /// <summary>Differential heat at a moisture content, kJ per kg of water.</summary>
    /// <param name="temperature">Of the wood.</param>
    /// <param name="moisture">Of the wood.</param>
    /// <param name="saturation">Fibre saturation, above 0; usually 30 %.</param>
    public static double KilojoulesPerKilogram(Temperature temperature, MoistureContent moisture, MoistureContent saturation)
    {
        var dryness = 1.0 - Math.Min(moisture.Fraction / saturation.Fraction, 1.0);
        return Share * MoistAir.LatentHeatKilojoulesPerKilogram(temperature.Celsius) * dryness * dryness;
    }

    /// <summary>The same averaged over the water that leaves between two moisture contents, kJ per kg of water.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The second is not below the first.</exception>
    public static double MeanKilojoulesPerKilogram(Temperature temperature, MoistureContent from, MoistureContent to, MoistureContent saturation)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(to.Fraction, from.Fraction);
        double Cube(MoistureContent moisture)
        {
            var dryness = 1.0 - Math.Min(moisture.Fraction / saturation.Fraction, 1.0);
            return dryness * dryness * dryness;
        }

        // The integral of (1 - M/Ms)² over M is Ms/3 times the change of (1 - M/Ms)³.
        return Share * MoistAir.LatentHeatKilojoulesPerKilogram(temperature.Celsius)
            * saturation.Fraction / 3.0 * (Cube(to) - Cube(from)) / (from.Fraction - to.Fraction);
    }

    /// <summary>The second fit, kJ per kg of water, for comparison.</summary>
    public static double SkaarKilojoulesPerKilogram(MoistureContent moisture) => 1170.0 * Math.Exp(-0.14 * moisture.Percent);
}
