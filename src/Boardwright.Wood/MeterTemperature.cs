using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>What a pin meter would have shown had the wood been at room temperature: cold wood is wetter than it reads, hot wood drier.</summary>
/// <remarks>
/// <para>One per 20 F: M = R + (70 F - T)/20, T the wood in F.</para>
/// <para>Pfaff and Garrahan, t the wood in C: M = (R + 0.567 - 0.0260 t + 0.000051 t²)/(0.881 x 1.0056^t), for Douglas-fir; nothing
/// changes near 23 C. The two differ by 0.1 to 0.7 point from 0 to 50 C at a reading of 12.</para>
/// <para>Validity: wood at -40 to 100 C.</para>
/// </remarks>
/// <source id="conners-for-128" locator="up to 1 point for each 20 F"/>
/// <source id="pfaff-garrahan-1986" locator="temperature and species equation"/>
/// <method page="docs/methods/moisture-meter.md"/>
public static class MeterTemperature
{
    /// <summary>Temperature the trade's rule is counted from.</summary>
    public static Temperature Reference { get; } = Temperature.FromFahrenheit(70.0);

    /// <summary>Corrected reading; never below 0.</summary>
    public static MoistureContent Correct(MoistureContent reading, Temperature wood, MeterTemperatureRule rule) =>
        MoistureContent.FromPercent(Math.Max(0.0, Percent(reading.Percent, wood.Celsius, rule)));

    /// <summary>What the meter shows on wood of a moisture content and temperature: the inverse of <see cref="Correct"/>; never below 0.</summary>
    public static MoistureContent Shown(MoistureContent moisture, Temperature wood, MeterTemperatureRule rule)
    {
        // Both rules are straight lines in the reading.
        var (atNothing, atTen) = (Percent(0.0, wood.Celsius, rule), Percent(10.0, wood.Celsius, rule));
        return MoistureContent.FromPercent(Math.Max(0.0, 10.0 * (moisture.Percent - atNothing) / (atTen - atNothing)));
    }

    /// <summary>Kernel of <see cref="Correct"/>: percent from percent and degrees Celsius, unchecked.</summary>
    public static double Percent(double readingPercent, double woodCelsius, MeterTemperatureRule rule) => rule switch
    {
        MeterTemperatureRule.OnePerTwentyFahrenheit => readingPercent + (Reference.Celsius - woodCelsius) * 1.8 / 20.0,
        MeterTemperatureRule.PfaffGarrahan =>
            (readingPercent + 0.567 - 0.0260 * woodCelsius + 0.000051 * woodCelsius * woodCelsius) / (0.881 * Math.Pow(1.0056, woodCelsius)),
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "Accepted: a rule of the list."),
    };
}
