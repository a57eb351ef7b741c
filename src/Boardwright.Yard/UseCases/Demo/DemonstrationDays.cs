using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>The demonstration's days: what is written on each, and turning to the next.</summary>
/// <param name="book">The book.</param>
/// <param name="folder">The demonstration's files; null where the program was started without them.</param>
public sealed class DemonstrationDays(YardBook book, string? folder)
{
    /// <summary>Days that can be turned at once.</summary>
    public const int DaysMax = 60;

    /// <summary>True where days can be turned: the book is a demonstration and its files are at hand.</summary>
    public bool CanTurn => folder is not null && book.State.IsDemonstration;

    /// <summary>Turns a number of days forward and writes what happens on them.</summary>
    public Outcome<IReadOnlyList<DemoYard.PlayedDay>> Turn(int days) =>
        folder is null ? new Refusal("day", "no demonstration files", "a program that was started with the demonstration's folder")
        : days is < 1 or > DaysMax ? new Refusal("days", $"{days}", $"1 to {DaysMax}")
        : DemoYard.PlayForward(book, folder, book.State.Today.AddDays(days));

    /// <summary>What the book says happened on a day, in order, with the told event each belongs to.</summary>
    public IReadOnlyList<(Entry Entry, string? Event)> On(DateOnly day)
    {
        var told = folder is null || !book.State.IsDemonstration ? [] : Lines(day);
        return [.. Corrections.Standing(book.State.Entries).Select(standing => standing.Entry)
            .Where(entry => DateOnly.FromDateTime(entry.HappenedAt) == day && entry.Fact is not (SetupFact or DayTurned or WeatherForecast or WeatherObserved))
            .Select(entry => (entry, told.FirstOrDefault(line => line.HappenedAt == entry.HappenedAt && line.By == entry.By && (line.Fact is null || line.Fact.GetType() == entry.Fact.GetType()))?.Event))];
    }

    /// <summary>Lines of the season up to today that are not in the book, because something else was written meanwhile.</summary>
    public IReadOnlyList<DemoYard.SeasonLine> LeftOut()
    {
        if (!CanTurn)
            return [];
        var state = book.State;
        var written = state.Entries.Select(entry => (entry.HappenedAt, entry.By)).ToHashSet();
        return [.. AllLines().Where(line => DateOnly.FromDateTime(line.HappenedAt) <= state.Today && !written.Contains((line.HappenedAt, line.By)))];
    }

    private List<DemoYard.SeasonLine> Lines(DateOnly day) => [.. AllLines().Where(line => DateOnly.FromDateTime(line.HappenedAt) == day)];

    private IReadOnlyList<DemoYard.SeasonLine> AllLines() => DemoYard.Season(folder!, DemoYard.WeeksTo(book.State.Entries.Select(entry => entry.Fact).OfType<DayTurned>().First().Day));
}
