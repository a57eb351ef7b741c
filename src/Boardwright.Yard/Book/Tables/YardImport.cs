using Boardwright.Quantities;

namespace Boardwright.Yard.Book.Tables;

/// <summary>Plain tables on their way into the book.</summary>
/// <remarks>
/// Every row is read and checked, against the book and against the other rows, before anything is written. Good rows are then written in one
/// transaction; every bad row is named with file, line, column, what was found and what is accepted, and keeps nothing else out.
/// A row that needs a bad one (a sawn log whose stack was refused) is refused as well. The same rows imported again add nothing.
/// </remarks>
public static class YardImport
{
    /// <summary>Reads files in the order their tables depend on each other.</summary>
    /// <param name="files">Names and texts.</param>
    /// <param name="by">Who says so where a table does not name somebody.</param>
    public static ReadTables Read(IEnumerable<(string Name, string Text)> files, string by)
    {
        var known = files.Select(file => (file.Name, file.Text, Table: YardTables.For(file.Name))).ToList();
        var entries = new List<TableEntry>();
        var refusals = new List<Refusal>();
        foreach (var (name, text, table) in known.Where(file => file.Table is not null).OrderBy(file => YardTables.Place(file.Table!)).ThenBy(file => file.Name, StringComparer.Ordinal))
        {
            var (read, refused) = table!.Read(Path.GetFileName(name), text, by);
            entries.AddRange(read);
            refusals.AddRange(refused);
        }

        return new(entries, refusals, [.. known.Where(file => file.Table is null).Select(file => file.Name)]);
    }

    /// <summary>Writes what can be written, in one transaction, and names the rest.</summary>
    public static Outcome<Imported> Into(YardBook book, ReadTables tables)
    {
        var why = book.Check([.. tables.Entries.Select(e => e.Entry)]);
        var good = tables.Entries.Where((_, index) => why[index] is null).Select(e => e.Entry).ToList();
        var bad = tables.Entries.Zip(why).Where(pair => pair.Second is not null)
            .Select(pair => pair.Second! with { What = $"{pair.First.File}, line {pair.First.Line}, {pair.Second!.What}" });
        var before = book.State.Entries.Count;
        return book.Write(good).Then<Imported>(_ => new Imported(book.State.Entries.Count - before, good.Count - (book.State.Entries.Count - before), [.. tables.Refusals, .. bad], tables.LeftAlone));
    }
}

/// <summary>What was read from tables.</summary>
/// <param name="Entries">Entries of good rows.</param>
/// <param name="Refusals">Rows that could not be read.</param>
/// <param name="LeftAlone">Files that are no table of the book.</param>
public sealed record ReadTables(IReadOnlyList<TableEntry> Entries, IReadOnlyList<Refusal> Refusals, IReadOnlyList<string> LeftAlone);

/// <summary>What an import did.</summary>
/// <param name="Written">Entries added.</param>
/// <param name="KnownBefore">Entries the book had already from the same rows.</param>
/// <param name="Refused">Rows kept out, each with its reason.</param>
/// <param name="LeftAlone">Files that are no table of the book.</param>
public sealed record Imported(int Written, int KnownBefore, IReadOnlyList<Refusal> Refused, IReadOnlyList<string> LeftAlone);
