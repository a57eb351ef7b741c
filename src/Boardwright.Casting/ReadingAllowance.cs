using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>How far a tape, a mould and a live edge may be off: what makes the band of a resin volume.</summary>
/// <param name="Edge">Each wood edge, all along.</param>
/// <param name="Level">Depth of the pour: mould out of level or bowed.</param>
/// <param name="Voids">Bark pockets, knots and cracks that drink resin, a share of the volume; added to the high side only.</param>
public sealed record ReadingAllowance(Length Edge, Length Level, Share Voids)
{
    /// <summary>2 mm on an edge, 1 mm on the level, 5 % for voids: common practice, a setting.</summary>
    public static ReadingAllowance Usual { get; } = new(Length.FromMillimetres(2.0), Length.FromMillimetres(1.0), Share.FromPercent(5.0));
}
