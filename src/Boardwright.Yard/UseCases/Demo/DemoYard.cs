using System.Globalization;
using System.Text.RegularExpressions;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.Tables;

namespace Boardwright.Yard.UseCases;

/// <summary>The demonstration yard: plain tables and a season of dated events, moved by whole weeks to the day it is shown.</summary>
public static partial class DemoYard
{
    private const int DaysAWeek = 7;
    private const string Writer = "demonstration";

    /// <summary>The day the tables were written for, a Monday.</summary>
    public static DateOnly WrittenFor { get; } = new(2026, 11, 2);

    /// <summary>Whole weeks from the day the tables were written for to the Monday of a day; none without one.</summary>
    public static int WeeksTo(DateOnly? realToday) =>
        realToday is { } day ? (int)Math.Floor((day.DayNumber - WrittenFor.DayNumber) / (double)DaysAWeek) : 0;

    /// <summary>The entries of the yard as it stands on its day: the tables, and the events up to and on that day.</summary>
    /// <param name="folder">Where the tables are.</param>
    /// <param name="realToday">The day to move to; null keeps the dates as written.</param>
    public static Outcome<IReadOnlyList<NewEntry>> Load(string folder, DateOnly? realToday = null)
    {
        var weeks = WeeksTo(realToday);
        var today = WrittenFor.AddDays(weeks * DaysAWeek);
        var tables = YardImport.Read(
            Directory.EnumerateFiles(folder, "*.csv").Where(file => Path.GetFileName(file) != SeasonWeather).Select(file => (file, Moved(File.ReadAllText(file), weeks))), Writer);
        if (tables.Refusals.Count > 0)
            return new Outcome<IReadOnlyList<NewEntry>>.Refused(tables.Refusals);

        var entries = new List<NewEntry> { new(Writer, new DayTurned(today), today.ToDateTime(TimeOnly.MinValue)) };
        entries.AddRange(tables.Entries.Select(e => MonthMoved(e.Entry, weeks)));
        entries.AddRange(Season(folder, weeks).Where(line => DateOnly.FromDateTime(line.HappenedAt) <= today).SelectMany(line => line.Entry is { } entry ? [entry] : Array.Empty<NewEntry>()));
        return entries;
    }

    /// <summary>Fills an empty book.</summary>
    public static Outcome<IReadOnlyList<Entry>> Fill(YardBook book, string folder, DateOnly? realToday = null) =>
        book.State.Entries.Count > 0
            ? new Refusal("book", $"{book.State.Entries.Count} entries", "an empty book; the demonstration is never mixed with real wood")
            : Load(folder, realToday).Then(book.Write);

    /// <summary>Every date of a text moved by whole weeks, so that weekdays stay.</summary>
    internal static string Moved(string text, int weeks) => weeks == 0 ? text : IsoDate().Replace(text, match =>
        DateOnly.TryParseExact(match.Value, "yyyy-MM-dd", out var date) ? date.AddDays(weeks * DaysAWeek).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : match.Value);

    // Climate normals go by the month: they move with the season, to the nearest month.
    private static NewEntry MonthMoved(NewEntry entry, int weeks) => entry.Fact is ClimateNormalSet normal
        ? entry with { Fact = normal with { Month = Modulo(normal.Month - 1 + (int)Math.Round(weeks * DaysAWeek / 30.4375), 12) + 1 } }
        : entry;

    private static int Modulo(int value, int by) => ((value % by) + by) % by;

    [GeneratedRegex(@"\d{4}-\d\d-\d\d", RegexOptions.CultureInvariant)]
    private static partial Regex IsoDate();
}
