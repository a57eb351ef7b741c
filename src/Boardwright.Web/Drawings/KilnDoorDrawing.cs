namespace Boardwright.Web.Drawings;

/// <summary>A kiln seen from its door.</summary>
/// <param name="Name">K1.</param>
/// <param name="Places">What stands in it, left to right, the lower row first; empty when the kiln is empty.</param>
public sealed record KilnDoorDrawing(string Name, IReadOnlyList<KilnLoad> Places)
{
    public IReadOnlyList<SampleTag> Samples { get; init; } = [];

    /// <summary>Packs side by side (a kiln two wide and two high has 2).</summary>
    public int PlacesWide { get; init; } = 1;

    /// <summary>A vacuum kiln: a round-cornered vessel with plates, boards block-stacked without stickers.</summary>
    public bool Vacuum { get; init; }

    /// <summary>What an empty kiln says, such as "empty, swept".</summary>
    public string EmptyWords { get; init; } = "empty";
}
