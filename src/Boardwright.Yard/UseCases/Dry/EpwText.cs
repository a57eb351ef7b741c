using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;

namespace Boardwright.Yard.UseCases;

/// <summary>Reads the open text format of a year of hourly weather for building simulation (EPW): eight lines of heading, then 35 fields an hour.</summary>
/// <remarks>
/// Used are year, month, day, hour (1 is the hour that ends at 1 o'clock), dry bulb (missing 99.9), relative humidity (999), wind (999) and liquid precipitation
/// (999 and, unlike the rest, often absent). A typical year is put together of months of several years: its months are then put in one year, 2001.
/// </remarks>
/// <source id="energyplus-auxiliary-programs" locator="weather file (EPW) data dictionary"/>
/// <method page="docs/methods/air-drying.md"/>
public static class EpwText
{
    private const int HeadingLines = 8;
    private const int FieldsMin = 22;
    private const int DryBulb = 6;
    private const int Humidity = 8;
    private const int Wind = 21;
    private const int Rain = 33;
    private const int TypicalYear = 2001;

    /// <summary>The hours of a file.</summary>
    public static Outcome<IReadOnlyList<WeatherHour>> Read(string what, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var refusals = new List<Refusal>();
        var hours = new List<WeatherHour>();
        var number = 0;
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (++number <= HeadingLines || line.IsWhiteSpace())
                continue;

            if (Hour(line.ToString().Split(',')) is { } hour)
                hours.Add(hour);
            else
                refusals.Add(new Refusal($"{what}, line {number}", line.Length > 40 ? $"{line[..40]}..." : line.ToString(), "year, month, day, hour 1 to 24, minute, and at least 22 fields"));
        }

        if (refusals.Count > 0)
            return new Outcome<IReadOnlyList<WeatherHour>>.Refused([.. refusals.Take(20)]);

        // Many files carry zeros where rain was never recorded.
        if (!hours.Any(hour => hour.RainMillimetres > 0.0))
            hours = [.. hours.Select(hour => hour with { RainMillimetres = null })];

        var years = hours.Select(hour => hour.Time.Year).Distinct().ToList();
        var inOrder = hours.Zip(hours.Skip(1)).All(pair => pair.First.Time <= pair.Second.Time);
        return new Outcome<IReadOnlyList<WeatherHour>>.Done(
            inOrder || years.Count == 1 ? hours : [.. hours.Where(hour => hour.Time is not { Month: 2, Day: 29 }).Select(InTypicalYear)]);
    }

    private static WeatherHour InTypicalYear(WeatherHour hour) =>
        hour with { Time = new DateTime(TypicalYear, hour.Time.Month, hour.Time.Day, hour.Time.Hour, 0, 0, DateTimeKind.Unspecified) };

    private static WeatherHour? Hour(string[] fields)
    {
        if (fields.Length < FieldsMin || !Whole(fields[0], out var year) || !Whole(fields[1], out var month) || !Whole(fields[2], out var day) || !Whole(fields[3], out var ends)
            || ends is < 1 or > 24 || !DateOnly.TryParseExact($"{year:0000}-{month:00}-{day:00}", "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return null;

        return new WeatherHour(date.ToDateTime(new TimeOnly(ends - 1, 0)), Value(fields, DryBulb, 99.9), Value(fields, Humidity, 999.0), Value(fields, Wind, 999.0), Value(fields, Rain, 999.0));
    }

    private static bool Whole(string text, out int value) => int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out value);

    private static double? Value(string[] fields, int index, double missing) =>
        index < fields.Length && double.TryParse(fields[index], NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value < missing ? value : null;
}
