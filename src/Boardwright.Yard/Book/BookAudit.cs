namespace Boardwright.Yard.Book;

/// <summary>What must hold of any book, whichever way it is kept.</summary>
public static class BookAudit
{
    /// <summary>Faults in words: gaps in the numbers, doubled ids, corrections of what does not exist or came later.</summary>
    public static IReadOnlyList<string> Faults(IReadOnlyList<Entry> entries)
    {
        var faults = new List<string>();
        var ids = new HashSet<Guid>();
        var next = 1L;
        foreach (var entry in entries)
        {
            if (entry.Number > next)
                faults.Add(entry.Number == next + 1 ? $"Entry {next} is missing." : $"Entries {next} to {entry.Number - 1} are missing.");
            if (entry.Number < next)
                faults.Add($"Entry {entry.Number} stands after entry {next - 1}.");
            next = entry.Number + 1;
            if (!ids.Add(entry.Id))
                faults.Add($"Entry {entry.Number} has the id of an earlier one, {entry.Id}.");
            if (entry.Corrects is { } old && (old < 1 || old >= entry.Number))
                faults.Add($"Entry {entry.Number} corrects {old}, which does not stand before it.");
        }

        return faults;
    }
}
