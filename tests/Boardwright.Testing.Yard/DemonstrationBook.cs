using System.Collections.Concurrent;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Testing;

/// <summary>The demonstration yard for tests of any project: filled once and its season played once in a test run, then shared.</summary>
/// <remarks>States never change and may be shared. <see cref="Open"/> gives a book of one's own to write into.</remarks>
public static class DemonstrationBook
{
    /// <summary>The day of the tables, a Monday.</summary>
    public static readonly DateOnly FirstDay = DemoYard.WrittenFor;

    /// <summary>The last day of the season.</summary>
    public static readonly DateOnly LastDay = new(2026, 12, 31);

    /// <summary>Where the tables are.</summary>
    public static readonly string Folder = Repository.PathOf("demo");

    private static readonly TimeOnly Afternoon = new(16, 0);
    private static readonly Lazy<IReadOnlyList<Entry>> Filled = new(() => Book([], FirstDay, book => DemoYard.Fill(book, Folder).Then<int>(_ => 0)));
    private static readonly Lazy<IReadOnlyList<Entry>> Played = new(() => Book(Filled.Value, LastDay, book => DemoYard.PlayForward(book, Folder, LastDay).Then<int>(_ => 0)));
    private static readonly ConcurrentDictionary<DateOnly, YardState> States = new();

    /// <summary>The yard on its first day, 2 November 2026.</summary>
    public static YardState Yard => On(FirstDay);

    /// <summary>The yard at the end of a day of its season.</summary>
    public static YardState On(DateOnly day) => States.GetOrAdd(day, static wanted => YardState.Of(Entries(wanted), wanted));

    /// <summary>The entries written by the end of a day.</summary>
    public static IReadOnlyList<Entry> Entries(DateOnly day)
    {
        if (day == FirstDay)
            return Filled.Value;
        if (day < FirstDay || day > LastDay)
            throw new ArgumentOutOfRangeException(nameof(day), day, $"Accepted: {FirstDay:yyyy-MM-dd} to {LastDay:yyyy-MM-dd}.");
        return [.. Played.Value.TakeWhile(entry => entry.Fact is not DayTurned turned || turned.Day <= day)];
    }

    /// <summary>A book of one's own on a day of the season, four in the afternoon.</summary>
    public static YardBook Open(DateOnly? day = null) =>
        new(new MemoryBookStore(Entries(day ?? FirstDay)), new StandingClock((day ?? FirstDay).ToDateTime(Afternoon)));

    private static IReadOnlyList<Entry> Book(IReadOnlyList<Entry> from, DateOnly day, Func<YardBook, Outcome<int>> fill)
    {
        var book = new YardBook(new MemoryBookStore(from), new StandingClock(day.ToDateTime(Afternoon)));
        return fill(book) switch
        {
            Outcome<int>.Done => book.State.Entries,
            Outcome<int>.Refused(var reasons) => throw new InvalidDataException($"The demonstration's tables do not fit: {string.Join("; ", reasons.Take(20))}"),
            var other => throw new InvalidDataException($"{other}"),
        };
    }
}
