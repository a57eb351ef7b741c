using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Footage of a whole pack from its outside: for inventory, never for an invoice.</summary>
/// <remarks>Average tier width x tiers x average length x nominal thickness / 12. Within 3 to 5 % of the piece tally where lengths are uniform.</remarks>
/// <source id="mckinney-1991" locator="block tally and its error"/>
/// <method page="docs/methods/pack-tally.md"/>
public static class BlockTally
{
    /// <summary>Share by which a block tally may miss the piece tally of boards of uniform length (3 to 5 %; the larger).</summary>
    public const double UsualErrorShare = 0.05;

    /// <summary>Footage of the block.</summary>
    /// <param name="tiers">Number of layers, at least 0.</param>
    /// <param name="averageTierWidth">Wood width of an average layer, gaps left out.</param>
    /// <param name="averageLength">Average board length.</param>
    /// <param name="thickness">Nominal thickness.</param>
    public static BoardFeet Of(int tiers, Length averageTierWidth, Length averageLength, NominalThickness thickness) =>
        BoardFeet.From(SurfaceMeasure.Exact(averageTierWidth.Inches, averageLength.Feet) * tiers * BoardMeasure.CountedThicknessIn(thickness.Inches));
}
