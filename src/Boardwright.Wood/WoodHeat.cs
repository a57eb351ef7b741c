using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Heat held and conducted by wood.</summary>
/// <method page="docs/methods/wood-heat.md"/>
public static class WoodHeat
{
    private const double WaterKilojoulesPerKilogramKelvin = 4.18;
    private const double FiberSaturationPercent = 30.0;

    /// <summary>Highest moisture content with conductivity data, percent; above it the equation is extrapolated.</summary>
    public const double ConductivityMoisturePercentMax = 25.0;

    /// <summary>Heat capacity, J/(kg K), per kg of moist wood.</summary>
    /// <remarks>
    /// <para>Equations, kJ/(kg K), T in K, x in percent: c = (c0 + 4.18 x/100)/(1 + x/100) + Ac, c0 = 0.1031 + 0.003867 T,
    /// Ac = x (-0.06191 + 2.36e-4 T - 1.33e-4 x). Above 30 % the wood at 30 % and free water are mixed, without Ac for the water.</para>
    /// <para>Validity: 7 to 147 C.</para>
    /// </remarks>
    /// <source id="fpl-wood-handbook-2010" locator="eqs 4-16a, 4-17, 4-18"/>
    /// <method page="docs/methods/wood-heat.md"/>
    public static double SpecificHeat(Temperature temperature, MoistureContent moisture) =>
        1000.0 * SpecificHeatKilojoules(temperature.Kelvins, moisture.Percent);

    /// <summary>Conductivity across the grain, W/(m K).</summary>
    /// <remarks>
    /// <para>Equation: k = Gx (0.1941 + 0.004064 x) + 0.01864, Gx the specific gravity at moisture content x percent.</para>
    /// <para>Validity: Gx above 0.3, about 24 C, x below 25 %; wetter wood is extrapolated, without reliable data. Single pieces differ by 20 %;
    /// along the grain 1.5 to 2.8 times as much.</para>
    /// </remarks>
    /// <source id="fpl-wood-handbook-2010" locator="eq. 4-15"/>
    /// <method page="docs/methods/wood-heat.md"/>
    public static double Conductivity(Species species, MoistureContent moisture) =>
        ConductivityAt(WoodDensity.SpecificGravity(species, moisture), moisture.Percent);

    /// <summary>Kernel of <see cref="Conductivity"/>: W/(m K) for a specific gravity at this moisture content in percent, unchecked.</summary>
    public static double ConductivityAt(double specificGravity, double moisturePercent) =>
        specificGravity * (0.1941 + 0.004064 * moisturePercent) + 0.01864;

    private static double SpecificHeatKilojoules(double kelvins, double percent)
    {
        if (percent > FiberSaturationPercent)
        {
            var bound = (1.0 + FiberSaturationPercent / 100.0) * SpecificHeatKilojoules(kelvins, FiberSaturationPercent);
            return (bound + WaterKilojoulesPerKilogramKelvin * (percent - FiberSaturationPercent) / 100.0) / (1.0 + percent / 100.0);
        }

        var dry = 0.1031 + 0.003867 * kelvins;
        var bonding = percent * (-0.06191 + 2.36e-4 * kelvins - 1.33e-4 * percent);
        return (dry + WaterKilojoulesPerKilogramKelvin * percent / 100.0) / (1.0 + percent / 100.0) + bonding;
    }
}
