using System.Globalization;
using System.Text.Json;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A copy of the whole book in one text file.</summary>
public static class Backup
{
    public static Command Command { get; } = Command.Of("backup", "", "Writes a copy of the whole book into a folder, checked by reading it back; never over another", Run) with
    {
        AtTerminalOnly = true,
        Argument = new("FOLDER", "where the copy goes, best on another disk (default: copies, beside the book)", IsRequired: false),
        Options = BookPlace.Options,
        Examples = ["backup data/copies --yard demonstration"],
    };

    /// <summary>What was written.</summary>
    /// <param name="Book">The book.</param>
    /// <param name="Copy">The copy's file.</param>
    /// <param name="Entries">Entries in it.</param>
    /// <param name="Sha256">Hash of the entries, the one its last line names.</param>
    public sealed record Answer(string Book, string Copy, int Entries, string Sha256);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var place = ask.BookPlace() ?? BookPlace.Usual;
        return ask.Book() is not { } book ? ask.Refused<Answer>() : Into(ask.Argument ?? UsualFolder(place), book, place);
    }

    /// <summary>Writes a copy into a folder under a name of its own, and reads it back.</summary>
    public static Outcome<Answer> Into(string folder, YardBook book, BookPlace place)
    {
        ArgumentNullException.ThrowIfNull(book);
        IReadOnlyList<Entry> entries;
        var faults = book.Verify();
        try
        {
            entries = book.State.Entries;
        }
        catch (JsonException) when (faults.Count > 0)
        {
            return new Outcome<Answer>.NoAnswer($"{place} cannot be read: {string.Join(" ", faults)} Keep the database's own files as they are, and restore the last copy into a new book.");
        }

        try
        {
            Directory.CreateDirectory(folder);
            var path = FreeName(folder, entries);
            BookFile.Write(path, entries);
            var text = File.ReadAllText(path);
            if (faults.Count > 0)
                return new Outcome<Answer>.NoAnswer($"{path} was written, {entries.Count} entries, but the book is not sound: {string.Join(" ", faults)} Keep the copies before this one.");

            return BookFile.Read(path, text) is Outcome<IReadOnlyList<Entry>>.Done(var back) && back.Select(BookJson.Line).SequenceEqual(entries.Select(BookJson.Line))
                ? new Answer(place.ToString()!, path, entries.Count, BookFile.Hash(text))
                : new Outcome<Answer>.NoAnswer($"{path} does not read back as it was written; keep the copies before it, and write this one on another disk.");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new Refusal("FOLDER", folder, $"a folder that can be written: {fault.Message}");
        }
    }

    /// <summary>Copies lie beside the book where nobody names another place.</summary>
    public static string UsualFolder(BookPlace place) => Path.Combine(place is BookPlace.InFile { Path: var path } ? Path.GetDirectoryName(path) ?? "" : "data", "copies");

    private static string FreeName(string folder, IReadOnlyList<Entry> entries)
    {
        var stamp = entries.Count > 0 ? entries[^1].WrittenAtUtc.ToString("yyyy-MM-dd'T'HHmmss", CultureInfo.InvariantCulture) : "empty";
        var stem = string.Create(CultureInfo.InvariantCulture, $"yard-{stamp}-{entries.Count:000000}");
        return Enumerable.Range(1, int.MaxValue).Select(n => Path.Combine(folder, n == 1 ? $"{stem}.jsonl" : $"{stem}-{n}.jsonl")).First(path => !File.Exists(path));
    }
}
