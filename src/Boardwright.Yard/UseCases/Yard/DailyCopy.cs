using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>The copy the program makes by itself once a day while it serves: into a folder beside the book, so that a mended mistake of yesterday is not lost with today's.</summary>
/// <remarks>It does not take the place of a copy on another disk: what drowns this machine drowns these too.</remarks>
public static class DailyCopy
{
    /// <summary>Copies kept day by day; of older ones the last of each month stays.</summary>
    public const int DaysKept = 31;

    /// <summary>Makes the copy of a day where the day has none and the book has grown since the last one; thins the older ones afterwards.</summary>
    /// <returns>What was written; null where there was nothing to do; refused or no answer as <see cref="Backup.Into"/> says.</returns>
    /// <param name="root">The folder that holds a folder for each day.</param>
    /// <param name="today">The day of the clock on the wall.</param>
    public static Outcome<Backup.Answer>? Make(YardBook book, BookPlace place, string root, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(book);
        var folder = Folder(root, today);
        if (Directory.Exists(folder) || book.State.Entries.Count == LastCount(root))
            return null;

        var outcome = Backup.Into(folder, book, place);
        if (outcome is Outcome<Backup.Answer>.Done)
        {
            foreach (var old in Superfluous([.. Days(root)]))
                Directory.Delete(Folder(root, old), recursive: true);
        }

        return outcome;
    }

    /// <summary>The days whose copies may go: older than the last <see cref="DaysKept"/> of them, and not the last of their month.</summary>
    public static IEnumerable<DateOnly> Superfluous(IReadOnlyList<DateOnly> days)
    {
        ArgumentNullException.ThrowIfNull(days);
        var lastOfMonth = days.GroupBy(day => (day.Year, day.Month)).Select(month => month.Max()).ToHashSet();
        return days.OrderDescending().Skip(DaysKept).Where(day => !lastOfMonth.Contains(day));
    }

    private static string Folder(string root, DateOnly day) => Path.Combine(root, day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    private static IEnumerable<DateOnly> Days(string root) => !Directory.Exists(root)
        ? []
        : Directory.EnumerateDirectories(root).Select(folder => DateOnly.TryParseExact(Path.GetFileName(folder), "yyyy-MM-dd", out var day) ? day : (DateOnly?)null).OfType<DateOnly>();

    // The name of a copy ends in the number of its entries.
    private static int? LastCount(string root)
    {
        List<DateOnly> days = [.. Days(root)];
        return days.Count == 0
            ? null
            : Directory.EnumerateFiles(Folder(root, days.Max()), "yard-*.jsonl").Select(path => Path.GetFileNameWithoutExtension(path).Split('-')[^1]).Select(text => int.TryParse(text, out var count) ? count : (int?)null).Max();
    }
}
