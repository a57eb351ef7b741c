namespace Boardwright.Web.Drawings;

/// <summary>A mould seen from above, its pieces of wood in place and the resin between. Lengths in millimetres.</summary>
/// <param name="Tag">T-1.</param>
/// <param name="Shape">Inside outline.</param>
/// <param name="Species">Wood of the pieces.</param>
public sealed record MouldDrawing(string Tag, MouldShape Shape, string Species, IReadOnlyList<MouldPiece> Pieces)
{
    /// <summary>Such as "5.91 L, 40 mm deep".</summary>
    public string? ResinWords { get; init; }
}

/// <summary>Inside outline of a mould: corners in order, or a circle.</summary>
public sealed record MouldShape(string Words, double LengthMm, double WidthMm, IReadOnlyList<(double X, double Y)> Corners, bool Round = false)
{
    public static MouldShape Rectangle(double lengthMm, double widthMm) =>
        new($"{lengthMm:0} × {widthMm:0} mm", lengthMm, widthMm, [(0, 0), (lengthMm, 0), (lengthMm, widthMm), (0, widthMm)]);

    public static MouldShape Circle(double diameterMm) => new($"⌀ {diameterMm:0} mm", diameterMm, diameterMm, [], true);

    /// <summary>A regular hexagon lying on a side.</summary>
    public static MouldShape Hexagon(double sideMm)
    {
        var high = sideMm * Math.Sqrt(3);
        return new($"hexagon, side {sideMm:0} mm", 2 * sideMm, high,
            [(sideMm / 2, 0), (sideMm * 1.5, 0), (2 * sideMm, high / 2), (sideMm * 1.5, high), (sideMm / 2, high), (0, high / 2)]);
    }
}

/// <summary>A live-edge piece: widths at equal spacing along its length, first and last at the ends.</summary>
/// <param name="AtFarEdge">Lies along the upper edge of the picture; otherwise along the lower.</param>
public sealed record MouldPiece(double LengthMm, IReadOnlyList<double> WidthsMm, bool AtFarEdge, string? Label = null);
