using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Whether a book, or a copy of one, is as it was written.</summary>
public static class Verify
{
    public static Command Command { get; } = Command.Of("verify", "", "Checks every seal of a book, or a copy of one, and says what is broken and where", Run) with
    {
        AtTerminalOnly = true,
        Argument = new("FILE", "a copy made by backup or export, instead of the book itself", IsRequired: false),
        Options = BookPlace.Options,
        Examples = ["verify --yard demonstration", "verify demo/examples/book-copy.jsonl"],
    };

    /// <summary>A sound book.</summary>
    /// <param name="Checked">The book or the copy.</param>
    /// <param name="Entries">How many entries it holds.</param>
    /// <param name="LastWrittenAtUtc">When the last of them was taken.</param>
    /// <param name="Sound">Always true: a book with faults is no answer but a list of them.</param>
    public sealed record Answer(string Checked, int Entries, DateTime? LastWrittenAtUtc, bool Sound);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        if (ask.Argument is { } name)
        {
            if (ask.Has("data") || ask.Has("yard"))
                ask.Refuse(ask.Has("yard") ? "yard" : "data", name, "a book or a FILE, not both");
            var text = ask.ArgumentFile();
            return ask.Refuses ? ask.Refused<Answer>() : BookFile.Read(name, text).Then(entries => Sound(name, entries));
        }

        var place = ask.BookPlace() ?? BookPlace.Usual;
        if (ask.Book() is not { } book)
            return ask.Refused<Answer>();

        return book.Verify() is { Count: > 0 } faults
            ? new Outcome<Answer>.NoAnswer($"{place} is not sound, {faults.Count} {(faults.Count == 1 ? "fault" : "faults")}: {string.Join(" ", faults)}")
            : Sound(place.ToString()!, book.State.Entries);
    }

    private static Outcome<Answer> Sound(string what, IReadOnlyList<Entry> entries) => new Answer(what, entries.Count, entries.Count > 0 ? entries[^1].WrittenAtUtc : null, true);
}
