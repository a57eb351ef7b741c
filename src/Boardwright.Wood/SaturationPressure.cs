using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Pressure of water vapour in balance with liquid water, or with ice below the triple point.</summary>
/// <remarks>
/// <para>Equations, p in Pa and T in K: over water ln p = -5.8002206e3/T + 1.3914993 - 4.8640239e-2 T + 4.1764768e-5 T² - 1.4452093e-8 T³ + 6.5459673 ln T;
/// over ice ln p = -5.6745359e3/T + 6.3925247 - 9.677843e-3 T + 6.2215701e-7 T² + 2.0747825e-9 T³ - 9.484024e-13 T⁴ + 4.1635019 ln T.</para>
/// <para>Validity: -100 to 200 C. The two do not meet exactly; the change is made at the triple point, 0.01 C.</para>
/// </remarks>
/// <source id="ashrae-fundamentals-2017" locator="ch. 1 eqs 5 and 6"/>
/// <method page="docs/methods/moist-air.md"/>
public static class SaturationPressure
{
    /// <summary>The triple point of water, where the equation for ice gives way to the one for water.</summary>
    internal const double TriplePointCelsius = 0.01;

    internal const double MinCelsius = -100.0;

    internal const double MaxCelsius = 200.0;

    /// <summary>Lowest temperature of the equations.</summary>
    public static Temperature Min => Temperature.FromCelsius(MinCelsius);

    /// <summary>Highest temperature of the equations.</summary>
    public static Temperature Max => Temperature.FromCelsius(MaxCelsius);

    /// <summary>Saturation pressure at a temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -100 to 200 C.</exception>
    public static Pressure At(Temperature temperature) => temperature.Celsius is >= MinCelsius and <= MaxCelsius
        ? Pressure.Trusted(Pascals(temperature.Celsius))
        : throw new ArgumentOutOfRangeException(nameof(temperature), temperature.Celsius, "Accepted: -100 to 200 C.");

    /// <summary>The temperature at which water vapour of this pressure condenses or freezes: dew or frost point, and the boiling point of water at this pressure.</summary>
    /// <returns>The temperature, or null outside -100 to 200 C.</returns>
    public static Temperature? TemperatureFor(Pressure pressure) =>
        CelsiusFor(pressure.Pascals) is { } celsius ? Temperature.FromCelsius(celsius) : null;

    /// <summary>Kernel of <see cref="At"/>: pascals at degrees Celsius, unchecked.</summary>
    public static double Pascals(double celsius) => celsius >= TriplePointCelsius ? OverWater(celsius + 273.15) : OverIce(celsius + 273.15);

    /// <summary>Kernel of <see cref="TemperatureFor"/>: degrees Celsius at pascals; null outside -100 to 200 C.</summary>
    public static double? CelsiusFor(double pascals)
    {
        if (!(pascals >= OverIce(MinCelsius + 273.15) && pascals <= OverWater(MaxCelsius + 273.15)))
            return null;

        // Newton on ln p against 1/T, which is nearly straight; between the two curves lies the triple point itself.
        if (pascals <= OverIce(TriplePointCelsius + 273.15))
            return Invert(pascals, OverIce, TriplePointCelsius);

        return pascals >= OverWater(TriplePointCelsius + 273.15) ? Invert(pascals, OverWater, TriplePointCelsius) : TriplePointCelsius;
    }

    private static double OverWater(double kelvins) => Math.Exp(
        -5.8002206e3 / kelvins + 1.3914993 - 4.8640239e-2 * kelvins + 4.1764768e-5 * kelvins * kelvins
        - 1.4452093e-8 * kelvins * kelvins * kelvins + 6.5459673 * Math.Log(kelvins));

    private static double OverIce(double kelvins) => Math.Exp(
        -5.6745359e3 / kelvins + 6.3925247 - 9.677843e-3 * kelvins + 6.2215701e-7 * kelvins * kelvins
        + 2.0747825e-9 * kelvins * kelvins * kelvins - 9.484024e-13 * kelvins * kelvins * kelvins * kelvins + 4.1635019 * Math.Log(kelvins));

    private static double Invert(double pascals, Func<double, double> curve, double startCelsius)
    {
        var target = Math.Log(pascals);
        var inverse = 1.0 / (startCelsius + 273.15);
        for (var step = 0; step < 30; step++)
        {
            const double Nudge = 1e-8;
            var value = Math.Log(curve(1.0 / inverse));
            var slope = (Math.Log(curve(1.0 / (inverse + Nudge))) - value) / Nudge;
            var change = (target - value) / slope;
            inverse += change;
            if (Math.Abs(change) < 1e-15)
                break;
        }

        return 1.0 / inverse - 273.15;
    }
}
