using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Reads the tables of drying: daily weather, and readings on a stack.</summary>
public static class DryingFiles
{
    /// <summary>Daily weather: date,t_mean_c,rh_mean_pct and, if there, wind_mean_m_s and rain_mm; every bad row is named.</summary>
    public static Outcome<WeatherSeries> Weather(string what, string text) => CsvTable.Read(what, text, "date", "t_mean_c", "rh_mean_pct").Then(table =>
    {
        var refusals = new List<Refusal>();
        var days = new List<DailyWeather>();
        foreach (var row in table.Rows)
        {
            var date = Keep(row.Get("date", Date), refusals);
            var celsius = Keep(row.Number("t_mean_c"), refusals);
            var humidity = Keep(row.Number("rh_mean_pct"), refusals);
            double? wind = row.Text("wind_mean_m_s").Length > 0 ? Keep(row.Number("wind_mean_m_s"), refusals) : null;
            double? rain = row.Text("rain_mm").Length > 0 ? Keep(row.Number("rain_mm"), refusals) : null;
            days.Add(new DailyWeather(date, celsius, humidity, wind, RainMillimetres: rain));
        }

        return refusals.Count > 0 ? new Outcome<WeatherSeries>.Refused(refusals) : WeatherSeries.From(what, days);
    });

    /// <summary>Readings: date,mc_pct, one row a board; rows of one day make one reading.</summary>
    public static Outcome<IReadOnlyList<StackReading>> Readings(string what, string text) => CsvTable.Read(what, text, "date", "mc_pct").Then(table =>
    {
        var refusals = new List<Refusal>();
        var rows = table.Rows.Select(row => (Date: Keep(row.Get("date", Date), refusals), Moisture: Keep(row.Get("mc_pct", Percent), refusals))).ToList();
        return refusals.Count > 0
            ? new Outcome<IReadOnlyList<StackReading>>.Refused(refusals)
            : (Outcome<IReadOnlyList<StackReading>>)new Outcome<IReadOnlyList<StackReading>>.Done(
                [.. rows.GroupBy(row => row.Date).Select(day => StackReading.Of(day.Key, [.. day.Select(row => row.Moisture)]))]);
    });

    private static T Keep<T>(Outcome<T> reading, List<Refusal> refusals)
        where T : struct
    {
        if (reading is Outcome<T>.Done(var value))
            return value;

        if (reading is Outcome<T>.Refused(var reasons))
            refusals.AddRange(reasons);

        return default;
    }

    private static Outcome<DateOnly> Date(string what, string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", out var date) ? date : new Refusal(what, text, "a date as year-month-day, such as 2026-11-02");

    private static Outcome<MoistureContent> Percent(string what, string text) => Read.MoistureContent(what, Read.Number(what, text) is Outcome<double>.Done ? text + "%" : text);
}
