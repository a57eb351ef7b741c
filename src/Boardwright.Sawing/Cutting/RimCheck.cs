namespace Boardwright.Sawing;

/// <summary>Whether a rectangle of a turned log crosses the rim of a section measured by radii, by the corners of both.</summary>
internal static class RimCheck
{
    private const double SlackMm = 1e-6;

    public static bool Meets(LogSection section, double x0, double x1, double y0, double y1, double sin, double cos)
    {
        var radii = section.RadiiMm!;
        var rim = Enumerable.Range(0, radii.Count).Select(i => 2.0 * Math.PI * i / radii.Count)
            .Select((angle, i) => (X: section.OffsetXMm + (radii[i] * Math.Sin(angle)), Y: section.OffsetYMm + (radii[i] * Math.Cos(angle))))
            .Select(one => (X: (one.X * cos) + (one.Y * sin), Y: (one.Y * cos) - (one.X * sin))).ToList();
        var (px, py) = ((section.OffsetXMm * cos) + (section.OffsetYMm * sin), (section.OffsetYMm * cos) - (section.OffsetXMm * sin));
        return rim.Any(one => one.X > x0 + SlackMm && one.X < x1 - SlackMm && one.Y > y0 + SlackMm && one.Y < y1 - SlackMm)
            || new[] { (x0, y0), (x0, y1), (x1, y0), (x1, y1) }.Any(corner => Past(rim, px, py, corner.Item1, corner.Item2) > SlackMm);
    }

    // The rim is seen whole from its centre: a point lies inside when it is on the centre's side of the piece of rim in its direction.
    private static double Past(List<(double X, double Y)> rim, double px, double py, double x, double y)
    {
        for (var (i, j) = (0, rim.Count - 1); i < rim.Count; j = i++)
        {
            var (a, b) = (rim[j], rim[i]);
            double Turn(double ux, double uy, double vx, double vy) => (ux * vy) - (uy * vx);
            if (Turn(a.X - px, a.Y - py, x - px, y - py) <= 0.0 && Turn(x - px, y - py, b.X - px, b.Y - py) <= 0.0)
                return Turn(b.X - a.X, b.Y - a.Y, x - a.X, y - a.Y) / Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));
        }

        return 0.0;
    }
}
