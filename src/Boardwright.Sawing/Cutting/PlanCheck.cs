using System.Globalization;

namespace Boardwright.Sawing;

/// <summary>Checks a cutting plan against the log by its own geometry, sharing nothing with the search.</summary>
/// <remarks>
/// The log between two sections is their convex hull: a point lies in it when no direction sees it outside the mixed support of both ellipses. Every corner of every
/// board is tested along its length in many directions; boards must keep a kerf apart; the cuts are carried out one by one on boxes of wood.
/// </remarks>
/// <method page="docs/methods/sawing-plan.md"/>
public static class PlanCheck
{
    private const int Directions = 180;
    private const double AlongMm = 50.0;
    private const double SlackMm = 1e-6;

    /// <summary>Everything wrong with the plan, in words; empty when it can be sawn.</summary>
    /// <param name="shape">The log.</param>
    /// <param name="rules">Kerf and grid.</param>
    /// <param name="plan">The plan.</param>
    public static IReadOnlyList<string> Faults(LogShape shape, SawingRules rules, CuttingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(plan);
        var boxes = plan.Boards.Select(board => Box.Of(board, plan.Rotation.Degrees)).ToList();
        return
        [
            .. plan.Boards.SelectMany(board => board.Edge == BoardEdge.Square ? Outside(shape, board) : Narrower(shape, board)),
            .. Touching(boxes, rules.Kerf.Millimetres, rules.TrimKerf.Millimetres), .. SawingTrial.Faults(rules, plan, boxes), .. Sums(plan),
        ];
    }

    /// <summary>A board in the log as it lies for the first cut; faces left, right, bottom, top, small end, large end.</summary>
    internal sealed record Box(int Number, double Turn, double X0, double X1, double Y0, double Y1, double Z0, double Z1)
    {
        /// <summary>A board that lies flat after further quarter turns is carried back to the first lie.</summary>
        public static Box Of(PlannedBoard board, double rotation)
        {
            var place = board.Place;
            var quarters = (int)Math.Round((place.TurnDegrees - rotation) / 90.0);
            var (x0, x1, y0, y1) = (place.LeftMm, place.LeftMm + board.Width.Millimetres, place.BottomMm, place.BottomMm + board.Green.Millimetres);
            for (var turn = ((quarters % 4) + 4) % 4; turn > 0; turn--)
                (x0, x1, y0, y1) = (-y1, -y0, x0, x1);
            return new(board.Number, rotation, x0, x1, y0, y1, place.FromMm, place.FromMm + board.Length.Millimetres);
        }
    }

    private static IEnumerable<string> Outside(LogShape shape, PlannedBoard board)
    {
        var whole = Box.Of(board, board.Place.TurnDegrees);
        if (whole.Z0 < -SlackMm || whole.Z1 > shape.Length.Millimetres + SlackMm)
            yield return $"board {board.Number} is longer than the log";

        // With wane one face may fall short at its edges by its share of the thickness, either face.
        var missing = board.Wane.Fraction * board.Green.Millimetres;
        Box[] ways = missing > 0.0 ? [whole with { Y0 = whole.Y0 + missing }, whole with { Y1 = whole.Y1 - missing }] : [whole];
        var faults = ways.Select(box => Fault(shape, box)).ToList();
        if (faults.TrueForAll(fault => fault is not null))
            yield return faults[0]!;
        if (InRot(shape, whole) is { } rotten)
            yield return rotten;
    }

    private static string? Fault(LogShape shape, Box box)
    {
        var count = (int)Math.Ceiling((box.Z1 - box.Z0) / AlongMm);
        var (sin, cos) = Math.SinCos(box.Turn * Math.PI / 180.0);
        for (var i = 0; i <= count; i++)
        {
            var z = box.Z0 + ((box.Z1 - box.Z0) * i / count);
            foreach (var (x, y) in new[] { (box.X0, box.Y0), (box.X1, box.Y0), (box.X0, box.Y1), (box.X1, box.Y1) })
            {
                // Back to the unturned log, anticlockwise.
                var past = Past(shape, z, (x * cos) - (y * sin), (x * sin) + (y * cos));
                if (past > SlackMm)
                    return string.Create(CultureInfo.InvariantCulture, $"board {box.Number} sticks out by {past:0.####} mm at {z:0} mm");
            }
        }

        return shape.Sections.Where(one => one.RadiiMm is not null && one.At.Millimetres >= box.Z0 && one.At.Millimetres <= box.Z1)
            .Any(one => RimCheck.Meets(one, box.X0, box.X1, box.Y0, box.Y1, sin, cos)) ? $"board {box.Number} meets the rim of a measured section" : null;
    }

    private static string? InRot(LogShape shape, Box box)
    {
        var count = (int)Math.Ceiling((box.Z1 - box.Z0) / AlongMm);
        var (sin, cos) = Math.SinCos(box.Turn * Math.PI / 180.0);
        for (var i = 0; i <= count && shape.RotDiameter.Metres > 0.0; i++)
        {
            var z = box.Z0 + ((box.Z1 - box.Z0) * i / count);
            if (InRot(shape, z, box, sin, cos) is > SlackMm and var deep)
                return string.Create(CultureInfo.InvariantCulture, $"board {box.Number} holds {deep:0.####} mm of rot at {z:0} mm");
        }

        return null;
    }

    /// <summary>A slab is measured no wider than its faces are, found by halving along each face at five places.</summary>
    private static IEnumerable<string> Narrower(LogShape shape, PlannedBoard board)
    {
        var (sin, cos) = Math.SinCos(board.Place.TurnDegrees * Math.PI / 180.0);
        var box = Box.Of(board, board.Place.TurnDegrees);
        var middle = (box.X0 + box.X1) / 2.0;
        double Reach(double z, double y, double way)
        {
            var (inside, outside) = (0.0, 4000.0);
            for (var i = 0; i < 60; i++)
            {
                var half = (inside + outside) / 2.0;
                var x = middle + (way * half);
                (inside, outside) = Past(shape, z, (x * cos) - (y * sin), (x * sin) + (y * cos)) <= 0.0 ? (half, outside) : (inside, half);
            }

            return inside;
        }

        var mean = Enumerable.Range(0, 5).Select(k => shape.Length.Millimetres * k / 4.0)
            .Average(z => new[] { box.Y0, box.Y1 }.Average(y => Reach(z, y, 1.0) + Reach(z, y, -1.0)));
        if (board.Width.Millimetres > mean * (1.0 + 1e-3))
            yield return string.Create(CultureInfo.InvariantCulture, $"slab {board.Number} is measured {board.Width.Millimetres:0.###} mm wide where its faces are {mean:0.###} mm");
        if (InRot(shape, box) is { } rotten)
            yield return rotten;
    }

    /// <summary>How far a point lies outside the hull of the two sections around it, over many directions; negative inside.</summary>
    private static double Past(LogShape shape, double z, double x, double y)
    {
        var (a, b, share) = Around(shape, z);
        var worst = double.NegativeInfinity;
        for (var i = 0; i < Directions; i++)
        {
            var (v, u) = Math.SinCos(2.0 * Math.PI * i / Directions);
            worst = Math.Max(worst, (x * u) + (y * v) - ((1.0 - share) * Support(a, u, v)) - (share * Support(b, u, v)));
        }

        return worst;
    }

    private static double Support(LogSection section, double u, double v)
    {
        if (section.RadiiMm is { } radii)
            return (section.OffsetXMm * u) + (section.OffsetYMm * v) + Enumerable.Range(0, radii.Count).Max(i => radii[i] * ((u * Math.Sin(2.0 * Math.PI * i / radii.Count)) + (v * Math.Cos(2.0 * Math.PI * i / radii.Count))));

        var (a, b) = (section.DiameterX.Millimetres / 2.0 * u, section.DiameterY.Millimetres / 2.0 * v);
        return (section.OffsetXMm * u) + (section.OffsetYMm * v) + Math.Sqrt((a * a) + (b * b));
    }

    private static double InRot(LogShape shape, double z, Box box, double sin, double cos)
    {
        if (shape.RotDiameter.Metres == 0.0)
            return 0.0;

        var (a, b, share) = Around(shape, z);
        var (px, py) = (a.OffsetXMm + (share * (b.OffsetXMm - a.OffsetXMm)), a.OffsetYMm + (share * (b.OffsetYMm - a.OffsetYMm)));
        var (x, y) = ((px * cos) + (py * sin), (py * cos) - (px * sin));
        var (dx, dy) = (Math.Max(0.0, Math.Max(box.X0 - x, x - box.X1)), Math.Max(0.0, Math.Max(box.Y0 - y, y - box.Y1)));
        return (shape.RotDiameter.Millimetres / 2.0) - Math.Sqrt((dx * dx) + (dy * dy));
    }

    private static (LogSection A, LogSection B, double Share) Around(LogShape shape, double z)
    {
        var index = Enumerable.Range(1, shape.Sections.Count - 1).FirstOrDefault(i => shape.Sections[i].At.Millimetres >= z - 1e-9, shape.Sections.Count - 1);
        var (a, b) = (shape.Sections[index - 1], shape.Sections[index]);
        return (a, b, (z - a.At.Millimetres) / (b.At.Millimetres - a.At.Millimetres));
    }

    private static IEnumerable<string> Touching(List<Box> boxes, double kerf, double trimKerf)
    {
        for (var i = 0; i < boxes.Count; i++)
        {
            for (var j = i + 1; j < boxes.Count; j++)
            {
                var (a, b) = (boxes[i], boxes[j]);
                var apart = Math.Max(Math.Max(a.X0 - b.X1, b.X0 - a.X1), Math.Max(a.Y0 - b.Y1, b.Y0 - a.Y1));
                if (apart < kerf - SlackMm && Math.Max(a.Z0 - b.Z1, b.Z0 - a.Z1) < trimKerf - SlackMm)
                    yield return string.Create(CultureInfo.InvariantCulture, $"boards {a.Number} and {b.Number} are {apart:0.####} mm apart, kerf {kerf:0.####} mm");
            }
        }
    }

    private static IEnumerable<string> Sums(CuttingPlan plan)
    {
        if (plan.Boards.Sum(board => board.Volume.CubicMetres) > plan.LogVolume.CubicMetres)
            yield return "more wood in the boards than in the log";
        if (plan.ValueMoney > plan.UpperBoundMoney * (1.0 + 1e-9))
            yield return string.Create(CultureInfo.InvariantCulture, $"worth {plan.ValueMoney:0.####}, above its bound {plan.UpperBoundMoney:0.####}");
        if (!plan.Boards.Select(board => board.Number).SequenceEqual(Enumerable.Range(1, plan.Boards.Count)))
            yield return "boards are not numbered in the order they come free";
    }
}
