using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>How the rings stand to a board's face.</summary>
public enum BoardGrain
{
    /// <summary>Rings less than 45 degrees to the face over more than a fifth of the width.</summary>
    Flat,

    /// <summary>Rings 45 degrees or steeper to the face over four fifths of the width or more.</summary>
    Quartered,
}

/// <summary>What becomes of a board's edges.</summary>
public enum BoardEdge
{
    /// <summary>Edged: a full rectangle.</summary>
    Square,

    /// <summary>A slab with both natural edges, as long as the log.</summary>
    Live,

    /// <summary>A slab of a boule: all slabs of the log in order, one kerf apart, sold as one.</summary>
    Boule,
}

/// <summary>A row of a price list: what a board of at least this size brings.</summary>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Grade">Name of the grade as the list writes it.</param>
/// <param name="WidthMin">Narrowest board the row takes; of a slab the narrowest measured place.</param>
/// <param name="LengthMin">Shortest board the row takes.</param>
/// <param name="MoneyPerBoardFoot">Price per board foot of nominal thickness, 0 or more.</param>
/// <param name="Grain">Only boards of this grain; null for any.</param>
public sealed record BoardPrice(NominalThickness Thickness, string Grade, Length WidthMin, Length LengthMin, double MoneyPerBoardFoot, BoardGrain? Grain = null)
{
    /// <summary>Widest board the row takes; null for any.</summary>
    public Length? WidthMax { get; init; }

    /// <summary>Longest board the row takes; null for any.</summary>
    public Length? LengthMax { get; init; }

    /// <summary>Share of the thickness that may be missing along the edges of one face.</summary>
    public Share Wane { get; init; }

    /// <summary>Edged boards, or slabs.</summary>
    public BoardEdge Edge { get; init; }

    /// <summary>The order line that pays this price; null for the list's own.</summary>
    public string? Order { get; init; }
}
