using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Tables;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A yard from plain tables.</summary>
public static class Import
{
    /// <summary>The whole log of a book, as export writes it beside the tables.</summary>
    public const string LogFile = "entries.jsonl";

    private const string RefusedName = "refused";
    private const int FaultsShown = 200;

    public static Command Command { get; } = Command.Of("import", "", "Reads tables (logs.csv, stacks.csv …) into a book: all rows or none, every bad row named", Run) with
    {
        AtTerminalOnly = true,
        Argument = new("FOLDER|FILE", "a folder of tables as in demo, or one table; its name says what it holds: logs.csv, logs.2025.csv"),
        Options =
        [
            .. BookPlace.Options,
            Option.Flag("check", "only read and check; write nothing"),
            Option.Flag("good-rows", $"write the good rows, and put the bad ones into a folder \"{RefusedName}\" to be mended and imported from there"),
            Option.Optional("by", "NAME", "who says so, where a row has no column by (default: import)"),
        ],
        Examples = ["import demo/examples/own-yard --check --yard demonstration", "import demo/examples/own-yard --data data/own"],
    };

    /// <summary>One row, or column, that was kept out.</summary>
    public sealed record Fault(string File, int? Line, string Column, string Given, string Accepted);

    /// <summary>One file.</summary>
    public sealed record FileRead(string File, string Table, int Entries, int LinesRefused);

    /// <summary>What an import did, or would do.</summary>
    /// <param name="Book">The book.</param>
    /// <param name="EntriesWritten">Entries added; with --check, those that would be.</param>
    /// <param name="Written">False with --check.</param>
    /// <param name="EntriesKnownBefore">Rows the book had already.</param>
    /// <param name="Files">The files read.</param>
    /// <param name="Refused">What was kept out, with --good-rows.</param>
    /// <param name="LeftAlone">Files that are no table of the book.</param>
    /// <param name="RefusedFolder">Where the rows kept out lie.</param>
    /// <param name="NamesAccepted">Names a table may have, where a file was left alone.</param>
    public sealed record Answer(
        string Book, int EntriesWritten, bool Written, int EntriesKnownBefore, IReadOnlyList<FileRead> Files, IReadOnlyList<Fault> Refused, IReadOnlyList<string> LeftAlone, string? RefusedFolder, IReadOnlyList<string> NamesAccepted);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var place = ask.BookPlace() ?? BookPlace.Usual;
        var from = ask.Argument!;
        if (ImportFiles.Of(from) is not Outcome<ImportFiles>.Done(var files))
            return new Refusal("FOLDER|FILE", from, "a folder with tables (.csv), or one table");
        if (files.Misnamed is { Count: > 0 } misnamed)
            return new Outcome<Answer>.Refused(misnamed);

        // Of a book that is not there yet nothing is made before its tables are known to be good.
        if (place is BookPlace.InFile { Path: var path } && !File.Exists(path) && Into(ask, place, new YardBook(new MemoryBookStore(), TimeProvider.System), files, check: true) is var tried and not Outcome<Answer>.Done)
            return tried;
        if (ask.Book(make: !ask.Has("check")) is not { } book)
            return ask.Has("check") && !ask.Has("yard") ? Into(ask, place, new YardBook(new MemoryBookStore(), TimeProvider.System), files, check: true) : ask.Refused<Answer>();

        return Into(ask, place, book, files, ask.Has("check"));
    }

    private static Outcome<Answer> Into(Ask ask, BookPlace place, YardBook book, ImportFiles files, bool check) =>
        WithLog(book, files).Then(work => Into(ask, place, book, work, files, check));

    // The whole log of an export goes into an empty book first, in memory, so that log and tables are then written as one.
    private static Outcome<YardBook> WithLog(YardBook book, ImportFiles files)
    {
        if (files.Log is not { } log)
            return book;

        return BookFile.Read(LogFile, log).Then<YardBook>(entries =>
        {
            var known = book.State.Entries.Select(entry => entry.Id).ToHashSet();
            if (known.Count == 0)
                return new YardBook(new MemoryBookStore(entries), TimeProvider.System);
            return entries.All(entry => known.Contains(entry.Id))
                ? book
                : new Refusal(LogFile, $"a log with {entries.Count(entry => !known.Contains(entry.Id))} entries that the book has not", "an empty book for a whole log; for tables alone, leave this file out of the folder");
        });
    }

    private static Outcome<Answer> Into(Ask ask, BookPlace place, YardBook book, YardBook work, ImportFiles files, bool check)
    {
        var tables = YardImport.Read(files.Tables, ask.TextOrNull("by") ?? "import");
        var found = YardImport.Check(work, tables);
        if (found.Refused.Count > 0 && !ask.Has("good-rows"))
            return new Outcome<Answer>.Refused([.. found.Refused.Take(FaultsShown), HowToGoOn(found)]);

        var before = book.State.Entries.Count;
        var would = found.Good.Count + work.State.Entries.Count - before;
        if (check)
            return Told(place, files, tables, found, would, false, null);

        return Write(book, work, [.. found.Good.Select(row => row.Entry)])
            .Then(_ => Told(place, files, tables, found, book.State.Entries.Count - before, true, found.RefusedLines.Count > 0 ? files.PutAside(RefusedName, found) : null));
    }

    private static Outcome<YardState> Write(YardBook book, YardBook work, IReadOnlyList<NewEntry> good) =>
        ReferenceEquals(book, work)
            ? book.Write(good).Then<YardState>(_ => book.State)
            : work.Write(good).Then(_ => book.Restore(work.State.Entries));

    private static Refusal HowToGoOn(CheckedTables found)
    {
        var more = found.Refused.Count > FaultsShown ? string.Create(CultureInfo.InvariantCulture, $"{found.Refused.Count - FaultsShown} more faults than shown; ") : "";
        return new("import", string.Create(CultureInfo.InvariantCulture, $"{more}{found.RefusedLines.Count} bad rows and {found.Good.Count + found.KnownBefore} good entries; nothing was written"),
            $"good rows only; --good-rows writes the good ones and puts the bad ones into a folder \"{RefusedName}\" to be mended");
    }

    private static Outcome<Answer> Told(BookPlace place, ImportFiles files, ReadTables tables, CheckedTables found, int entries, bool written, string? aside)
    {
        var bad = found.RefusedLines.ToLookup(row => row.File);
        return new Answer(
            place.ToString()!, entries, written, found.KnownBefore,
            [.. files.Tables.Where(file => YardTables.For(file.Name) is not null).Select(file => Path.GetFileName(file.Name)).Select(file => new FileRead(
                file, YardTables.For(file)!.Name, tables.Entries.Count(row => row.File == file), bad[file].Distinct().Count()))],
            [.. found.Refused.Select(FaultOf)], tables.LeftAlone, aside, tables.LeftAlone.Count > 0 ? ImportFiles.Names : []);
    }

    // "logs.csv, line 3, species" taken apart again.
    private static Fault FaultOf(Refusal refusal)
    {
        var parts = refusal.What.Split(", line ", 2);
        var rest = parts.Length == 2 ? parts[1].Split(", ", 2) : [];
        return new(parts[0], rest.Length == 2 ? int.Parse(rest[0], CultureInfo.InvariantCulture) : null, rest.Length == 2 ? rest[1] : "", refusal.Given, refusal.Accepted);
    }
}
