using System.Buffers;

namespace Boardwright.Yard.Commands;

/// <summary>Lines of a plain table as <see cref="CsvTable"/> reads them back.</summary>
public static class CsvText
{
    private static readonly SearchValues<char> Parting = SearchValues.Create(",;\"\n\r\t#");

    /// <summary>Fields on one line, with its end; quoted where a reader could take them apart.</summary>
    public static string Line(IEnumerable<string> fields) => string.Join(',', fields.Select(Field)) + "\n";

    // A # at the beginning would make the line a remark; a blank at an end would be trimmed.
    private static string Field(string text) =>
        text.AsSpan().ContainsAny(Parting) || text != text.Trim() ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
