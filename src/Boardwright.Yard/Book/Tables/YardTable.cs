using System.Security.Cryptography;
using System.Text;
using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.Book.Tables;

/// <summary>One kind of plain table: its name, the columns it needs, and how its rows become facts.</summary>
/// <remarks>Every table may also have the columns by, happened_at and entry_id, as exported ones do; a column whose name begins with # is a remark and is left alone.</remarks>
/// <param name="Name">File name without .csv; logs-2025.csv is a table of logs too.</param>
/// <param name="Needed">Columns that must be there; those of sizes may end in another unit and are asked for in the row.</param>
/// <param name="Key">Rows with the same key are one fact; null where every row is its own.</param>
/// <param name="Facts">Facts of a row, or of rows with one key.</param>
public sealed record YardTable(string Name, string[] Needed, Func<TableRow, string>? Key, Func<IReadOnlyList<TableRow>, IEnumerable<TableFact>> Facts)
{
    private static readonly string[] OfEveryTable = ["by", "happened_at", "entry_id"];

    /// <summary>A table whose rows stand alone.</summary>
    public static YardTable Of(string name, string needed, Func<TableRow, Fact> fact, Func<TableRow, DateTime>? at = null) =>
        new(name, needed.Split(','), null, rows => [new(fact(rows[0]), at?.Invoke(rows[0]))]);

    /// <summary>Reads a file of this table. Rows with a fault give no entry; the fault names file, line and column.</summary>
    public (IReadOnlyList<TableEntry> Entries, IReadOnlyList<Refusal> Refusals, IReadOnlyList<int> RefusedLines) Read(string file, string text, string by)
    {
        var outcome = CsvTable.Read(file, text, Needed);
        if (outcome is not Outcome<CsvTable>.Done(var table))
            return ([], outcome is Outcome<CsvTable>.Refused(var reasons) ? reasons : [], []);

        var entries = new List<TableEntry>();
        var refusals = new List<Refusal>();
        var refusedLines = new List<int>();
        var asked = new HashSet<string>([.. Needed, .. OfEveryTable], StringComparer.Ordinal);
        foreach (var rows in Groups(table))
        {
            var faults = new List<Refusal>();
            var read = rows.Select(row => new TableRow(row, faults)).ToList();
            var facts = Facts(read).Select((fact, index) => Entry(file, read, fact, index, by)).ToList();
            asked.UnionWith(read.SelectMany(row => row.Asked));
            if (faults.Count == 0)
                entries.AddRange(facts);
            else
                refusedLines.AddRange(rows.Select(row => row.Line));
            refusals.AddRange(faults);
        }

        return (entries, [.. NotRead(file, table, asked), .. refusals], refusedLines);
    }

    private List<List<CsvRow>> Groups(CsvTable table)
    {
        var groups = new List<List<CsvRow>>();
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var row in table.Rows)
        {
            var key = Key?.Invoke(new(row, []));
            if (key is not null && places.TryGetValue(key, out var place))
            {
                groups[place].Add(row);
                continue;
            }

            if (key is not null)
                places[key] = groups.Count;
            groups.Add([row]);
        }

        return groups;
    }

    // A column nobody reads would be lost without a word: most often its name is mistyped.
    private IEnumerable<Refusal> NotRead(string file, CsvTable table, HashSet<string> asked) =>
        from column in table.Columns
        where column.Length > 0 && column[0] != '#' && !asked.Contains(column) && table.Rows.Any(row => row.Text(column).Length > 0)
        let near = NearestWord.Of(column, asked)
        select new Refusal($"{file}, line 1, {column}", "a column of that name", near is null
            ? $"a column of {Name}: {string.Join(", ", asked.Order(StringComparer.Ordinal))}; begin its name with # to leave it out"
            : $"{near}? Otherwise begin its name with # to leave it out");

    // The id follows from the row, unless the row was exported with one: the same file imported again adds nothing.
    private TableEntry Entry(string file, List<TableRow> rows, TableFact fact, int index, string by)
    {
        var first = rows[0];
        var id = first.EntryId() ?? new Guid(SHA256.HashData(Encoding.UTF8.GetBytes($"{Name}\n{index}\n{string.Join('\n', rows.Select(row => row.AllFields))}"))[..16]);
        var at = first.TextOrNull("happened_at") is null ? fact.At : first.At("happened_at");
        return new(file, first.Line, new(first.TextOrNull("by") ?? fact.By ?? by, fact.Fact, at, AsEntered: first.Typed, Id: id)) { Lines = [.. rows.Select(row => row.Line)] };
    }
}

/// <summary>A fact of a table, when it happened, and who says so where the table names them.</summary>
public sealed record TableFact(Fact Fact, DateTime? At, string? By = null);

/// <summary>An entry and where it came from.</summary>
public sealed record TableEntry(string File, int Line, NewEntry Entry)
{
    /// <summary>All lines of the file it was read from.</summary>
    public IReadOnlyList<int> Lines { get; init; } = [Line];
}
