using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>A closed shape seen from above: the inside of a mould or a piece of wood.</summary>
/// <remarks>
/// <para>Area of a polygon: half the sum of cross products of successive corners (shoelace); a circle's area is exact. A strip
/// measured by widths at equal spacing, first and last at the ends, has the trapezoid area.</para>
/// <para>Validity: three corners or more, no side crossing another, area above zero.</para>
/// </remarks>
/// <method page="docs/methods/resin-volume.md"/>
public sealed record Outline
{
    private Outline(double areaSquareMetres, double perimeterMetres, IReadOnlyList<PlanPoint> corners)
    {
        AreaSquareMetres = areaSquareMetres;
        PerimeterMetres = perimeterMetres;
        Corners = corners;
    }

    /// <summary>Area seen from above.</summary>
    public Area Area => Area.FromSquareMetres(AreaSquareMetres);

    /// <summary>Length of the edge.</summary>
    public Length Perimeter => Length.FromMetres(PerimeterMetres);

    /// <summary>Corners of a polygon, in order; empty for a circle or a strip, which have no stated place.</summary>
    public IReadOnlyList<PlanPoint> Corners { get; }

    internal double AreaSquareMetres { get; }

    internal double PerimeterMetres { get; }

    /// <summary>A rectangle with one corner at the origin.</summary>
    public static Outcome<Outline> Rectangle(string what, Length length, Length width) =>
        Polygon(what, [new(0, 0), new(length.Metres, 0), new(length.Metres, width.Metres), new(0, width.Metres)]);

    /// <summary>A circle.</summary>
    public static Outcome<Outline> Circle(string what, Length diameter) => diameter.Metres > 0.0
        ? new Outline(Math.PI / 4.0 * diameter.Metres * diameter.Metres, Math.PI * diameter.Metres, [])
        : new Refusal(what, $"diameter {diameter.Millimetres} mm", "a diameter above zero");

    /// <summary>A regular hexagon: area 3/2 √3 side².</summary>
    public static Outcome<Outline> RegularHexagon(string what, Length side)
    {
        var corners = Enumerable.Range(0, 6).Select(corner => corner * Math.PI / 3.0)
            .Select(angle => new PlanPoint(side.Metres * Math.Cos(angle), side.Metres * Math.Sin(angle)));
        return Polygon(what, [.. corners]);
    }

    /// <summary>A strip of measured widths at equal spacing along its length, the first and last at its ends.</summary>
    public static Outcome<Outline> Strip(string what, Length length, IReadOnlyList<Length> widths)
    {
        ArgumentNullException.ThrowIfNull(widths);
        if (widths.Count < 2 || length.Metres <= 0.0)
        {
            return new Refusal(what, $"{widths.Count} widths over {length.Millimetres} mm", "a length above zero and two widths or more, at equal spacing from end to end");
        }

        var spacing = length.Metres / (widths.Count - 1);
        var area = spacing * (widths.Sum(width => width.Metres) - (widths[0].Metres + widths[^1].Metres) / 2.0);
        return area > 0.0
            ? new Outline(area, 2.0 * length.Metres + widths[0].Metres + widths[^1].Metres, [])
            : new Refusal(what, "widths all zero", "widths above zero");
    }

    /// <summary>A polygon by its corners in order, either way round; the last joins the first.</summary>
    /// <param name="what">The field, for the refusal.</param>
    /// <param name="corners">At least three.</param>
    public static Outcome<Outline> Polygon(string what, IReadOnlyList<PlanPoint> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        if (corners.Count < 3)
        {
            return new Refusal(what, $"{corners.Count} corners", "three corners or more");
        }

        if (corners.Any(corner => !(Math.Abs(corner.XMetres) <= 100.0 && Math.Abs(corner.YMetres) <= 100.0)))
        {
            return new Refusal(what, "a corner beyond 100 m", "corners in millimetres within 100 m of the origin");
        }

        if (PlanGeometry.CrossingSides(corners) is { } crossing)
        {
            return new Refusal(what, $"sides {crossing.First} and {crossing.Second} cross", "corners in order round the shape, no side crossing another");
        }

        var area = Math.Abs(PlanGeometry.SignedAreaSquareMetres(corners));
        return area > 1e-9
            ? new Outline(area, PlanGeometry.PerimeterMetres(corners), corners)
            : new Refusal(what, "corners on one line", "corners that enclose an area");
    }

    /// <summary>True when a point lies inside, or within a small distance of the edge; always true for a shape without corners.</summary>
    public bool Holds(PlanPoint point, Length tolerance) => Corners.Count == 0 || PlanGeometry.IsInside(Corners, point) || PlanGeometry.EdgeDistanceMetres(Corners, point) <= tolerance.Metres;

    /// <summary>Area of the shape part of the way from this one to another, corners moving on straight lines.</summary>
    /// <param name="other">The far shape; with another number of corners the area itself is taken as linear.</param>
    /// <param name="share">0 here, 1 there.</param>
    internal double AreaToward(Outline other, double share)
    {
        if (Corners.Count == 0 || Corners.Count != other.Corners.Count)
        {
            return AreaSquareMetres + share * (other.AreaSquareMetres - AreaSquareMetres);
        }

        var between = Corners.Zip(other.Corners, (from, to) => new PlanPoint(
            from.XMetres + share * (to.XMetres - from.XMetres), from.YMetres + share * (to.YMetres - from.YMetres)));
        return Math.Abs(PlanGeometry.SignedAreaSquareMetres([.. between]));
    }
}
