using Boardwright.Numerics;

namespace Boardwright.Wood;

/// <summary>Kernels of moist air in plain numbers: temperatures in C, pressures in Pa, humidity ratio in kg water per kg dry air. Unchecked.</summary>
/// <source id="ashrae-fundamentals-2017" locator="ch. 1 eqs 20, 22, 30, 33, 35, 36"/>
/// <method page="docs/methods/moist-air.md"/>
public static class MoistAir
{
    /// <summary>Ratio of the molar masses of water and dry air.</summary>
    internal const double MolarMassRatio = 0.621945;

    /// <summary>Humidity ratio of air in which the vapour has this pressure.</summary>
    public static double HumidityRatio(double vapourPascals, double pressurePascals) =>
        MolarMassRatio * vapourPascals / (pressurePascals - vapourPascals);

    /// <summary>Vapour pressure, Pa, of air with this humidity ratio.</summary>
    public static double VapourPascals(double humidityRatio, double pressurePascals) =>
        pressurePascals * humidityRatio / (MolarMassRatio + humidityRatio);

    /// <summary>Enthalpy in kJ per kg of dry air, zero for dry air and liquid water at 0 C.</summary>
    public static double EnthalpyKilojoulesPerKilogram(double dryBulbCelsius, double humidityRatio) =>
        1.006 * dryBulbCelsius + humidityRatio * (2501.0 + 1.86 * dryBulbCelsius);

    /// <summary>Latent heat of evaporation of water, kJ/kg, from the terms of the enthalpy equation: 2501 - 2.326 t.</summary>
    public static double LatentHeatKilojoulesPerKilogram(double celsius) => 2501.0 - 2.326 * celsius;

    /// <summary>Volume in m³ per kg of dry air.</summary>
    public static double VolumePerKilogram(double dryBulbCelsius, double humidityRatio, double pressurePascals) =>
        287.042 * (dryBulbCelsius + 273.15) * (1.0 + 1.607858 * humidityRatio) / pressurePascals;

    /// <summary>Standard pressure of the atmosphere, Pa, at a height in m above the sea (-5000 to 11000).</summary>
    public static double StandardPressurePascals(double heightMetres) => 101325.0 * Math.Pow(1.0 - 2.25577e-5 * heightMetres, 5.2559);

    /// <summary>Humidity ratio of air from its dry and wet bulbs; a wick below 0 C is covered with ice. Negative when no air can have them.</summary>
    public static double HumidityRatioAtWetBulb(double dryBulbCelsius, double wetBulbCelsius, double pressurePascals)
    {
        var saturated = HumidityRatio(SaturationPressure.Pascals(wetBulbCelsius), pressurePascals);
        return wetBulbCelsius >= 0.0
            ? ((2501.0 - 2.326 * wetBulbCelsius) * saturated - 1.006 * (dryBulbCelsius - wetBulbCelsius)) / (2501.0 + 1.86 * dryBulbCelsius - 4.186 * wetBulbCelsius)
            : ((2830.0 - 0.24 * wetBulbCelsius) * saturated - 1.006 * (dryBulbCelsius - wetBulbCelsius)) / (2830.0 + 1.86 * dryBulbCelsius - 2.1 * wetBulbCelsius);
    }

    /// <summary>Relative humidity as a fraction from dry and wet bulb.</summary>
    public static double HumidityAtWetBulb(double dryBulbCelsius, double wetBulbCelsius, double pressurePascals) =>
        VapourPascals(HumidityRatioAtWetBulb(dryBulbCelsius, wetBulbCelsius, pressurePascals), pressurePascals) / SaturationPressure.Pascals(dryBulbCelsius);

    /// <summary>Wet bulb, C, of air with this humidity ratio.</summary>
    /// <remarks>
    /// The humidity ratio rises with the wet bulb on the water branch and on the ice branch, but steps down at 0 C, where the wick
    /// freezes: a little air has two answers, and the warmer, of the unfrozen wick, is taken. Each branch is bracketed by its own
    /// ends, and the upper end stays below boiling, so the search cannot fail for air that exists.
    /// </remarks>
    /// <returns>The wet bulb, or null when it lies below -100 C.</returns>
    public static double? WetBulbCelsius(double dryBulbCelsius, double humidityRatio, double pressurePascals)
    {
        // Relative to the humidity ratio, so that the search is as sharp in the dry air of a hard frost as in a hot kiln.
        var scale = Math.Max(humidityRatio, 1e-6);
        double Excess(double wetBulb) => (HumidityRatioAtWetBulb(dryBulbCelsius, wetBulb, pressurePascals) - humidityRatio) / scale;

        var highest = Math.Min(dryBulbCelsius, BelowBoilingCelsius(pressurePascals));
        if (highest >= 0.0 && Excess(0.0) <= 0.0)
            return Excess(highest) <= 0.0 ? highest : Root.Between(Excess, 0.0, highest, 1e-11);

        highest = Math.Min(highest, -double.Epsilon);
        return Excess(highest) <= 0.0 ? highest
            : Excess(SaturationPressure.MinCelsius) <= 0.0 ? Root.Between(Excess, SaturationPressure.MinCelsius, highest, 1e-11)
            : null;
    }

    // Where saturated air would hold a thousand kilograms of water per kilogram of dry air: as near to boiling as is of use.
    private static double BelowBoilingCelsius(double pressurePascals) =>
        SaturationPressure.CelsiusFor(pressurePascals * 1000.0 / (1000.0 + MolarMassRatio)) ?? SaturationPressure.MaxCelsius;
}
