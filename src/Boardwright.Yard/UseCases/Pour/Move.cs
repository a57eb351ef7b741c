using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Writes another day for a pour, and why.</summary>
public static class PourMove
{
    /// <param name="book">The book.</param>
    /// <param name="tag">The pour's.</param>
    /// <param name="pourOn">Year-month-day.</param>
    /// <param name="demouldOn">Year-month-day.</param>
    /// <param name="why">In a few words.</param>
    /// <param name="by">Who says so.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, string? pourOn, string? demouldOn, string? why, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var state = book.State;
        var read = new Typed();
        var (pour, demould) = (Day("Pour on", pourOn, read), Day("Demould on", demouldOn, read));
        if (pour is { } from && from < state.Today)
            read.Refuse("Pour on", pourOn, $"a day from {state.Today:yyyy-MM-dd} on");
        if (pour is { } first && demould is { } last && last < first)
            read.Refuse("Demould on", demouldOn, $"a day from {first:yyyy-MM-dd} on");
        if (state.Pours.TryGetValue(tag, out var known) && known.PouredAt is not null)
            read.Refuse(tag, "poured already", "a table still to be poured");
        var reason = read.Named("Why", why, "a few words, such as: wood at 13.8 %, to be dried");
        var who = read.By(state, by);
        return read.Then(() => key.Write(book, who, new PourMoved(tag, pour!.Value, demould!.Value, reason)));
    }

    private static DateOnly? Day(string what, string? text, Typed read)
    {
        if (DateOnly.TryParseExact(text?.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return day;
        read.Refuse(what, text, "a date as year-month-day, such as 2026-12-12");
        return null;
    }
}
