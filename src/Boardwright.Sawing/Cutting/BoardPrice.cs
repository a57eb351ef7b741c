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

/// <summary>A row of a price list: what a board of at least this size brings.</summary>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Grade">Name of the grade as the list writes it.</param>
/// <param name="WidthMin">Narrowest board the row takes.</param>
/// <param name="LengthMin">Shortest board the row takes.</param>
/// <param name="MoneyPerBoardFoot">Price per board foot of nominal thickness, 0 or more.</param>
/// <param name="Grain">Only boards of this grain; null for any.</param>
public sealed record BoardPrice(NominalThickness Thickness, string Grade, Length WidthMin, Length LengthMin, double MoneyPerBoardFoot, BoardGrain? Grain = null);
