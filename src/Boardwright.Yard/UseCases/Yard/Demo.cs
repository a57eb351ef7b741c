using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A demonstration yard to try everything on.</summary>
public static class Demo
{
    public static Command Command { get; } = Command.Of("demo", "", "Makes the demonstration yard in an empty book, and turns its season forward day by day", Run) with
    {
        AtTerminalOnly = true,
        Options =
        [
            .. BookPlace.Options,
            Option.Optional("today", "DATE", "the day it shows; dates move by whole weeks (default: 2026-11-02, for which it was written)"),
            Option.Optional("until", "DATE", "turn its days forward to this one; what happens on each is written"),
            Option.Optional("from", "FOLDER", "tables to make it from (default: those that come with the program)"),
        ],
        Examples = ["demo --data data/demonstration", "demo --yard demonstration --until 2026-11-14"],
    };

    /// <summary>A line of the season that did not fit what was written meanwhile.</summary>
    public sealed record LeftOut(DateTime At, string By, string Why);

    public sealed record Answer(string Book, DateOnly Today, int Entries, int EntriesWritten, IReadOnlyList<LeftOut> LeftOut, string Next);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var place = ask.BookPlace() ?? BookPlace.Usual;
        DateOnly? today = ask.Has("today") ? ask.Date("today") : null;
        DateOnly? until = ask.Has("until") ? ask.Date("until") : null;
        var folder = ask.TextOrNull("from") ?? DemonstrationYard.Folder;
        if (!Directory.Exists(folder))
            ask.Refuse("from", folder, "a folder that exists");
        if (ask.Refuses || ask.Book(make: true) is not { } book)
            return ask.Refused<Answer>();

        var before = place is BookPlace.InMemory ? 0 : book.State.Entries.Count;
        return Filled(book, folder, today)
            .Then(filled => until is { } last && last > filled.State.Today ? DemoYard.PlayForward(filled, folder, last) : new Outcome<IReadOnlyList<DemoYard.PlayedDay>>.Done([]))
            .Then<Answer>(days => new Answer(
                place.ToString()!, book.State.Today, book.State.Entries.Count, book.State.Entries.Count - before,
                [.. days.SelectMany(day => day.Left).Select(left => new LeftOut(left.Line.HappenedAt, left.Line.By, left.Why.ToString()))],
                Next(ask)));
    }

    private static Outcome<YardBook> Filled(YardBook book, string folder, DateOnly? today) =>
        book.State.IsDemonstration ? book
        : DemoYard.Fill(book, folder, today) switch
        {
            Outcome<IReadOnlyList<Entry>>.Refused(var reasons) => new Outcome<YardBook>.Refused(reasons),
            _ => book,
        };

    private static string Next(Ask ask) => ask.Has("yard") ? $"serve --yard \"{ask.Text("yard")}\"" : $"serve --data {ask.TextOrNull("data") ?? "data"}";
}
