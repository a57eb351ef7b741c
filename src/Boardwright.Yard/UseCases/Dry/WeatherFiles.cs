using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Reads weather: daily tables, hourly tables of weather services, and the open format of hourly weather for buildings (EPW).</summary>
/// <remarks>
/// <para>Daily: date, t_mean_c, rh_mean_pct and, if there, wind_mean_m_s, rain_mm. Hourly: time (or date and hour), a temperature t_c or t_f, a humidity rh_pct or a dew point
/// dew_c or dew_f, and, if there, wind_m_s, wind_km_h, wind_kn or wind_mph, rain_mm. A service's own names are given as a mapping, such as
/// "time=valid,t_f=tmpf,rh_pct=relh,wind_kn=sknt"; its marks of missing values as a list. Empty fields are missing.</para>
/// <para>Times are local standard time: 2026-05-01 13:00, 2026-05-01T13:00, 2026-05-01 13:00:00, 2026050113 or 202605011300. An hour with reports counts by their mean.</para>
/// </remarks>
public static class WeatherFiles
{
    private static readonly string[] TimeForms =
        ["yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyyMMddHH", "yyyyMMddHHmm", "yyyy-MM-dd H:mm"];

    private static readonly (string Name, double Factor, double Shift)[] Temperatures = [("t_c", 1.0, 0.0), ("t_f", 5.0 / 9.0, -32.0)];
    private static readonly (string Name, double Factor, double Shift)[] DewPoints = [("dew_c", 1.0, 0.0), ("dew_f", 5.0 / 9.0, -32.0)];
    private static readonly (string Name, double Factor, double Shift)[] Winds = [("wind_m_s", 1.0, 0.0), ("wind_km_h", 1.0 / 3.6, 0.0), ("wind_kn", 1852.0 / 3600.0, 0.0), ("wind_mph", 0.44704, 0.0)];

    /// <summary>Weather of any of the forms.</summary>
    /// <param name="what">The file, for refusals.</param>
    /// <param name="text">Its text.</param>
    /// <param name="columns">Mapping of our names to the file's, name=theirs parted by commas; null when it uses ours.</param>
    /// <param name="missing">Marks of a missing value, parted by commas, such as M,-999; null for none but the empty field.</param>
    public static Outcome<WeatherSeries> Read(string what, string text, string? columns = null, string? missing = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.TrimStart('\uFEFF').StartsWith("LOCATION,", StringComparison.OrdinalIgnoreCase))
            return EpwText.Read(what, text).Then(hours => HourlyWeather.Series(what, hours));

        return Names(what, columns).Then(names => CsvTable.Read(what, text).Then(table =>
            table.Columns.Contains("t_mean_c") && columns is null ? DryingFiles.Weather(what, text) : Hourly(what, table, names, [.. (missing ?? "").Split(',', StringSplitOptions.TrimEntries)])));
    }

    private static Outcome<Dictionary<string, string>> Names(string what, string? columns)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        string[] known = ["time", "date", "hour", "rh_pct", "rain_mm", .. Temperatures.Concat(DewPoints).Concat(Winds).Select(one => one.Name)];
        foreach (var pair in (columns ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var parts = pair.Split('=', 2, StringSplitOptions.TrimEntries);
            if (parts.Length != 2 || !known.Contains(parts[0]))
                return new Refusal($"{what}, columns", pair, $"name=column with one of {string.Join(", ", known)}");

            names[parts[0]] = parts[1].ToLowerInvariant();
        }

        return names;
    }

    private static Outcome<WeatherSeries> Hourly(string what, CsvTable table, Dictionary<string, string> names, HashSet<string> missing)
    {
        string Column(string name) => names.GetValueOrDefault(name, name);
        bool Has(string name) => table.Columns.Contains(Column(name));
        var needed = new List<string>();
        if (!Has("time") && !(Has("date") && Has("hour")))
            needed.Add("time (or date and hour)");
        if (!Temperatures.Any(one => Has(one.Name)))
            needed.Add("t_c or t_f");
        if (!Has("rh_pct") && !DewPoints.Any(one => Has(one.Name)))
            needed.Add("rh_pct or dew_c or dew_f");
        if (needed.Count > 0)
            return new Refusal(what, $"the columns {string.Join(", ", table.Columns)}", $"date,t_mean_c,rh_mean_pct for days; for hours also {string.Join("; ", needed)}, or a mapping of columns");

        var refusals = new List<Refusal>();
        var hours = new List<WeatherHour>();
        foreach (var row in table.Rows)
        {
            double? Number(string name, double factor = 1.0, double shift = 0.0) => row.Text(Column(name)) is { Length: > 0 } field && !missing.Contains(field)
                ? row.Number(Column(name)) switch
                {
                    Outcome<double>.Done(var value) => (value + shift) * factor,
                    Outcome<double>.Refused(var reasons) => Refuse(reasons),
                    _ => null,
                }
                : null;
            double? Refuse(IReadOnlyList<Refusal> reasons)
            {
                refusals.AddRange(reasons);
                return null;
            }

            double? FirstOf((string Name, double Factor, double Shift)[] ways) => ways.Select(way => Number(way.Name, way.Factor, way.Shift)).FirstOrDefault(value => value is not null);
            if (Time(row, Column) is not { } time)
            {
                refusals.Add(new Refusal($"{what}, line {row.Line}, time", Has("time") ? row.Text(Column("time")) : $"{row.Text(Column("date"))} {row.Text(Column("hour"))}", "local time such as 2026-05-01 13:00"));
                continue;
            }

            var celsius = FirstOf(Temperatures);
            var humidity = Number("rh_pct") ?? (celsius is { } t && FirstOf(DewPoints) is { } dew ? HourlyWeather.HumidityPercent(t, dew) : null);
            hours.Add(new WeatherHour(time, celsius, humidity is > 100.0 and <= 105.0 ? 100.0 : humidity, FirstOf(Winds), Number("rain_mm")));
        }

        return refusals.Count > 0 ? new Outcome<WeatherSeries>.Refused([.. refusals.Take(20)]) : HourlyWeather.Series(what, hours);
    }

    private static DateTime? Time(CsvRow row, Func<string, string> column)
    {
        if (DateTime.TryParseExact(row.Text(column("time")), TimeForms, CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal, out var time))
            return time;

        return DateOnly.TryParseExact(row.Text(column("date")), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            && int.TryParse(row.Text(column("hour")), CultureInfo.InvariantCulture, out var hour) && hour is >= 0 and <= 23
            ? date.ToDateTime(new TimeOnly(hour, 0)) : null;
    }
}
