namespace Boardwright.Yard.Commands;

/// <summary>Commands that are promised and not built yet: they answer that they have no answer. A command that is built is never looked up here.</summary>
public static class NotYet
{
    private static readonly Dictionary<string, string> Promised = new(StringComparer.Ordinal)
    {
        ["board grade"] = "the grade of a board from its defects",
    };

    /// <summary>The words of every promised command that is not built.</summary>
    public static IEnumerable<string> Words => Promised.Keys.Where(words => CommandCatalogue.Find(words) is null);

    /// <summary>The words of every command in the table.</summary>
    public static IReadOnlyCollection<string> All => Promised.Keys;

    /// <summary>Why a promised command gives no answer; null for other words.</summary>
    public static string? Why(string words) => Promised.TryGetValue(words, out var what) && CommandCatalogue.Find(words) is null
        ? $"{words}: {what} is not built yet"
        : null;
}
