using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Moist air in one state: given by its dry bulb, its pressure, and one of humidity, wet bulb or dew point.</summary>
/// <remarks>Validity: dry bulb -100 to 200 C, ideal mixture of dry air and vapour. Refusals name the inputs dry-bulb, rh, wet-bulb, dew-point and pressure.</remarks>
/// <source id="ashrae-fundamentals-2017" locator="ch. 1"/>
/// <method page="docs/methods/moist-air.md"/>
public sealed record AirState
{
    private AirState()
    {
    }

    /// <summary>Standard pressure of the atmosphere at sea level.</summary>
    public static Pressure StandardPressure => Pressure.FromPascals(101325.0);

    /// <summary>Temperature of the air.</summary>
    public required Temperature DryBulb { get; init; }

    /// <summary>Temperature of a wetted wick in moving air (thermodynamic wet bulb, adiabatic saturation); null where it lies below -100 C.</summary>
    public required Temperature? WetBulb { get; init; }

    /// <summary>Temperature at which the vapour would condense or freeze; null for air without vapour or below -100 C.</summary>
    public required Temperature? DewPoint { get; init; }

    /// <summary>Vapour pressure over the saturation pressure at the dry bulb; below 0.01 C that is the one over ice.</summary>
    public required RelativeHumidity Humidity { get; init; }

    /// <summary>Mass of water per mass of dry air, kg/kg.</summary>
    public required double HumidityRatio { get; init; }

    /// <summary>Partial pressure of the vapour.</summary>
    public required Pressure VapourPressure { get; init; }

    /// <summary>Pressure of the air and vapour together.</summary>
    public required Pressure Pressure { get; init; }

    /// <summary>Enthalpy, kJ per kg of dry air, zero for dry air and liquid water at 0 C.</summary>
    public double EnthalpyKilojoulesPerKilogram => MoistAir.EnthalpyKilojoulesPerKilogram(DryBulb.Celsius, HumidityRatio);

    /// <summary>Volume, m³ per kg of dry air.</summary>
    public double VolumePerKilogram => MoistAir.VolumePerKilogram(DryBulb.Celsius, HumidityRatio, Pressure.Pascals);

    /// <summary>Moisture content at which wood rests in this air; null where the sorption equation does not reach.</summary>
    public MoistureContent? Emc => EmcBy(EmcEquation.HailwoodHorrobin);

    /// <summary>The same by one of the published equations.</summary>
    public MoistureContent? EmcBy(EmcEquation equation) => DryBulb.Celsius is >= Wood.Emc.MinCelsius and <= Wood.Emc.MaxCelsius ? equation.At(DryBulb, Humidity) : null;

    /// <summary>Air of a known relative humidity.</summary>
    public static Outcome<AirState> FromHumidity(Temperature dryBulb, RelativeHumidity humidity, Pressure pressure)
    {
        if (Problem(dryBulb, pressure) is { } problem)
            return problem;

        var saturated = SaturationPressure.Pascals(dryBulb.Celsius);
        return humidity.Fraction * saturated < pressure.Pascals
            ? WithVapour(dryBulb, humidity.Fraction * saturated, pressure)
            : new Refusal("rh", Percent(humidity.Percent), $"less than {Percent(pressure.Pascals / saturated * 100.0)}: vapour alone would exceed the pressure of {Kilopascals(pressure)} at {Celsius(dryBulb.Celsius)}");
    }

    /// <summary>Air of a known wet bulb; below 0 C the wick is taken to be covered with ice.</summary>
    public static Outcome<AirState> FromWetBulb(Temperature dryBulb, Temperature wetBulb, Pressure pressure)
    {
        if (Problem(dryBulb, pressure) is { } problem)
            return problem;

        var lowest = MoistAir.WetBulbCelsius(dryBulb.Celsius, 0.0, pressure.Pascals) ?? SaturationPressure.MinCelsius;
        if (wetBulb > dryBulb || wetBulb.Celsius < lowest || wetBulb.Celsius < SaturationPressure.MinCelsius)
            return new Refusal("wet-bulb", Celsius(wetBulb.Celsius), $"{Celsius(lowest)}, the wet bulb of bone-dry air, to {Celsius(dryBulb.Celsius)}, the dry bulb");

        if (SaturationPressure.Pascals(wetBulb.Celsius) >= pressure.Pascals)
            return new Refusal("wet-bulb", Celsius(wetBulb.Celsius), $"below {Celsius(SaturationPressure.CelsiusFor(pressure.Pascals) ?? SaturationPressure.MinCelsius)}, where water boils at {Kilopascals(pressure)}");

        var humidityRatio = MoistAir.HumidityRatioAtWetBulb(dryBulb.Celsius, wetBulb.Celsius, pressure.Pascals);
        if (humidityRatio < 0.0)
            return new Refusal("wet-bulb", Celsius(wetBulb.Celsius), $"{Celsius(lowest)}, the wet bulb of bone-dry air, to {Celsius(dryBulb.Celsius)}, the dry bulb");

        return WithVapour(dryBulb, MoistAir.VapourPascals(humidityRatio, pressure.Pascals), pressure, wetBulb);
    }

    /// <summary>Air of a known dew point, or frost point below 0 C.</summary>
    public static Outcome<AirState> FromDewPoint(Temperature dryBulb, Temperature dewPoint, Pressure pressure)
    {
        if (Problem(dryBulb, pressure) is { } problem)
            return problem;

        if (dewPoint > dryBulb || dewPoint.Celsius < SaturationPressure.MinCelsius)
            return new Refusal("dew-point", Celsius(dewPoint.Celsius), $"{Celsius(SaturationPressure.MinCelsius)} to the dry bulb, {Celsius(dryBulb.Celsius)}");

        var vapour = SaturationPressure.Pascals(dewPoint.Celsius);
        return vapour < pressure.Pascals
            ? WithVapour(dryBulb, vapour, pressure)
            : new Refusal("dew-point", Celsius(dewPoint.Celsius), $"below {Celsius(SaturationPressure.CelsiusFor(pressure.Pascals) ?? SaturationPressure.MinCelsius)}, where water boils at {Kilopascals(pressure)}");
    }

    private static AirState WithVapour(Temperature dryBulb, double vapourPascals, Pressure pressure, Temperature? wetBulb = null)
    {
        var humidityRatio = MoistAir.HumidityRatio(vapourPascals, pressure.Pascals);
        var found = MoistAir.WetBulbCelsius(dryBulb.Celsius, humidityRatio, pressure.Pascals);
        return new()
        {
            DryBulb = dryBulb,
            WetBulb = wetBulb ?? (found is { } celsius ? Temperature.FromCelsius(celsius) : null),
            DewPoint = vapourPascals > 0.0 ? SaturationPressure.TemperatureFor(Pressure.FromPascals(vapourPascals)) : null,
            Humidity = RelativeHumidity.FromFraction(Math.Min(vapourPascals / SaturationPressure.Pascals(dryBulb.Celsius), 1.0)),
            HumidityRatio = humidityRatio,
            VapourPressure = Pressure.FromPascals(vapourPascals),
            Pressure = pressure,
        };
    }

    private static Refusal? Problem(Temperature dryBulb, Pressure pressure) =>
        dryBulb.Celsius is < SaturationPressure.MinCelsius or > SaturationPressure.MaxCelsius ? new Refusal("dry-bulb", Celsius(dryBulb.Celsius), "-100 to 200 C (-148 to 392 F)")
        : pressure.Pascals is < 1000.0 or > 1e6 ? new Refusal("pressure", Kilopascals(pressure), "1 to 1000 kPa")
        : null;

    private static string Celsius(double celsius) => string.Create(CultureInfo.InvariantCulture, $"{celsius:0.##} C ({celsius * 1.8 + 32.0:0.#} F)");

    private static string Percent(double percent) => string.Create(CultureInfo.InvariantCulture, $"{percent:0.##}%");

    private static string Kilopascals(Pressure pressure) => string.Create(CultureInfo.InvariantCulture, $"{pressure.Kilopascals:0.###} kPa");
}
