namespace Boardwright.Yard.Book.Tables;

/// <summary>Every plain table the book reads, in the order they depend on each other.</summary>
public static class YardTables
{
    public static IReadOnlyList<YardTable> All { get; } = [.. SetupTables.All, .. WoodTables.All, .. KilnTables.All, .. OrderTables.All, .. CastingTables.All];

    /// <summary>The table of a file by its name: logs.csv and logs.2025.csv are logs. Null for a file that is none of ours.</summary>
    public static YardTable? For(string file)
    {
        var name = Path.GetFileName(file).Split('.')[0];
        return All.FirstOrDefault(table => table.Name == name);
    }

    /// <summary>Where a table stands in the order of reading.</summary>
    public static int Place(YardTable table) => All.ToList().IndexOf(table);
}
