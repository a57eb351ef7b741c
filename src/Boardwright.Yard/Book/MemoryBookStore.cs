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
    public IReadOnlyList<string> Verify() => BookAudit.Faults(ReadAfter(0));
}
