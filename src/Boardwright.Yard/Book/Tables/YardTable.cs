using System.Security.Cryptography;
using System.Text;
using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.Book.Tables;

/// <summary>One kind of plain table: its name, the columns it needs, and how its rows become facts.</summary>
/// <param name="Name">File name without .csv; logs.2025.csv is a table of logs too.</param>
/// <param name="Needed">Columns that must be there; those of sizes may end in another unit and are asked for in the row.</param>
/// <param name="Key">Rows with the same key are one fact; null where every row is its own.</param>
/// <param name="Facts">Facts of a row, or of rows with one key.</param>
public sealed record YardTable(string Name, string[] Needed, Func<TableRow, string>? Key, Func<IReadOnlyList<TableRow>, IEnumerable<TableFact>> Facts)
{
    /// <summary>A table whose rows stand alone.</summary>
    public static YardTable Of(string name, string needed, Func<TableRow, Fact> fact, Func<TableRow, DateTime>? at = null) =>
        new(name, needed.Split(','), null, rows => [new(fact(rows[0]), at?.Invoke(rows[0]))]);

    /// <summary>Reads a file of this table. Rows with a fault give no entry; the fault names file, line and column.</summary>
    public (IReadOnlyList<TableEntry> Entries, IReadOnlyList<Refusal> Refusals) Read(string file, string text, string by)
    {
        if (CsvTable.Read(file, text, Needed) is not Outcome<CsvTable>.Done(var table))
            return ([], CsvTable.Read(file, text, Needed) is Outcome<CsvTable>.Refused(var reasons) ? reasons : []);

        var entries = new List<TableEntry>();
        var refusals = new List<Refusal>();
        var groups = new List<(string Key, List<CsvRow> Rows)>();
        foreach (var row in table.Rows)
        {
            var key = Key?.Invoke(new(row, []));
            if (key is not null && groups.FindIndex(g => g.Key == key) is >= 0 and var known)
                groups[known].Rows.Add(row);
            else
                groups.Add((key ?? "", [row]));
        }

        foreach (var (_, rows) in groups)
        {
            var faults = new List<Refusal>();
            var read = rows.Select(row => new TableRow(row, faults)).ToList();
            var facts = Facts(read).ToList();
            refusals.AddRange(faults);
            if (faults.Count == 0)
                entries.AddRange(facts.Select((fact, index) => Entry(file, read, fact, index, by)));
        }

        return (entries, refusals);
    }

    // The id follows from the row: the same file imported again adds nothing.
    private TableEntry Entry(string file, List<TableRow> rows, TableFact fact, int index, string by)
    {
        var id = new Guid(SHA256.HashData(Encoding.UTF8.GetBytes($"{Name}\n{index}\n{string.Join('\n', rows.Select(row => row.AllFields))}"))[..16]);
        return new(file, rows[0].Line, new(fact.By ?? by, fact.Fact, fact.At, AsEntered: rows[0].Typed, Id: id));
    }
}

/// <summary>A fact of a table, when it happened, and who says so where the table names them.</summary>
public sealed record TableFact(Fact Fact, DateTime? At, string? By = null);

/// <summary>An entry and where it came from.</summary>
public sealed record TableEntry(string File, int Line, NewEntry Entry);
