using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>One measured cross-section of a log, inside bark: an ellipse whose axes lie level and upright in the unturned log, or radii all round.</summary>
/// <param name="At">Distance from the small end.</param>
/// <param name="DiameterX">Level diameter.</param>
/// <param name="DiameterY">Upright diameter.</param>
/// <param name="OffsetXMm">Centre right of the straight line through the log, millimetres; may be negative.</param>
/// <param name="OffsetYMm">Centre above that line, millimetres; may be negative.</param>
public readonly record struct LogSection(Length At, Length DiameterX, Length DiameterY, double OffsetXMm = 0.0, double OffsetYMm = 0.0)
{
    /// <summary>Fewest radii that describe a section.</summary>
    public const int RadiiMin = 8;

    /// <summary>Radii in millimetres at equal angles from the centre, the first upright, then clockwise looking at the small end; null for an ellipse.</summary>
    public IReadOnlyList<double>? RadiiMm { get; init; }

    /// <summary>From the centre to the rim in a direction, millimetres.</summary>
    /// <param name="clockwise">From upright, clockwise looking at the small end, radians.</param>
    public double RadiusMm(double clockwise)
    {
        if (RadiiMm is not { } radii)
        {
            var (sin, cos) = Math.SinCos(clockwise);
            return 1.0 / Math.Sqrt((sin * sin * 4.0 / (DiameterX.Millimetres * DiameterX.Millimetres)) + (cos * cos * 4.0 / (DiameterY.Millimetres * DiameterY.Millimetres)));
        }

        var step = 2.0 * Math.PI / radii.Count;
        var around = (((clockwise % (2.0 * Math.PI)) + (2.0 * Math.PI)) % (2.0 * Math.PI)) / step;
        var first = (int)around % radii.Count;
        var (a, b, turn) = (radii[first], radii[(first + 1) % radii.Count], (around - Math.Floor(around)) * step);
        return a * b * Math.Sin(step) / ((a * Math.Sin(turn)) + (b * Math.Sin(step - turn)));
    }

    /// <summary>The same ellipse seen from its pith: radii from there, and the pith on the line through the log.</summary>
    /// <param name="rightMm">Pith right of the middle.</param>
    /// <param name="upMm">Pith above the middle; it must lie inside.</param>
    /// <param name="count">Radii; the rim runs straight between their ends, inside the ellipse.</param>
    public LogSection FromPith(double rightMm, double upMm, int count = 48)
    {
        var (a, b) = (DiameterX.Millimetres / 2.0, DiameterY.Millimetres / 2.0);
        return Measured(At, [.. Enumerable.Range(0, count).Select(i =>
        {
            var (x, y) = Math.SinCos(2.0 * Math.PI * i / count);
            var (p, q, r) = ((x * x / (a * a)) + (y * y / (b * b)), (rightMm * x / (a * a)) + (upMm * y / (b * b)), (rightMm * rightMm / (a * a)) + (upMm * upMm / (b * b)) - 1.0);
            return (Math.Sqrt((q * q) - (p * r)) - q) / p;
        })]);
    }

    /// <summary>A section of measured radii.</summary>
    /// <param name="at">Distance from the small end.</param>
    /// <param name="radiiMm">Eight or more, at equal angles, the first upright, then clockwise; millimetres.</param>
    /// <param name="offsetXMm">Centre right of the line.</param>
    /// <param name="offsetYMm">Centre above the line.</param>
    public static LogSection Measured(Length at, IReadOnlyList<double> radiiMm, double offsetXMm = 0.0, double offsetYMm = 0.0)
    {
        ArgumentNullException.ThrowIfNull(radiiMm);
        var rim = SectionRim.Of(radiiMm);
        return new(at, Length.FromMillimetres(Math.Max(0.0, rim.Span(1.0, 0.0))), Length.FromMillimetres(Math.Max(0.0, rim.Span(0.0, 1.0))), offsetXMm, offsetYMm) { RadiiMm = radiiMm };
    }
}
