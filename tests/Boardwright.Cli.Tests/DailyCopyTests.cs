using Boardwright.Quantities;
using Boardwright.Storage.Sqlite;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Commands;
using Boardwright.Yard.UseCases;

namespace Boardwright.Cli.Tests;

/// <summary>The copy a serving program makes by itself each day.</summary>
public sealed class DailyCopyTests
{
    private static readonly DateOnly Monday = new(2026, 11, 2);

    [Fact]
    public void A_day_has_one_copy_and_a_day_without_entries_none()
    {
        using var at = new BookAt("sqlite");
        at.Json("demo");
        var (place, root) = (new BookPlace.InFile(Path.Combine(at.Folder, "data", "yard.db")), Path.Combine(at.Folder, "daily"));
        var book = new YardBook(SqliteBook.Open(place.Path), TimeProvider.System);

        var first = Assert.IsType<Outcome<Backup.Answer>.Done>(DailyCopy.Make(book, place, root, Monday)).Value;
        Assert.Equal(book.State.Entries.Count, first.Entries);
        Assert.Null(DailyCopy.Make(book, place, root, Monday));
        Assert.Null(DailyCopy.Make(book, place, root, Monday.AddDays(1)));

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new FuelCounted(3.5, 0.7, "white ash", 25.0)));
        var second = Assert.IsType<Outcome<Backup.Answer>.Done>(DailyCopy.Make(book, place, root, Monday.AddDays(2))).Value;

        Assert.Equal(first.Entries + 1, second.Entries);
        Assert.Equal(2, Directory.GetDirectories(root).Length);
    }

    [Fact]
    public void The_last_31_copies_stay_and_the_last_of_each_month()
    {
        var days = Enumerable.Range(0, 400).Select(Monday.AddDays).ToList();

        var gone = DailyCopy.Superfluous(days).ToHashSet();
        var left = days.Where(day => !gone.Contains(day)).ToList();

        Assert.Equal(days.TakeLast(DailyCopy.DaysKept), left.TakeLast(DailyCopy.DaysKept));
        Assert.All(left.SkipLast(DailyCopy.DaysKept), day => Assert.Equal(DateTime.DaysInMonth(day.Year, day.Month), day.Day));
        Assert.Equal(days.Select(day => (day.Year, day.Month)).Distinct(), left.Select(day => (day.Year, day.Month)).Distinct());
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_told()
    {
        using var at = new BookAt("sqlite");
        at.Json("demo");
        var place = new BookPlace.InFile(Path.Combine(at.Folder, "data", "yard.db"));
        var inTheWay = at.Write("daily", "a file, not a folder");

        var refused = Assert.IsType<Outcome<Backup.Answer>.Refused>(DailyCopy.Make(new YardBook(SqliteBook.Open(place.Path), TimeProvider.System), place, inTheWay, Monday));

        Assert.Contains("a folder that can be written", refused.Reasons[0].ToString(), StringComparison.Ordinal);
    }
}
