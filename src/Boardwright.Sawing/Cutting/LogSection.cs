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
