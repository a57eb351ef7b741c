using System.Globalization;
using System.Text;

namespace Boardwright.Testing;

/// <summary>Reads tests/published/*.csv: id,quantity,inputs,expected,tolerance,unit,source,mark; inputs are name=value pairs parted by semicolons; then, where needed, tolerance_reason,miss_reason.</summary>
public static class PublishedTable
{
    private static readonly string[] Header = ["id", "quantity", "inputs", "expected", "tolerance", "unit", "source", "mark"];

    /// <summary>Rows of a table, optionally of the named quantities only, in the form a theory takes.</summary>
    public static IEnumerable<object[]> Theory(string table, params string[] quantities) =>
        Rows(table).Where(row => quantities.Length == 0 || quantities.Contains(row.Quantity)).Select(row => new object[] { row });

    public static IReadOnlyList<PublishedRow> Rows(string table)
    {
        var path = Repository.PathOf("tests", "published", table + ".csv");
        var lines = File.ReadAllLines(path).Where(line => line.Length > 0 && line[0] != '#').Select(Fields).ToList();
        if (!lines[0].Take(Header.Length).SequenceEqual(Header))
        {
            throw new InvalidDataException($"{path}: the header must start with {string.Join(',', Header)}");
        }

        return [.. lines.Skip(1).Select((fields, index) => Row(path, index + 2, fields))];
    }

    /// <summary>Parts of one CSV line, with double quotes around fields that hold commas.</summary>
    public static IReadOnlyList<string> Fields(string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        foreach (var c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(c);
            }
        }

        fields.Add(field.ToString());
        return fields;
    }

    private static PublishedRow Row(string path, int line, IReadOnlyList<string> fields)
    {
        if (fields.Count < Header.Length || fields[6].Length == 0 || fields[7].Length == 0)
        {
            throw new InvalidDataException($"{path}:{line}: a published row needs all of {string.Join(", ", Header)}");
        }

        var inputs = fields[2].Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(pair => pair.Split('=', 2)).ToDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal);
        return new(fields[0], fields[1], inputs, fields[3], double.Parse(fields[4], NumberStyles.Float, CultureInfo.InvariantCulture), fields[5], fields[6], fields[7])
        {
            ToleranceReason = fields.ElementAtOrDefault(8) ?? "",
            MissReason = fields.ElementAtOrDefault(9) ?? "",
        };
    }
}
