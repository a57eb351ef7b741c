using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>Whether a piece of wood lifts off the mould in a first, shallow pour.</summary>
/// <param name="WoodKilogramsPerSquareMetre">Wood over a square metre of its bottom.</param>
/// <param name="ResinKilogramsPerSquareMetre">Resin that the same square metre displaces.</param>
/// <param name="Floats">The displaced resin weighs more than the wood.</param>
public sealed record FirstLayer(double WoodKilogramsPerSquareMetre, double ResinKilogramsPerSquareMetre, bool Floats)
{
    /// <summary>Weight of straight-sided wood against the resin it displaces: density × thickness and liquid density × depth.</summary>
    /// <method page="docs/methods/hold-down.md"/>
    /// <param name="piece">Wood with its density at its moisture content.</param>
    /// <param name="liquid">Density of the mixed resin.</param>
    /// <param name="depth">Depth of the first pour.</param>
    public static FirstLayer Of(WoodPiece piece, Density liquid, Length depth)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var wood = piece.Density.KilogramsPerCubicMetre * piece.Thickness.Metres;
        var resin = liquid.KilogramsPerCubicMetre * Math.Min(depth.Metres, piece.Thickness.Metres);
        return new(wood, resin, resin > wood);
    }
}
