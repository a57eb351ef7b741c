using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Where the wood of a log goes when its plan is sawn.</summary>
/// <remarks>The cuts are carried out on the section at many places along the log, as a polygon of the section's area; what each part holds is summed by Simpson's rule from section to section, which is
/// exact for all parts together. Dust of edging and trimming counts as edgings.</remarks>
/// <method page="docs/methods/sawing-plan.md"/>
/// <param name="Boards">Solid wood of boards and slabs as sawn; wane counts as if it were there.</param>
/// <param name="Kerf">Dust of the cuts.</param>
/// <param name="Slabs">Pieces that hold no board: what falls off outside, and waste between boards.</param>
/// <param name="Edgings">Edges and ends cut off boards.</param>
public sealed record WoodBalance(Volume Boards, Volume Kerf, Volume Slabs, Volume Edgings)
{
    private const int Corners = 1024;
    private const int Panels = 4;
    private const double FarMm = 1e5;

    /// <summary>The balance of a plan.</summary>
    /// <param name="shape">The log.</param>
    /// <param name="rules">Kerf.</param>
    /// <param name="plan">The plan.</param>
    public static WoodBalance Of(LogShape shape, SawingRules rules, CuttingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(plan);
        var boxes = plan.Boards.Select(board => PlanCheck.Box.Of(board, plan.Rotation.Degrees)).ToList();
        var (pieces, kerfs) = SawingTrial.Carried(rules, plan, boxes);
        var holds = pieces.Select(piece => Enumerable.Range(0, boxes.Count).Where(i => piece.Holds(boxes[i], 1e-6)).ToList()).ToList();
        var parts = new double[3];
        var slabWood = 0.0;
        foreach (var (z, weight) in Places(shape))
        {
            var rim = Rim(LogShape.At(shape.Sections, z), plan.Rotation.Radians);
            parts[0] += weight * kerfs.Sum(kerf => Area(rim, kerf));
            for (var i = 0; i < pieces.Count; i++)
            {
                var area = weight * Area(rim, pieces[i]);
                parts[holds[i].Count == 0 ? 1 : 2] += area;
                slabWood += holds[i].Exists(board => plan.Boards[board].Edge != BoardEdge.Square) ? area : 0.0;
            }
        }

        var boards = slabWood + plan.Boards.Where(board => board.Edge == BoardEdge.Square).Sum(board => board.Volume.CubicMetres);
        return new(Volume.FromCubicMetres(boards), Volume.FromCubicMetres(parts[0]), Volume.FromCubicMetres(parts[1]), Volume.FromCubicMetres(Math.Max(0.0, parts[2] - boards)));
    }

    // Simpson's rule, metres along the log with weights in cubic metres per square millimetre.
    private static IEnumerable<(double Z, double Weight)> Places(LogShape shape)
    {
        foreach (var (a, b) in shape.Sections.Zip(shape.Sections.Skip(1)))
        {
            var step = (b.At.Metres - a.At.Metres) / (2 * Panels);
            for (var i = 0; i <= 2 * Panels; i++)
                yield return (a.At.Metres + (i * step), step / 3.0 * 1e-6 * (i is 0 or (2 * Panels) ? 1.0 : i % 2 == 1 ? 4.0 : 2.0));
        }
    }

    private static List<(double X, double Y)> Rim(LogSection section, double turned)
    {
        var (sin, cos) = Math.SinCos(turned);
        var rim = section.RadiiMm is { } radii ? SectionRim.Of(radii) : Ellipse(section.DiameterX.Millimetres / 2.0, section.DiameterY.Millimetres / 2.0);
        return [.. rim.X.Zip(rim.Y, (x, y) => (X: x + section.OffsetXMm, Y: y + section.OffsetYMm)).Select(one => ((one.X * cos) + (one.Y * sin), (one.Y * cos) - (one.X * sin)))];
    }

    // A polygon of the ellipse's own area.
    private static SectionRim Ellipse(double a, double b)
    {
        var grown = Math.Sqrt(Math.PI / (Corners / 2.0 * Math.Sin(2.0 * Math.PI / Corners)));
        var angles = Enumerable.Range(0, Corners).Select(i => 2.0 * Math.PI * i / Corners).ToList();
        return new([.. angles.Select(angle => a * grown * Math.Sin(angle))], [.. angles.Select(angle => b * grown * Math.Cos(angle))]);
    }

    private static double Area(List<(double X, double Y)> rim, SawingTrial.Piece piece)
    {
        var cut = Beyond(Beyond(Beyond(Beyond(rim, 1, 0, Math.Min(FarMm, piece.X1)), -1, 0, Math.Min(FarMm, -piece.X0)), 0, 1, Math.Min(FarMm, piece.Y1)), 0, -1, Math.Min(FarMm, -piece.Y0));
        var twice = 0.0;
        for (var (i, j) = (0, cut.Count - 1); i < cut.Count; j = i++)
            twice += (cut[j].X * cut[i].Y) - (cut[i].X * cut[j].Y);
        return Math.Abs(twice) / 2.0;
    }

    // What of a polygon does not reach beyond a line.
    private static List<(double X, double Y)> Beyond(List<(double X, double Y)> rim, double u, double v, double limit)
    {
        var kept = new List<(double X, double Y)>(rim.Count + 2);
        for (var (i, j) = (0, rim.Count - 1); i < rim.Count; j = i++)
        {
            var (from, to) = ((rim[j].X * u) + (rim[j].Y * v) - limit, (rim[i].X * u) + (rim[i].Y * v) - limit);
            if ((from > 0.0) != (to > 0.0))
                kept.Add((rim[j].X + ((rim[i].X - rim[j].X) * from / (from - to)), rim[j].Y + ((rim[i].Y - rim[j].Y) * from / (from - to))));
            if (to <= 0.0)
                kept.Add(rim[i]);
        }

        return kept;
    }
}
