using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using CsvHelper;
using CsvHelper.Configuration;

namespace Boardwright.Yard.Commands;

/// <summary>A plain table as people keep it: comma-separated (semicolon or tab as well), the first line names the columns, in any case and order.</summary>
public sealed class CsvTable
{
    private CsvTable(IReadOnlyList<string> columns, IReadOnlyList<CsvRow> rows)
    {
        Columns = columns;
        Rows = rows;
    }

    /// <summary>The names of the first line, in lower case.</summary>
    public IReadOnlyList<string> Columns { get; }

    public IReadOnlyList<CsvRow> Rows { get; }

    /// <summary>Parts the text; refused when a needed column is missing or no row follows the header.</summary>
    public static Outcome<CsvTable> Read(string what, string text, params string[] needed)
    {
        ArgumentNullException.ThrowIfNull(needed);
        using var reader = new StringReader(text);
        using var parser = new CsvParser(reader, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            DetectDelimiter = true,
            DetectDelimiterValues = [",", ";", "\t"],
            TrimOptions = TrimOptions.Trim,
            AllowComments = true,
            BadDataFound = null,
        });
        if (!parser.Read())
            return new Refusal(what, "an empty file", $"a first line that names the columns: {string.Join(',', needed)}");

        string[] columns = [.. parser.Record!.Select(name => name.Trim('\uFEFF').ToLowerInvariant())];
        if (needed.Where(column => !columns.Contains(column)).ToList() is { Count: > 0 } missing)
            return new Refusal(what, $"the columns {string.Join(',', columns)}", $"a first line with {string.Join(',', missing)} as well");

        var rows = new List<CsvRow>();
        while (parser.Read())
        {
            rows.Add(new CsvRow(what, parser.RawRow, columns, [.. parser.Record!]));
        }

        return rows.Count > 0 ? new CsvTable(columns, rows) : new Refusal(what, "a header without rows", "at least one row");
    }
}

/// <summary>One row of a plain table, with the line it stands on for refusals.</summary>
public sealed record CsvRow(string What, int Line, string[] Columns, string[] Fields)
{
    /// <summary>The text of a column; empty where the column or the field is missing.</summary>
    public string Text(string column)
    {
        var index = Array.IndexOf(Columns, column);
        return index >= 0 && index < Fields.Length ? Fields[index] : "";
    }

    /// <summary>Reads a column as a quantity; a refusal names file, line and column.</summary>
    public Outcome<T> Get<T>(string column, Func<string, string, Outcome<T>> read)
    {
        ArgumentNullException.ThrowIfNull(read);
        return read($"{What}, line {Line}, {column}", Text(column));
    }

    public Outcome<double> Number(string column) => Get(column, Read.Number);
}
