using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>A piece of wood lying on the bottom of a mould.</summary>
/// <param name="Name">What people call it, for refusals and answers.</param>
/// <param name="Outline">Seen from above, at the top face.</param>
/// <param name="Thickness">From bottom to top face.</param>
/// <param name="Density">At its moisture content.</param>
public sealed record WoodPiece(string Name, Outline Outline, Length Thickness, Density Density)
{
    /// <summary>Shape of the bottom face where a live edge slopes; null when it equals the top.</summary>
    public Outline? BottomOutline { get; init; }

    /// <summary>Whole volume.</summary>
    public Volume Volume => Immersed(Thickness);

    /// <summary>Weight.</summary>
    public Mass Mass => Mass.FromKilograms(Volume.CubicMetres * Density.KilogramsPerCubicMetre);

    /// <summary>Mean area seen from above.</summary>
    public Area MeanArea => Area.FromSquareMetres(Thickness.Metres > 0.0 ? Volume.CubicMetres / Thickness.Metres : Outline.AreaSquareMetres);

    /// <summary>Volume below a level of resin.</summary>
    /// <remarks>Corners move on straight lines from bottom to top, so the area is quadratic in height and Simpson's rule is exact.</remarks>
    /// <param name="depth">Height of the resin above the bottom of the mould.</param>
    public Volume Immersed(Length depth)
    {
        var bottom = BottomOutline ?? Outline;
        var height = Math.Min(depth.Metres, Thickness.Metres);
        var share = Thickness.Metres > 0.0 ? height / Thickness.Metres : 0.0;
        var sum = bottom.AreaSquareMetres + 4.0 * bottom.AreaToward(Outline, share / 2.0) + bottom.AreaToward(Outline, share);
        return Volume.FromCubicMetres(height * sum / 6.0);
    }

    internal double AreaAtSquareMetres(Length depth) => depth.Metres >= Thickness.Metres
        ? 0.0
        : (BottomOutline ?? Outline).AreaToward(Outline, depth.Metres / Thickness.Metres);
}
