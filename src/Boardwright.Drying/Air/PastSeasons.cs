using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>The same season of past years, each a weather that could come again: what actually happened from day to day, not a usual air with chance added.</summary>
/// <method page="docs/methods/air-drying.md"/>
public sealed class PastSeasons
{
    /// <summary>Fewest years that can stand for what may come.</summary>
    public const int YearsMin = 5;

    private readonly WeatherSeries past;
    private readonly int yearsFirst;

    private PastSeasons(WeatherSeries past, int years)
    {
        this.past = past;
        Years = years;
        yearsFirst = past.First.DayOfYear == 1 ? past.First.Year : past.First.Year + 1;
    }

    /// <summary>Number of whole calendar years.</summary>
    public int Years { get; }

    /// <summary>From the weather of at least five whole calendar years.</summary>
    /// <param name="what">The file or field, for refusals.</param>
    /// <param name="past">The weather.</param>
    public static Outcome<PastSeasons> From(string what, WeatherSeries past)
    {
        ArgumentNullException.ThrowIfNull(past);
        var first = past.First.DayOfYear == 1 ? past.First.Year : past.First.Year + 1;
        var last = past.Last.AddDays(1).DayOfYear == 1 ? past.Last.Year : past.Last.Year - 1;
        var years = Math.Max(0, last - first + 1);
        return years < YearsMin
            ? new Refusal(what, $"{years.ToString(CultureInfo.InvariantCulture)} whole calendar years", $"at least {YearsMin} whole calendar years of weather in a row")
            : new PastSeasons(past, years);
    }

    /// <summary>The weather of a day if a season begun in one of the years came again; after the last year it goes on with the first.</summary>
    /// <param name="date">The day.</param>
    /// <param name="begun">Day from which the past is used.</param>
    /// <param name="season">Which season, 0 and more; more than there are begin anew.</param>
    internal DailyWeather On(DateOnly date, DateOnly begun, int season)
    {
        var year = yearsFirst + (season + date.Year - begun.Year) % Years;
        var day = date is { Month: 2, Day: 29 } ? 28 : date.Day;
        return past.On(new DateOnly(year, date.Month, day))!.Value with { Date = date };
    }
}
