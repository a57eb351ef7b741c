using Boardwright.Quantities;

namespace Boardwright.Yard.Book.Tables;

/// <summary>Plain tables on their way into the book.</summary>
/// <remarks>
/// Every row is read and checked, against the book and against the other rows, before anything is written; every bad row is named with file,
/// line, column, what was found and what is accepted. A row that needs a bad one (a sawn log whose stack was refused) is refused as well.
/// What is good can then be written in one transaction. The same rows imported again add nothing.
/// </remarks>
public static class YardImport
{
    /// <summary>Reads files in the order their tables depend on each other.</summary>
    /// <param name="files">Names and texts.</param>
    /// <param name="by">Who says so where a table does not name somebody.</param>
    public static ReadTables Read(IEnumerable<(string Name, string Text)> files, string by)
    {
        var known = files.Select(file => (file.Name, file.Text, Table: YardTables.For(file.Name))).ToList();
        var tables = known.Where(file => file.Table is not null).OrderBy(file => YardTables.Place(file.Table!)).ThenBy(file => file.Name, StringComparer.Ordinal)
            .Select(file => (File: Path.GetFileName(file.Name), Read: file.Table!.Read(Path.GetFileName(file.Name), file.Text, by))).ToList();
        return new([.. tables.SelectMany(table => table.Read.Entries)], [.. tables.SelectMany(table => table.Read.Refusals)], [.. known.Where(file => file.Table is null).Select(file => file.Name)])
        {
            RefusedLines = [.. tables.SelectMany(table => table.Read.RefusedLines.Select(line => (table.File, line)))],
        };
    }

    /// <summary>What of the tables a book would take. Nothing is written.</summary>
    public static CheckedTables Check(YardBook book, ReadTables tables)
    {
        var kept = book.State.Entries.ToDictionary(entry => entry.Id);
        var known = tables.Entries.Where(row => kept.ContainsKey(row.Entry.Id!.Value)).ToList();
        var changed = known.Where(row => BookJson.Line(kept[row.Entry.Id!.Value].Fact) != BookJson.Line(row.Entry.Fact)).ToList();
        var fresh = tables.Entries.Where(row => !kept.ContainsKey(row.Entry.Id!.Value)).ToList();
        var why = book.Check([.. fresh.Select(row => row.Entry)]);
        var bad = fresh.Zip(why).Where(pair => pair.Second is not null).ToList();
        return new(
            [.. fresh.Where((_, index) => why[index] is null)],
            known.Count - changed.Count,
            [
                .. tables.Refusals,
                .. changed.Select(row => new Refusal(
                    $"{row.File}, line {row.Line}, entry_id", row.Entry.Id!.Value.ToString(),
                    $"the row as entry {kept[row.Entry.Id.Value].Number} of the book has it; a change is a correction, made in the book, and a new row has no entry_id")),
                .. bad.Select(pair => pair.Second! with { What = $"{pair.First.File}, line {pair.First.Line}, {pair.Second!.What}" }),
            ],
            [.. tables.RefusedLines, .. changed.Concat(bad.Select(pair => pair.First)).SelectMany(row => row.Lines.Select(line => (row.File, line)))]);
    }
}

/// <summary>What was read from tables.</summary>
/// <param name="Entries">Entries of good rows.</param>
/// <param name="Refusals">Rows that could not be read.</param>
/// <param name="LeftAlone">Files that are no table of the book.</param>
public sealed record ReadTables(IReadOnlyList<TableEntry> Entries, IReadOnlyList<Refusal> Refusals, IReadOnlyList<string> LeftAlone)
{
    /// <summary>Every line of the rows that could not be read.</summary>
    public IReadOnlyList<(string File, int Line)> RefusedLines { get; init; } = [];
}

/// <summary>What a book would take of tables.</summary>
/// <param name="Good">Rows it would take, not in the book yet.</param>
/// <param name="KnownBefore">Rows the book had already.</param>
/// <param name="Refused">Why rows, or columns, are kept out.</param>
/// <param name="RefusedLines">Every line of the rows kept out.</param>
public sealed record CheckedTables(IReadOnlyList<TableEntry> Good, int KnownBefore, IReadOnlyList<Refusal> Refused, IReadOnlyList<(string File, int Line)> RefusedLines);
