using Boardwright.Drying.Board;
using Boardwright.Numerics;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>Several seasons that could come: the given weather as it is up to a day; after it seasons of past years, or the usual air with chance departures.</summary>
/// <remarks>
/// Departures are common practice for a mid-latitude inland place: temperature 2.5 K from day to day (0.75 of it carried over) and 1 K a season, humidity 6 and
/// 3 points. A day known by its hours is gone through hour by hour, one known by its means in eight equal steps.
/// </remarks>
internal sealed class FutureWeather
{
    private const int HourlySteps = 24;
    private const int DailySteps = 8;
    private const double DailyKelvins = 2.5;
    private const double DailyKelvinsKept = 0.75;
    private const double SeasonKelvins = 1.0;
    private const double DailyHumidity = 6.0;
    private const double DailyHumidityKept = 0.6;
    private const double SeasonHumidity = 3.0;
    private const double WindDefault = 3.0;
    private const double WindMin = 0.5;
    private const double WettedHumidityPercent = 85.0;
    private const double WettedRainMillimetres = 1.0;
    private const double FanAboveCelsius = 4.0;
    private const double FanFactor = 1.2;
    private const double ReferenceSpecificGravity = 0.55;

    private readonly DateOnly knownThrough;
    private readonly PastSeasons? past;
    private readonly RandomSequence[] chance;
    private readonly double[] seasonKelvins;
    private readonly double[] seasonHumidity;
    private readonly double[] kelvins;
    private readonly double[] humidity;
    private readonly StackAir[] air;
    private StackPlace place;

    public FutureWeather(int scenarios, StackPlace place, DateOnly knownThrough, ulong seed, PastSeasons? past = null)
    {
        this.place = place;
        this.knownThrough = knownThrough;
        this.past = past;
        Scenarios = scenarios;
        chance = [.. Enumerable.Range(0, scenarios).Select(scenario => new RandomSequence(seed, 100 + (ulong)scenario))];
        seasonKelvins = Scatter.Apart(scenarios, seed, 4);
        seasonHumidity = Scatter.Apart(scenarios, seed, 5, 4);
        kelvins = new double[scenarios];
        humidity = new double[scenarios];
        air = new StackAir[HourlySteps * scenarios];
        Outdoors = new DailyWeather[scenarios];
    }

    public int Scenarios { get; }

    /// <summary>Steps of the last day taken.</summary>
    public int Steps { get; private set; }

    /// <summary>The day's weather of each season.</summary>
    public DailyWeather[] Outdoors { get; }

    /// <summary>Air in the stack in a step of the last day taken, by season.</summary>
    public ReadOnlySpan<StackAir> Air(int step) => air.AsSpan(step * Scenarios, Scenarios);

    /// <summary>The stack stands somewhere else from the next day on.</summary>
    public void MoveTo(StackPlace other) => place = other;

    /// <summary>Moves on to a day; days are taken in order.</summary>
    public void Take(DailyWeather day)
    {
        var open = Scenarios > 1 && day.Date > knownThrough;
        Steps = (open && past is not null ? past.On(day.Date, knownThrough, 0) : day).Hours is null ? DailySteps : HourlySteps;
        for (var s = 0; s < Scenarios; s++)
        {
            Outdoors[s] = !open ? day : past is not null ? past.On(day.Date, knownThrough, s) : Departed(day, s);
            if (open || s == 0)
                Spread(s);
            else
                Copy(s);
        }
    }

    /// <summary>Equilibrium moisture content of air, fraction; air colder than the equation reaches is taken at its end.</summary>
    public static double EquilibriumFraction(double celsius, double humidityPercent) =>
        Emc.Percent(Math.Clamp(celsius, -40.0, 60.0), Math.Clamp(humidityPercent, 0.0, 99.0) / 100.0) / 100.0;

    private DailyWeather Departed(DailyWeather day, int s)
    {
        kelvins[s] = Carry(kelvins[s], DailyKelvinsKept, DailyKelvins, chance[s]);
        humidity[s] = Carry(humidity[s], DailyHumidityKept, DailyHumidity, chance[s]);
        var (warmer, damper) = (kelvins[s] + SeasonKelvins * seasonKelvins[s], humidity[s] + SeasonHumidity * seasonHumidity[s]);
        return day with
        {
            MeanCelsius = day.MeanCelsius + warmer,
            HumidityPercent = Damp(day.HumidityPercent + damper),
            Hours = day.Hours is { } hours ? [.. hours.Select(hour => hour with { Celsius = hour.Celsius + warmer, HumidityPercent = Damp(hour.HumidityPercent + damper) })] : null,
        };

        static double Damp(double percent) => Math.Clamp(percent, 10.0, 99.0);
    }

    private void Spread(int s)
    {
        var day = Outdoors[s];
        var wet = !place.Covered && (day.RainMillimetres is { } rain ? rain >= WettedRainMillimetres : day.HumidityPercent >= WettedHumidityPercent);
        for (var step = 0; step < Steps; step++)
        {
            if (day.Hours is { } hours)
                air[step * Scenarios + s] = Stack(hours[step * hours.Count / Steps], wet);
            else
                air[step * Scenarios + s] = step == 0 ? Stack(new HourlyAir(day.MeanCelsius, day.HumidityPercent, day.WindMetresPerSecond), wet) : air[s];
        }
    }

    private void Copy(int s)
    {
        for (var step = 0; step < Steps; step++)
        {
            air[step * Scenarios + s] = air[step * Scenarios];
        }
    }

    private StackAir Stack(HourlyAir outdoors, bool wet) => new(
        BoardPhysics.DiffusionFactor(outdoors.Celsius) * (place.Fan && outdoors.Celsius > FanAboveCelsius ? FanFactor : 1.0),
        place.SurfaceMetresPerSecond * Math.Sqrt(Math.Max(outdoors.WindMetresPerSecond ?? WindDefault, WindMin) / WindDefault) * BoardPhysics.SurfaceFactor(outdoors.Celsius, ReferenceSpecificGravity),
        wet ? DiffusionLaw.FiberSaturationFraction : EquilibriumFraction(outdoors.Celsius, outdoors.HumidityPercent));

    private static double Carry(double last, double kept, double spread, RandomSequence chance) =>
        kept * last + Math.Sqrt(1.0 - kept * kept) * spread * chance.NextNormal();
}
