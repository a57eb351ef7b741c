using System.Globalization;

namespace Boardwright.Sawing;

/// <summary>Shares of a log's scale lost to sweep and defects.</summary>
/// <source id="grosenbaugh-1952" locator="cull fractions, from memory"/>
/// <method page="docs/methods/log-scale.md"/>
public static class LogDeductions
{
    /// <summary>Sweep that costs nothing, inches.</summary>
    public const double FreeSweepIn = 2.0;

    /// <summary>Share lost to sweep: (s - 2)/d, s the greatest departure and d the diameter in inches; 0 to 1.</summary>
    public static double SweepShare(double sweepIn, double diameterIn) => Math.Clamp((sweepIn - FreeSweepIn) / diameterIn, 0.0, 1.0);

    /// <summary>Share lost with a length: l/L.</summary>
    public static double LengthShare(double lost, double length) => Math.Clamp(lost / length, 0.0, 1.0);

    /// <summary>Share lost to a wedge: (l/L)(angle/360).</summary>
    public static double WedgeShare(double degrees, double along, double length) => LengthShare(along, length) * Math.Clamp(degrees / 360.0, 0.0, 1.0);

    /// <summary>Share lost to rot inside: w h/(d - 1)² x l/L, in inches.</summary>
    public static double InteriorShare(double widthIn, double heightIn, double diameterIn, double along, double length) =>
        Math.Min(1.0, widthIn * heightIn / ((diameterIn - 1.0) * (diameterIn - 1.0))) * LengthShare(along, length);

    /// <summary>Board feet of the squared-defect method: (w + 1)(h + 1) l/15 with w, h in inches and l in feet.</summary>
    /// <remarks>For Scribner: boards of 1 in with a kerf of 1/4 in leave 12 x 1.25 = 15. A second opinion on rot inside, by the scaling handbook.</remarks>
    /// <source id="usfs-fsh-2409-11" locator="squared defect, from memory"/>
    /// <method page="docs/methods/log-scale.md"/>
    public static double SquaredDefect(double widthIn, double heightIn, double alongFt) => (widthIn + 1.0) * (heightIn + 1.0) * alongFt / 15.0;

    /// <summary>Every deduction of a log in board feet.</summary>
    /// <param name="log">The measured log; its defects fit it.</param>
    /// <param name="gross">The rounded gross scale, board feet.</param>
    /// <param name="grossAt">The rounded gross scale of the same log at another diameter, for rot under the bark.</param>
    internal static IEnumerable<LogDeduction> Of(MeasuredLog log, double gross, Func<double, double> grossAt)
    {
        var diameterIn = log.SmallEnd.Inches;
        if (log.Sweep is { } sweep)
        {
            yield return new(
                Invariant($"sweep {sweep.Inches:0.##} in, first {FreeSweepIn:0} in free: (s - 2)/d of the gross"), gross * SweepShare(sweep.Inches, diameterIn));
        }

        foreach (var defect in log.Defects)
        {
            yield return defect switch
            {
                LogDefect.LostLength(var lost) => new(
                    Invariant($"length {lost.Feet:0.##} ft lost: l/L of the gross"), gross * LengthShare(lost.Feet, log.Length.Feet)),
                LogDefect.Wedge(var opening, var along) => new(
                    Invariant($"wedge of {opening.Degrees:0.#} degrees over {along.Feet:0.##} ft: (l/L)(angle/360) of the gross"),
                    gross * WedgeShare(opening.Degrees, along.Feet, log.Length.Feet)),
                LogDefect.InteriorRot(var width, var height, var along) => new(
                    Invariant($"rot inside {width.Inches:0.##} x {height.Inches:0.##} in over {along.Feet:0.##} ft: w h/(d - 1)^2 x l/L of the gross"),
                    gross * InteriorShare(width.Inches, height.Inches, diameterIn, along.Feet, log.Length.Feet)),
                LogDefect.SapRot(var depth) => new(
                    Invariant($"rot {depth.Inches:0.##} in deep all round: scaled at {diameterIn - 2.0 * depth.Inches:0.##} in instead of {diameterIn:0.##} in"),
                    gross - grossAt(diameterIn - 2.0 * depth.Inches)),
                _ => throw new InvalidOperationException("A defect has four kinds."),
            };
        }
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
