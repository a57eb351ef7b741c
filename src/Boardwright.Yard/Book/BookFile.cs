using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Boardwright.Quantities;

namespace Boardwright.Yard.Book;

/// <summary>The whole book as plain text: one entry a line, and a last line that says how many there are and what they hash to.</summary>
/// <remarks>Readable without this program, the same for every kind of store, and whole or refused: a copy cut short is noticed.</remarks>
public static class BookFile
{
    private const string EndMark = "# entries ";

    /// <summary>Writes a copy. The file appears under its name only when it is complete and on the disk.</summary>
    /// <exception cref="IOException">The file exists, or cannot be written.</exception>
    public static void Write(string path, IEnumerable<Entry> entries)
    {
        if (File.Exists(path))
            throw new IOException($"{path} exists; a copy is never written over another.");
        var partial = path + ".partial";
        using (var file = new FileStream(partial, FileMode.Create, FileAccess.Write))
        {
            file.Write(Encoding.UTF8.GetBytes(Text(entries)));
            file.Flush(flushToDisk: true);
        }

        File.Move(partial, path);
    }

    /// <summary>The text of a copy.</summary>
    public static string Text(IEnumerable<Entry> entries)
    {
        var text = new StringBuilder();
        var count = 0;
        foreach (var entry in entries)
        {
            text.Append(BookJson.Line(entry)).Append('\n');
            count++;
        }

        return text.Append(EndLine(count, text.ToString())).Append('\n').ToString();
    }

    /// <summary>Reads a copy; refused with the line when it is cut short, changed, or not a book.</summary>
    public static Outcome<IReadOnlyList<Entry>> Read(string name, string text)
    {
        var end = text.LastIndexOf(EndMark, StringComparison.Ordinal);
        if (end < 0)
            return new Refusal(name, "no closing line", "a whole copy, closed by its number of entries; this one was cut short");
        var (body, last) = (text[..end], text[end..].TrimEnd());
        var lines = body.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        if (last != EndLine(lines.Length, body))
            return new Refusal(name, last, $"{EndLine(lines.Length, body)}, which the lines above it come to; the copy was changed or damaged");

        var entries = new List<Entry>(lines.Length);
        for (var index = 0; index < lines.Length; index++)
        {
            try
            {
                entries.Add(BookJson.ReadEntry(lines[index]));
            }
            catch (JsonException fault)
            {
                return new Refusal($"{name}:{index + 1}", lines[index], $"an entry of the book; {fault.Message}");
            }
        }

        return BookAudit.Faults(entries) is { Count: > 0 } faults ? new Refusal(name, faults[0], "entries numbered 1, 2, 3 … without gap or double") : entries;
    }

    /// <summary>The hash in the closing line of a copy that reads well.</summary>
    public static string Hash(string text) => text.TrimEnd()[^64..];

    private static string EndLine(int count, string body) => $"{EndMark}{count} sha256 {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(body)))}";
}
