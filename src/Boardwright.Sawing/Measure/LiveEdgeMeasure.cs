using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Footage of a slab with natural edges: mean of clear widths at equal steps, bark left out, nothing rounded.</summary>
/// <remarks>No rule book was found to cover it; this is common practice, and the pack list says so. Voids are shown, not deducted.</remarks>
/// <source id="common-practice" locator="mean width of 3 to 5 stations"/>
/// <method page="docs/methods/board-measure.md"/>
public static class LiveEdgeMeasure
{
    /// <summary>Board feet = mean width x length x thickness / 12.</summary>
    /// <param name="widths">Clear widths at equal steps, at least one.</param>
    /// <param name="length">Length.</param>
    /// <param name="thickness">Nominal thickness.</param>
    /// <exception cref="ArgumentException">No width.</exception>
    public static BoardFeet Of(IReadOnlyList<Length> widths, Length length, NominalThickness thickness)
    {
        if (widths.Count == 0)
            throw new ArgumentException("Accepted: one width or more.", nameof(widths));

        return BoardFeet.From(SurfaceMeasure.Exact(widths.Average(width => width.Inches), length.Feet) * thickness.Inches);
    }
}
