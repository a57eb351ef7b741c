using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>Makes days of 24 hours from what a station reported.</summary>
/// <remarks>
/// Missing hours are filled by straight lines over gaps of up to <see cref="GapHoursMax"/> hours and counted. A day with a longer gap is a missing day: it is
/// filled between its neighbours as a whole and flagged (see <see cref="WeatherSeries"/>). Days that are not complete at the two ends are left off.
/// </remarks>
/// <method page="docs/methods/air-drying.md"/>
public static class HourlyWeather
{
    /// <summary>Longest gap that is filled hour by hour: longer ones would cross from night to noon.</summary>
    public const int GapHoursMax = 6;

    private const int Day = 24;

    /// <summary>The days of the reports.</summary>
    /// <param name="what">The file or field, for refusals.</param>
    /// <param name="reports">Reports in any order.</param>
    public static Outcome<WeatherSeries> Series(string what, IEnumerable<WeatherHour> reports)
    {
        var byHour = reports.GroupBy(report => report.Time.Ticks / TimeSpan.TicksPerHour).ToDictionary(hour => hour.Key, hour => hour.ToList());
        if (byHour.Count == 0)
            return new Refusal(what, "no hour", "at least one day of hours");

        var firstDay = byHour.Keys.Min() / Day;
        var days = (int)(byHour.Keys.Max() / Day - firstDay) + 1;
        double?[] Mean(Func<WeatherHour, double?> quantity) =>
            [.. Enumerable.Range(0, days * Day).Select(hour => byHour.TryGetValue(firstDay * Day + hour, out var reported) ? reported.Average(quantity) : null)];

        var (celsius, humidity, wind) = (Mean(hour => hour.Celsius), Mean(hour => hour.HumidityPercent), Mean(hour => hour.WindMetresPerSecond));
        var known = Enumerable.Range(0, days * Day).Select(hour => celsius[hour] is not null && humidity[hour] is not null).ToArray();
        Fill(celsius);
        Fill(humidity);
        Fill(wind);
        var whole = Enumerable.Range(0, days).Where(day => Enumerable.Range(day * Day, Day).All(hour => celsius[hour] is not null && humidity[hour] is not null)).ToList();
        return whole.Count == 0
            ? new Refusal(what, $"{byHour.Count.ToString(CultureInfo.InvariantCulture)} hours, no day of them whole", $"at least one day whose temperature and humidity have no gap over {GapHoursMax} hours")
            : WeatherSeries.From(what, whole.Select(OfHours));

        DailyWeather OfHours(int day)
        {
            var range = Enumerable.Range(day * Day, Day).ToList();
            var hours = range.Select(hour => new HourlyAir(celsius[hour]!.Value, humidity[hour]!.Value, wind[hour])).ToList();
            var rain = range.SelectMany(hour => byHour.GetValueOrDefault(firstDay * Day + hour) ?? []).Select(report => report.RainMillimetres).OfType<double>().ToList();
            return new DailyWeather(
                DateOnly.FromDayNumber((int)(firstDay + day)),
                hours.Average(hour => hour.Celsius),
                hours.Average(hour => hour.HumidityPercent),
                hours.Average(hour => hour.WindMetresPerSecond),
                Hours: hours,
                FilledHours: range.Count(hour => !known[hour]),
                RainMillimetres: rain.Count > 0 ? rain.Sum() : null);
        }
    }

    /// <summary>Relative humidity from the dew point a station reports, percent; both over water, as stations report below freezing too.</summary>
    /// <source id="alduchov-eskridge-1996" locator="eq. 21"/>
    /// <method page="docs/methods/air-drying.md"/>
    public static double HumidityPercent(double celsius, double dewPointCelsius)
    {
        return Math.Min(100.0, 100.0 * Math.Exp(Magnus(dewPointCelsius) - Magnus(celsius)));

        static double Magnus(double t) => 17.625 * t / (243.04 + t);
    }

    private static void Fill(double?[] values)
    {
        var last = -1;
        for (var hour = 0; hour < values.Length; hour++)
        {
            if (values[hour] is not { } next)
                continue;

            if (last >= 0 && hour - last - 1 is > 0 and <= GapHoursMax)
            {
                var before = values[last]!.Value;
                for (var missing = last + 1; missing < hour; missing++)
                {
                    values[missing] = before + (next - before) * (missing - last) / (hour - last);
                }
            }

            last = hour;
        }
    }
}
