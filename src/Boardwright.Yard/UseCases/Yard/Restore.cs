using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A book from its copy.</summary>
public static class Restore
{
    public static Command Command { get; } = Command.Of("restore", "", "Makes a book from a copy, entry by entry as it was; never over another book without being told", Run) with
    {
        AtTerminalOnly = true,
        Argument = new("FILE", "a copy made by backup, or the entries.jsonl of an export", IsRequired: true),
        Options =
        [
            .. BookPlace.Options,
            Option.Flag("check", "only read the copy and check its hash and its numbers; write nothing"),
            Option.Flag("replace", "put the copy in the place of a book that has entries; that book is kept beside it under another name"),
        ],
        Examples = ["restore demo/examples/book-copy.jsonl --check", "restore demo/examples/book-copy.jsonl --data data/restored"],
    };

    /// <summary>What was restored.</summary>
    /// <param name="Book">The book.</param>
    /// <param name="Copy">The copy it was made from.</param>
    /// <param name="Entries">Entries of the copy.</param>
    /// <param name="EntriesWritten">How many of them were written now: all, or none.</param>
    /// <param name="OldBook">Where the book that was replaced is kept.</param>
    /// <param name="Misfits">Entries that do not fit by the rules of this program; they are kept as they are.</param>
    public sealed record Answer(string Book, string Copy, int Entries, int EntriesWritten, string? OldBook, IReadOnlyList<string> Misfits);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        var place = ask.BookPlace() ?? BookPlace.Usual;
        if (ask.Refuses)
            return ask.Refused<Answer>();

        return BookFile.Read(ask.Argument!, text).Then(copy => ask.Has("check") ? Told(ask, place, copy, 0, null, YardState.Of(copy, default)) : Write(ask, place, copy));
    }

    private static Outcome<Answer> Write(Ask ask, BookPlace place, IReadOnlyList<Entry> copy)
    {
        if (ask.Book(make: true) is not { } book)
            return ask.Refused<Answer>();

        var present = book.State;
        if (present.Entries.Count == 0)
            return book.Restore(copy).Then(state => Told(ask, place, copy, copy.Count, null, state));
        if (present.Entries.Select(BookJson.Line).SequenceEqual(copy.Select(BookJson.Line)))
            return Told(ask, place, copy, 0, null, present);
        if (!ask.Has("replace"))
        {
            return new Refusal(ask.Has("yard") ? "--yard" : "--data", $"{place}, which has {present.Entries.Count} entries",
                "an empty book or a new place; with --replace the copy takes its place and the book is kept beside it under another name");
        }

        return ask.ReplaceBook(place, copy).Then(old => Told(ask, place, copy, copy.Count, old, YardState.Of(copy, default)));
    }

    private static Outcome<Answer> Told(Ask ask, BookPlace place, IReadOnlyList<Entry> copy, int written, string? old, YardState state) => new Answer(
        ask.Has("check") ? "not written" : place.ToString()!, ask.Argument!, copy.Count, written, old, [.. state.Misfits.Select(misfit => $"entry {misfit.Entry}: {misfit.Why}")]);
}
