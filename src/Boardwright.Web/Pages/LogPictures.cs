using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Web.Drawings;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Pages;

/// <summary>A log's end as it lies for its first cut, with the boards and blade of its plan.</summary>
internal static class LogPictures
{
    private const double MillimetresPerInch = 25.4;
    private const int RimPoints = 120;

    /// <summary>The end alone: a row of the list, a sawn log, a log without a plan.</summary>
    public static LogEndDrawing End(Log log) => Rimmed(log, new(log.Tag, log.Species.CommonName, log.SmallEndA.Inches, log.SmallEndB.Inches) { Unproven = !log.Proven }, 0.0);

    // An end that was measured by radii, or whose heart is off the middle, is drawn by its radii, and wide enough to hold the farthest on either side of the heart.
    private static LogEndDrawing Rimmed(Log log, LogEndDrawing end, double turned)
    {
        end = log.Seen.BarkMm is { } bark ? end with { BarkInches = bark / MillimetresPerInch } : end;
        if (LogShapes.Of(log) is not Outcome<LogShape>.Done({ Sections: [{ RadiiMm: not null } section, ..] }))
            return end;

        var angles = Enumerable.Range(0, RimPoints).Select(i => 2.0 * Math.PI * i / RimPoints).ToList();
        List<double> rim = [.. angles.Select(angle => section.RadiusMm(angle - turned) / MillimetresPerInch)];
        return end with
        {
            RimInches = rim,
            WideInches = 2.0 * rim.Zip(angles, (radius, angle) => Math.Abs(radius * Math.Sin(angle))).Max(),
            HighInches = 2.0 * rim.Zip(angles, (radius, angle) => Math.Abs(radius * Math.Cos(angle))).Max(),
        };
    }

    /// <summary>The end with the plan: boards numbered in the order they come free, blade lines of the first opening, their heights in the mill's scale.</summary>
    public static LogEndDrawing Plan(Log log, LogCutting cutting, MillScale scale)
    {
        var plan = cutting.Plan;
        var first = plan.Openings[0];
        var (sin, cos) = Math.SinCos(plan.Rotation.Radians);
        var (a, b) = (log.SmallEndA.Inches, log.SmallEndB.Inches);
        return Rimmed(log, new(log.Tag, log.Species.CommonName, Math.Sqrt((a * a * cos * cos) + (b * b * sin * sin)), Math.Sqrt((a * a * sin * sin) + (b * b * cos * cos)))
        {
            Pieces = [.. plan.Boards.Select(board => Piece(board, plan))],
            Cuts = [.. first.Cuts.Select((cut, i) => new BladeCut(Letter(i), (cut.Height.Millimetres + first.BedMm + cutting.Rules.Kerf.Millimetres) / MillimetresPerInch, scale.Figure(cut.Height.Millimetres)))],
            HeightUnit = scale.Unit,
            PithHeightInches = -first.BedMm / MillimetresPerInch,
            HeartRotInches = cutting.Shape.RotDiameter.Inches,
        }, plan.Rotation.Radians);
    }

    /// <summary>A, B, C … and on with AA after Z.</summary>
    public static string Letter(int index) => index < 26 ? ((char)('A' + index)).ToString() : Letter((index / 26) - 1) + Letter(index % 26);

    /// <summary>Inches to the nearest step of a mill's scale, in sixty-fourths where the step is one: 11 3/16.</summary>
    public static string OnTheRule(double inches, double step)
    {
        var parts = (int)Math.Round(Math.Round(inches / step) * step * 64.0);
        var (whole, part, over) = (parts / 64, parts % 64, 64);
        while (part > 0 && part % 2 == 0)
            (part, over) = (part / 2, over / 2);
        return part == 0 ? $"{whole}" : whole == 0 ? $"{part}/{over}" : $"{whole} {part}/{over}";
    }

    /// <summary>How the part lies after the one before it.</summary>
    public static string Turn(PlanOpening opening, PlanOpening? before)
    {
        var turn = (((opening.Turn.Degrees - (before?.Turn.Degrees ?? 0.0)) % 360.0) + 360.0) % 360.0;
        return turn switch
        {
            < 0.5 or > 359.5 => before is null ? "as it lies" : "not turned",
            > 89.5 and < 90.5 => "turned a quarter clockwise",
            > 179.5 and < 180.5 => "turned over",
            > 269.5 and < 270.5 => "turned a quarter anticlockwise",
            _ => string.Create(CultureInfo.InvariantCulture, $"turned {turn:0}° clockwise"),
        };
    }

    private static LogPiece Piece(PlannedBoard board, CuttingPlan plan)
    {
        var (left, bottom, width, height) = board.InFirstLie(plan.Rotation);
        return new($"{board.Number}", left / MillimetresPerInch, bottom / MillimetresPerInch, width / MillimetresPerInch, height / MillimetresPerInch, IsFirst(board, plan) ? PieceKind.First : PieceKind.Lesser, board.Edge != BoardEdge.Square);
    }

    /// <summary>Of the quality the plan is after: standing rings when quartersawing, else full size.</summary>
    public static bool IsFirst(PlannedBoard board, CuttingPlan plan) =>
        plan.Pattern == SawPattern.Quarter ? board.Grain == BoardGrain.Quartered : !board.Grade.StartsWith("smaller", StringComparison.Ordinal);
}
