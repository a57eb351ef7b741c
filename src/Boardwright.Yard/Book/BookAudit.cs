namespace Boardwright.Yard.Book;

/// <summary>What must hold of any book, whichever way it is kept.</summary>
public static class BookAudit
{
    /// <summary>Faults in words: gaps in the numbers, doubled ids, corrections of what does not exist or came later.</summary>
    public static IReadOnlyList<string> Faults(IReadOnlyList<Entry> entries)
    {
        var faults = new List<string>();
        var ids = new HashSet<Guid>();
        for (var index = 0; index < entries.Count; index++)
        {
            var entry = entries[index];
            if (entry.Number != index + 1)
                faults.Add($"Entry {entry.Number} stands in place {index + 1}.");
            if (!ids.Add(entry.Id))
                faults.Add($"Entry {entry.Number} has the id of an earlier one, {entry.Id}.");
            if (entry.Corrects is { } old && (old < 1 || old >= entry.Number))
                faults.Add($"Entry {entry.Number} corrects {old}, which does not stand before it.");
        }

        return faults;
    }
}
