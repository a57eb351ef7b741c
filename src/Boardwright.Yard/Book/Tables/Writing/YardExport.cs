using System.Globalization;
using System.Text;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.Book.Tables.Writing;

/// <summary>The book as the plain tables it can be read from.</summary>
/// <remarks>
/// What stands in the book now, corrections taken into account. A row is written only when reading it back gives the same fact to the last digit;
/// facts that no table can hold are left to the log, and counted.
/// </remarks>
public static class YardExport
{
    /// <summary>Tables of a yard, by name, and the kinds of standing facts that are in no table.</summary>
    public static (IReadOnlyList<(string Table, string Text, int Rows)> Tables, IReadOnlyDictionary<string, int> InLogOnly) Of(YardState yard)
    {
        ArgumentNullException.ThrowIfNull(yard);
        var rows = new Dictionary<string, List<IReadOnlyList<(string Column, string Text)>>>(StringComparer.Ordinal);
        var left = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var (_, entry) in Corrections.Standing(yard.Entries).OrderBy(standing => standing.Entry.Number))
        {
            if (RowsOf(entry) is var (table, written))
            {
                if (!rows.TryGetValue(table, out var known))
                    rows[table] = known = [];
                known.AddRange(written);
            }
            else
            {
                left[BookJson.Kind(entry.Fact)] = left.GetValueOrDefault(BookJson.Kind(entry.Fact)) + 1;
            }
        }

        return ([.. YardTables.All.Where(table => rows.ContainsKey(table.Name)).Select(table => (table.Name, Text(rows[table.Name]), rows[table.Name].Count))], left);
    }

    private static (string Table, IReadOnlyList<IReadOnlyList<(string Column, string Text)>> Rows)? RowsOf(Entry entry)
    {
        if ((SetupRows.Of(entry) ?? WoodRows.Of(entry) ?? KilnRows.Of(entry)) is not var (table, writers))
            return null;

        IReadOnlyList<IReadOnlyList<(string Column, string Text)>> rows = [.. writers.Select(row => Signed(row, entry))];
        return rows.Count > 0 && ReadsBack(table, rows, entry) ? (table, rows) : null;
    }

    private static IReadOnlyList<(string Column, string Text)> Signed(RowWriter row, Entry entry) => row
        .Text("by", entry.By).At("happened_at").Text("entry_id", entry.Id.ToString("D", CultureInfo.InvariantCulture)).Cells;

    private static bool ReadsBack(string table, IReadOnlyList<IReadOnlyList<(string Column, string Text)>> rows, Entry entry) =>
        YardTables.For(table + ".csv")!.Read(table, Text(rows), "") is { Refusals.Count: 0, Entries: [{ Entry: var read }] }
        && BookJson.Line(read.Fact) == BookJson.Line(entry.Fact) && read.HappenedAt == entry.HappenedAt && read.By == entry.By && read.Id == entry.Id;

    // Rows of one table may differ in their last columns: a pour has as many pieces as it has.
    private static string Text(IReadOnlyList<IReadOnlyList<(string Column, string Text)>> rows)
    {
        var columns = new List<string>();
        foreach (var row in rows.OrderByDescending(row => row.Count))
            columns.AddRange(row.Select(cell => cell.Column).Where(column => !columns.Contains(column)));

        var text = new StringBuilder(CsvText.Line(columns));
        foreach (var cells in rows.Select(row => row.ToDictionary(cell => cell.Column, cell => cell.Text)))
            text.Append(CsvText.Line(columns.Select(column => cells.GetValueOrDefault(column, ""))));
        return text.ToString();
    }
}
