using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>The page of anything that has a tag or a name of its own in the book: where an address of the wrong kind leads.</summary>
/// <param name="Tag">As the book writes it.</param>
/// <param name="Kind">"an order", "a charge": what it is.</param>
/// <param name="Path">Its page.</param>
public sealed record TagPlace(string Tag, string Kind, string Path)
{
    /// <summary>"V-19 is a charge".</summary>
    public string Words => $"{Tag} is {Kind}";

    /// <summary>The place of a tag, written large or small; null where the book has none such.</summary>
    public static TagPlace? Of(YardState state, string? tag)
    {
        ArgumentNullException.ThrowIfNull(state);
        var asked = tag?.Trim() ?? "";
        return asked.Length == 0 ? null : All(state).FirstOrDefault(place => string.Equals(place.Tag, asked, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The place of what an address names, its last part first; null where no part of it is in the book.</summary>
    public static TagPlace? OfAddress(YardState state, string? path) =>
        (path ?? "").Split('/', StringSplitOptions.RemoveEmptyEntries).Reverse().Select(part => Of(state, Uri.UnescapeDataString(part))).FirstOrDefault(place => place is not null);

    /// <summary>Where an address of a page for one kind of thing leads that names another kind, such as /logs/V-19; null where its tag is of the kind, or of none.</summary>
    public static TagPlace? OfWrongKind(YardState state, string? path)
    {
        ArgumentNullException.ThrowIfNull(state);
        return (path ?? "").Split('/', StringSplitOptions.RemoveEmptyEntries) is [var kind, var tag, ..] && HasOwn(state, kind, tag) == false && Of(state, tag) is { } place && place.Path != $"/{kind}/{tag}" ? place : null;
    }

    // Null for an address that is not of one kind of thing.
    private static bool? HasOwn(YardState state, string kind, string tag) => kind switch
    {
        "promises" => state.Orders.ContainsKey(tag),
        "stacks" => state.Stacks.ContainsKey(tag),
        "charges" => state.Charges.ContainsKey(tag),
        "tally" => state.Packs.ContainsKey(tag),
        "logs" => state.Logs.ContainsKey(tag),
        "pours" => state.Pours.ContainsKey(tag),
        _ => null,
    };

    private static IEnumerable<TagPlace> All(YardState state) =>
    [
        .. state.Orders.Keys.Select(tag => new TagPlace(tag, "an order", $"/promises/{tag}")),
        .. state.Stacks.Keys.Select(tag => new TagPlace(tag, "a stack", $"/stacks/{tag}")),
        .. state.Charges.Keys.Select(tag => new TagPlace(tag, "a charge", $"/charges/{tag}")),
        .. state.PlannedCharges.Keys.Select(tag => new TagPlace(tag, "a charge that is planned", $"/charges/new?plan={tag}")),
        .. state.Packs.Keys.Select(tag => new TagPlace(tag, "a pack", $"/tally/{tag}")),
        .. state.Logs.Keys.Select(tag => new TagPlace(tag, "a log", Paths.Log(tag))),
        .. state.Pours.Keys.Select(tag => new TagPlace(tag, "a pour", $"/pours/{tag}")),
        .. state.Shipments.Values.Select(load => new TagPlace(load.Tag, "a load that left", $"/history/{load.Tag}")),
        .. state.Kilns.Keys.Select(name => new TagPlace(name, "a kiln", "/charges")),
        .. state.Boilers.Keys.Select(name => new TagPlace(name, "a boiler", "/boiler")),
    ];
}
