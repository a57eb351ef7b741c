namespace Boardwright.Web.Layout;

/// <summary>The nine places of the book, in the order of the wood's way.</summary>
public static class Places
{
    public static IReadOnlyList<Place> All { get; } =
    [
        new("Morning", "/", "what to do today"),
        new("Logs", "/logs", "waiting and sawn"),
        new("Stacks", "/stacks", "boards on stickers"),
        new("Charges", "/charges", "wood in the kilns"),
        new("Season", "/season", "which kiln, when"),
        new("Tally", "/tally", "packs and their boards"),
        new("Promises", "/promises", "orders and their days"),
        new("Pours", "/pours", "tables in moulds"),
        new("Boiler", "/boiler", "heat against the cold"),
    ];

    /// <summary>The place a path belongs to; null on pages that belong to none.</summary>
    public static Place? Of(string path) => path == "/" ? All[0] : All.Skip(1).FirstOrDefault(place => path.StartsWith(place.Path, StringComparison.Ordinal));
}

/// <summary>A place of the book.</summary>
public sealed record Place(string Name, string Path, string Meaning);
