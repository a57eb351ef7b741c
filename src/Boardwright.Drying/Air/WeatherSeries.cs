using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>Days of weather without a gap. Days outside it are taken from the same calendar day when the series holds a whole year.</summary>
/// <remarks>Gaps of up to 31 days are filled between their neighbours and flagged. Accepted: -40 to 50 C, 0 to 100 %, 0 to 60 m/s, rain from 0. Days of hours: <see cref="HourlyWeather"/>.</remarks>
public sealed class WeatherSeries
{
    private const int GapDaysMax = 31;
    private const int WholeYearDays = 364;

    private readonly DailyWeather[] days;

    private WeatherSeries(DailyWeather[] days) => this.days = days;

    /// <summary>First day.</summary>
    public DateOnly First => days[0].Date;

    /// <summary>Last day.</summary>
    public DateOnly Last => days[^1].Date;

    /// <summary>All days, in order.</summary>
    public IReadOnlyList<DailyWeather> Days => days;

    /// <summary>Number of days that were missing and filled.</summary>
    public int InterpolatedDays => days.Count(day => day.Interpolated);

    /// <summary>Number of hours that were missing and filled in days known by their hours.</summary>
    public int FilledHours => days.Sum(day => day.FilledHours);

    /// <summary>Puts days in order and fills gaps.</summary>
    /// <param name="what">The file or field, for refusals.</param>
    /// <param name="given">The days known, in any order, each once.</param>
    public static Outcome<WeatherSeries> From(string what, IEnumerable<DailyWeather> given)
    {
        var sorted = given.OrderBy(day => day.Date).ToList();
        if (sorted.Count == 0)
            return new Refusal(what, "no day", "at least one day of weather");

        var refusals = new List<Refusal>();
        var filled = new List<DailyWeather>(sorted.Count);
        foreach (var day in sorted)
        {
            if (Problem(what, day) is { } problem)
                refusals.Add(problem);

            if (filled.Count > 0 && Fill(what, filled, day) is { } gap)
                refusals.Add(gap);

            filled.Add(day);
        }

        return refusals.Count > 0 ? new Outcome<WeatherSeries>.Refused(refusals) : new WeatherSeries([.. filled]);
    }

    /// <summary>The weather of a day: its own, else of the same calendar day; null where the series is shorter than a year and does not hold the day.</summary>
    public DailyWeather? On(DateOnly date)
    {
        var index = date.DayNumber - First.DayNumber;
        if (index >= 0 && index < days.Length)
            return days[index];

        if (days.Length < WholeYearDays)
            return null;

        // The nearest year of the series that holds the calendar day; 29 February is taken as the 28th, a missing day as the one before.
        var day = date is { Month: 2, Day: 29 } ? 28 : date.Day;
        var near = date < First ? new DateOnly(First.Year, date.Month, day) : new DateOnly(Last.Year, date.Month, day);
        index = near.DayNumber - First.DayNumber;
        if (index < 0)
            index += 365;
        else if (index >= days.Length)
            index -= 365;

        return days[Math.Clamp(index, 0, days.Length - 1)] with { Date = date };
    }

    private static Refusal? Fill(string what, List<DailyWeather> filled, DailyWeather next)
    {
        var before = filled[^1];
        var gap = next.Date.DayNumber - before.Date.DayNumber;
        if (gap == 0)
            return new Refusal(what, $"two rows of {Iso(next.Date)}", "each day once");

        if (gap > GapDaysMax + 1)
            return new Refusal(what, $"no day between {Iso(before.Date)} and {Iso(next.Date)}", $"gaps of at most {GapDaysMax} days");

        for (var step = 1; step < gap; step++)
        {
            var share = (double)step / gap;
            double Between(double left, double right) => left + share * (right - left);
            filled.Add(new DailyWeather(
                before.Date.AddDays(step),
                Between(before.MeanCelsius, next.MeanCelsius),
                Between(before.HumidityPercent, next.HumidityPercent),
                before.WindMetresPerSecond is { } left && next.WindMetresPerSecond is { } right ? Between(left, right) : null,
                Interpolated: true));
        }

        return null;
    }

    private static Refusal? Problem(string what, DailyWeather day) =>
        Problem(what, day.Date, new HourlyAir(day.MeanCelsius, day.HumidityPercent, day.WindMetresPerSecond))
        ?? day.Hours?.Select(hour => Problem(what, day.Date, hour)).FirstOrDefault(problem => problem is not null)
        ?? (day.RainMillimetres is { } rain && rain is not (>= 0.0 and <= 2000.0) ? Refuse(what, day.Date, "rain", rain, "0 to 2000 mm") : null);

    private static Refusal? Problem(string what, DateOnly date, HourlyAir air) =>
        air.Celsius is not (>= -40.0 and <= 50.0) ? Refuse(what, date, "temperature", air.Celsius, "-40 to 50 C")
        : air.HumidityPercent is not (>= 0.0 and <= 100.0) ? Refuse(what, date, "relative humidity", air.HumidityPercent, "0 to 100 %")
        : air.WindMetresPerSecond is { } wind && wind is not (>= 0.0 and <= 60.0) ? Refuse(what, date, "wind", wind, "0 to 60 m/s")
        : null;

    private static Refusal Refuse(string what, DateOnly date, string quantity, double value, string accepted) =>
        new($"{what}, {Iso(date)}, {quantity}", value.ToString("0.###", CultureInfo.InvariantCulture), accepted);

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
