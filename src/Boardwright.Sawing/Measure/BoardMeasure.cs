using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Footage of one board.</summary>
/// <remarks>Board feet = surface measure x thickness in inches, under 1 in counted as 1 in. Within a pack use <see cref="PackTally"/>, where halves alternate.</remarks>
/// <source id="nhla-rules" locator="board feet"/>
/// <method page="docs/methods/board-measure.md"/>
public static class BoardMeasure
{
    /// <summary>The board by a rule.</summary>
    /// <param name="thickness">Nominal thickness as a length: 5/4 is 1.25 in.</param>
    /// <param name="width">Width.</param>
    /// <param name="length">Length.</param>
    /// <param name="rule">How to count.</param>
    public static MeasuredBoard Of(Length thickness, Length width, Length length, BoardRule rule) => Of(thickness, width, length, rule, new SurfaceMeasure());

    internal static MeasuredBoard Of(Length thickness, Length width, Length length, BoardRule rule, SurfaceMeasure tally)
    {
        var volume = Volume.FromCubicMetres(thickness.Metres * width.Metres * length.Metres);
        if (rule == BoardRule.Exact)
        {
            var exact = SurfaceMeasure.Exact(width.Inches, length.Feet);
            return new(exact, BoardFeet.From(exact * thickness.Inches), volume);
        }

        var measure = tally.Next(width.Inches, length.Feet);
        return new(measure, BoardFeet.From(measure * CountedThicknessIn(thickness.Inches)), volume);
    }

    /// <summary>Thickness that counts, inches: under 1 in is 1 in.</summary>
    public static double CountedThicknessIn(double thicknessIn) => Math.Max(1.0, TradeRounding.Clean(thicknessIn, 1.0 / 64.0));
}

/// <summary>One measured board.</summary>
/// <param name="SurfaceMeasure">Square feet of the face; whole under the hardwood rule.</param>
/// <param name="BoardFeet">Footage.</param>
/// <param name="Volume">Solid volume of the sizes given.</param>
public readonly record struct MeasuredBoard(double SurfaceMeasure, BoardFeet BoardFeet, Volume Volume);
