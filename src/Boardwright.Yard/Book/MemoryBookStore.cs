using System.Text;

namespace Boardwright.Yard.Book;

/// <summary>A book in memory, for tests and for trying things out.</summary>
public sealed class MemoryBookStore(params IEnumerable<Entry> entries) : IBookStore
{
    private readonly Lock gate = new();
    private readonly List<Entry> kept = [.. entries];

    /// <inheritdoc/>
    public IReadOnlyList<Entry> ReadAfter(long number)
    {
        lock (gate)
        {
            return [.. kept.Skip((int)number)];
        }
    }

    /// <inheritdoc/>
    public bool TryAppend(IReadOnlyList<Entry> entries)
    {
        lock (gate)
        {
            if (entries.Count == 0 || entries[0].Number != kept.Count + 1)
                return entries.Count == 0;
            kept.AddRange(entries);
            return true;
        }
    }

    /// <inheritdoc/>
    public void Backup(string path)
    {
        using var file = new StreamWriter(new FileStream(path, FileMode.CreateNew), new UTF8Encoding(false));
        foreach (var entry in ReadAfter(0))
            file.WriteLine(BookJson.Line(entry));
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Verify() => BookAudit.Faults(ReadAfter(0));
}
