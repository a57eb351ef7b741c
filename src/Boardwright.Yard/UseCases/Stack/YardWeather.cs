using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>The air of the yard day by day: observed days, then the forecast, then the usual air of the season.</summary>
public static class YardWeather
{
    /// <summary>The weather from a day through another; no answer where days are missing and the climate normals do not fill them.</summary>
    public static Outcome<WeatherSeries> Series(YardState state, DateOnly from, DateOnly through)
    {
        ArgumentNullException.ThrowIfNull(state);
        var normals = Normals(state);
        var days = new List<DailyWeather>();
        for (var day = from; day <= through; day = day.AddDays(1))
        {
            if (state.Weather.TryGetValue(day, out var known))
                days.Add(new DailyWeather(day, known.MeanC, known.MeanRhPct, known.WindMeanMS));
            else if (normals is not null)
                days.Add(normals.On(day));
            else
                return new Outcome<WeatherSeries>.NoAnswer($"No weather is known for {day:d MMM yyyy}, and the usual air of the twelve months is not in the book.");
        }

        return WeatherSeries.From("weather", days);
    }

    /// <summary>Last day whose air was observed; null when none was.</summary>
    public static DateOnly? ObservedThrough(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Weather.Values.LastOrDefault(day => day.Observed)?.Date;
    }

    private static ClimateNormals? Normals(YardState state) =>
        ClimateNormals.From("climate normals", [.. state.Normals.Values.Select(normal => (normal.MeanC, normal.MeanRhPct))]) is Outcome<ClimateNormals>.Done(var normals) ? normals : null;
}
