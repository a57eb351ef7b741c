namespace Boardwright.Sawing;

/// <summary>Surface measure: square feet of one face, the basis on which hardwood is sold and graded.</summary>
/// <remarks>
/// <para>Equation: SM = width in inches, fractions kept, x length in whole feet, fractions dropped, / 12, to the nearest whole number. An exact half goes up
/// and down in turn through a tally, so that a pack is neither favoured nor robbed.</para>
/// <para>One instance is one tally, in the order of its boards; the first half goes up.</para>
/// </remarks>
/// <source id="nhla-rules" locator="surface measure; alternate halves from memory"/>
/// <source id="ahec-measurement" locator="examples"/>
/// <method page="docs/methods/board-measure.md"/>
public sealed class SurfaceMeasure
{
    private bool nextHalfGoesUp = true;

    /// <summary>Surface measure of the next board of the tally.</summary>
    /// <param name="widthIn">Width in inches, fractions kept.</param>
    /// <param name="lengthFt">Length in feet; the fraction is dropped here.</param>
    public int Next(double widthIn, double lengthFt)
    {
        var exact = Exact(widthIn, TradeRounding.WholeDown(lengthFt));
        if (!TradeRounding.IsHalf(exact))
            return (int)TradeRounding.NearestHalfUp(exact);

        var measure = TradeRounding.WholeDown(exact) + (nextHalfGoesUp ? 1 : 0);
        nextHalfGoesUp = !nextHalfGoesUp;
        return measure;
    }

    /// <summary>Square feet of the face, nothing rounded.</summary>
    public static double Exact(double widthIn, double lengthFt) => widthIn * lengthFt / 12.0;
}
