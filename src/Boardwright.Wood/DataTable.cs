using System.Globalization;
using System.Reflection;
using System.Text;

namespace Boardwright.Wood;

/// <summary>A table of published values built into an assembly: comma-separated, the first line names the columns.</summary>
internal static class DataTable
{
    /// <summary>The rows of a table of <paramref name="assembly"/>, by default of this one.</summary>
    public static IEnumerable<DataRow> Read(string name, Assembly? assembly = null)
    {
        var lines = Text(name, assembly ?? typeof(DataTable).Assembly).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var columns = Fields(lines[0]);
        return lines.Skip(1).Select(line => new DataRow(columns, Fields(line)));
    }

#pragma warning disable RS0030 // Not a file of the machine: the table is part of the program, and a stream is the only way to it.
    private static string Text(string name, Assembly assembly)
    {
        using var stream = assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"No built-in table '{name}'.");
        using var reader = new System.IO.StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
#pragma warning restore RS0030

    private static List<string> Fields(string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        foreach (var letter in line.TrimEnd('\r'))
        {
            if (letter == '"')
            {
                quoted = !quoted;
            }
            else if (letter == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(letter);
            }
        }

        fields.Add(field.ToString());
        return fields;
    }
}

/// <summary>One row of a built-in table.</summary>
internal sealed record DataRow(IReadOnlyList<string> Columns, IReadOnlyList<string> Fields)
{
    public string Text(string column)
    {
        for (var index = 0; index < Columns.Count; index++)
        {
            if (Columns[index] == column)
                return Fields[index];
        }

        throw new InvalidOperationException($"The built-in table has no column '{column}'.");
    }

    public string? TextOrNull(string column) => Text(column) is { Length: > 0 } text ? text : null;

    public double? Number(string column) =>
        TextOrNull(column) is { } text ? double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture) : null;
}
