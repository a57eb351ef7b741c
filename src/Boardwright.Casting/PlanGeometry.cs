namespace Boardwright.Casting;

/// <summary>Plane geometry of polygons given by their corners in order.</summary>
internal static class PlanGeometry
{
    /// <summary>Length round the shape.</summary>
    public static double PerimeterMetres(IReadOnlyList<PlanPoint> corners) =>
        Enumerable.Range(0, corners.Count).Sum(index => Distance(corners[index], corners[(index + 1) % corners.Count]));

    /// <summary>Half the sum of cross products; positive anticlockwise.</summary>
    public static double SignedAreaSquareMetres(IReadOnlyList<PlanPoint> corners)
    {
        var twice = 0.0;
        for (var index = 0; index < corners.Count; index++)
        {
            var next = corners[(index + 1) % corners.Count];
            twice += corners[index].XMetres * next.YMetres - next.XMetres * corners[index].YMetres;
        }

        return twice / 2.0;
    }

    /// <summary>Numbers (from 1) of two sides that cross; null when none do.</summary>
    public static (int First, int Second)? CrossingSides(IReadOnlyList<PlanPoint> corners)
    {
        for (var first = 0; first < corners.Count; first++)
        {
            for (var second = first + 2; second < corners.Count; second++)
            {
                var neighbours = first == 0 && second == corners.Count - 1;
                if (!neighbours && Cross(corners[first], corners[first + 1], corners[second], corners[(second + 1) % corners.Count]))
                {
                    return (first + 1, second + 1);
                }
            }
        }

        return null;
    }

    private static bool Cross(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) =>
        Turn(a, b, c) * Turn(a, b, d) < 0.0 && Turn(c, d, a) * Turn(c, d, b) < 0.0;

    private static double Turn(PlanPoint a, PlanPoint b, PlanPoint c) =>
        (b.XMetres - a.XMetres) * (c.YMetres - a.YMetres) - (b.YMetres - a.YMetres) * (c.XMetres - a.XMetres);

    private static double Distance(PlanPoint a, PlanPoint b) => Math.Sqrt(Square(b.XMetres - a.XMetres) + Square(b.YMetres - a.YMetres));

    private static double Square(double value) => value * value;

    /// <summary>Even-odd rule.</summary>
    public static bool IsInside(IReadOnlyList<PlanPoint> corners, PlanPoint point)
    {
        var inside = false;
        for (var index = 0; index < corners.Count; index++)
        {
            var (a, b) = (corners[index], corners[(index + 1) % corners.Count]);
            if (a.YMetres > point.YMetres != b.YMetres > point.YMetres
                && point.XMetres < a.XMetres + (point.YMetres - a.YMetres) / (b.YMetres - a.YMetres) * (b.XMetres - a.XMetres))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>Distance to the nearest side.</summary>
    public static double EdgeDistanceMetres(IReadOnlyList<PlanPoint> corners, PlanPoint point)
    {
        var nearest = double.PositiveInfinity;
        for (var index = 0; index < corners.Count; index++)
        {
            var (a, b) = (corners[index], corners[(index + 1) % corners.Count]);
            var length = Square(b.XMetres - a.XMetres) + Square(b.YMetres - a.YMetres);
            var along = length == 0.0 ? 0.0 : ((point.XMetres - a.XMetres) * (b.XMetres - a.XMetres) + (point.YMetres - a.YMetres) * (b.YMetres - a.YMetres)) / length;
            var foot = Math.Clamp(along, 0.0, 1.0);
            nearest = Math.Min(nearest, Distance(point, new(a.XMetres + foot * (b.XMetres - a.XMetres), a.YMetres + foot * (b.YMetres - a.YMetres))));
        }

        return nearest;
    }
}
