using Boardwright.Drying.Board;
using Boardwright.Numerics;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>Several seasons that could come: the given weather as it is up to a day, after it with chance departures that last for days and for a season.</summary>
/// <remarks>Departures are common practice for a mid-latitude inland place: temperature 2.5 K from day to day (0.75 of it carried over) and 1 K a season, humidity 6 and 3 points.</remarks>
internal sealed class FutureWeather
{
    private const double DailyKelvins = 2.5;
    private const double DailyKelvinsKept = 0.75;
    private const double SeasonKelvins = 1.0;
    private const double DailyHumidity = 6.0;
    private const double DailyHumidityKept = 0.6;
    private const double SeasonHumidity = 3.0;
    private const double WindDefault = 3.0;
    private const double WindMin = 0.5;
    private const double WettedHumidityPercent = 85.0;
    private const double FanAboveCelsius = 4.0;
    private const double FanFactor = 1.2;

    private StackPlace place;
    private readonly DateOnly knownThrough;
    private readonly RandomSequence[] chance;
    private readonly double[] seasonKelvins;
    private readonly double[] seasonHumidity;
    private readonly double[] kelvins;
    private readonly double[] humidity;

    public FutureWeather(int scenarios, StackPlace place, DateOnly knownThrough, ulong seed)
    {
        this.place = place;
        this.knownThrough = knownThrough;
        Scenarios = scenarios;
        chance = [.. Enumerable.Range(0, scenarios).Select(scenario => new RandomSequence(seed, 100 + (ulong)scenario))];
        seasonKelvins = Scatter.Normal(scenarios, seed, 4);
        seasonHumidity = Scatter.Normal(scenarios, seed, 5);
        kelvins = new double[scenarios];
        humidity = new double[scenarios];
        Air = new StackAir[scenarios];
    }

    public int Scenarios { get; }

    /// <summary>Air in the stack of the last day taken, by scenario.</summary>
    public StackAir[] Air { get; }

    /// <summary>The stack stands somewhere else from the next day on.</summary>
    public void MoveTo(StackPlace other) => place = other;

    /// <summary>Moves on to a day; days are taken in order.</summary>
    public void Take(DailyWeather day)
    {
        for (var s = 0; s < Scenarios; s++)
        {
            var (celsius, percent) = (day.MeanCelsius, day.HumidityPercent);
            if (Scenarios > 1 && day.Date > knownThrough)
            {
                kelvins[s] = Carry(kelvins[s], DailyKelvinsKept, DailyKelvins, chance[s]);
                humidity[s] = Carry(humidity[s], DailyHumidityKept, DailyHumidity, chance[s]);
                celsius += kelvins[s] + SeasonKelvins * seasonKelvins[s];
                percent = Math.Clamp(percent + humidity[s] + SeasonHumidity * seasonHumidity[s], 10.0, 99.0);
            }

            Air[s] = Stack(celsius, percent, day.WindMetresPerSecond ?? WindDefault);
        }
    }

    /// <summary>Equilibrium moisture content of a day's mean air, fraction; air colder than the equation reaches is taken at its end.</summary>
    public static double EquilibriumFraction(double celsius, double humidityPercent) =>
        Emc.Percent(Math.Clamp(celsius, -40.0, 60.0), Math.Clamp(humidityPercent, 0.0, 99.0) / 100.0) / 100.0;

    private StackAir Stack(double celsius, double percent, double windMetresPerSecond)
    {
        var emc = EquilibriumFraction(celsius, percent);
        return new StackAir(
            celsius,
            BoardPhysics.DiffusionFactor(celsius) * (place.Fan && celsius > FanAboveCelsius ? FanFactor : 1.0),
            place.SurfaceMetresPerSecond * Math.Sqrt(Math.Max(windMetresPerSecond, WindMin) / WindDefault),
            !place.Covered && percent >= WettedHumidityPercent ? DiffusionLaw.FiberSaturationFraction : emc);
    }

    private static double Carry(double last, double kept, double spread, RandomSequence chance) =>
        kept * last + Math.Sqrt(1.0 - kept * kept) * spread * chance.NextNormal();
}

/// <summary>Air between the layers of a stack on a day.</summary>
internal readonly record struct StackAir(double Celsius, double DiffusionFactor, double SurfaceMetresPerSecond, double EquilibriumFraction);
