using System.Globalization;

namespace Boardwright.Sawing;

/// <summary>What a grade forbids on a face beside its yield: pith, wane, knots, splits, the first foot.</summary>
/// <remarks>
/// FAS: pith no longer in inches than SM; wane on an edge no longer than half the board; mean diameter of a knot or hole at most SM/3 in; splits together at most 2 SM in or 12 in, whichever
/// is more, and opening at most 1 in 12; the first foot at each end half clear, and no more than a quarter of it unsound. The reverse of FAS one face: wane of both edges together
/// at most a third of the width, on each edge at most half the length. No. 1 Common: pith at most half the length. Flatness is not measured here.
/// </remarks>
/// <source id="nhla-rules" locator="summary chart of standard grades; 2019 edition pp. 14-17 as quoted"/>
/// <method page="docs/methods/board-grade.md"/>
internal static class FaceLimits
{
    private const long FootNanometres = 304_800_000;
    private const double Noise = 1e-6;

    public static IEnumerable<string> OfFas(GradedBoard board, FaceCuttings face, int sm)
    {
        foreach (var fault in Pith(face.Face, sm).Concat(WaneLength(board, face.Face)).Concat(Knots(face.Face, sm)).Concat(Splits(face.Face, sm)))
            yield return fault;

        foreach (var (end, window) in new[] { ("left", face.Whole with { Right = Math.Min(FootNanometres, face.Whole.Right) }), ("right", face.Whole with { Left = Math.Max(0L, face.Whole.Right - FootNanometres) }) })
        {
            var (defect, unsound) = (BoxUnion.Area(face.Boxes(DefectKinds.IsInClearFace), window) / (double)window.Area, BoxUnion.Area(face.Boxes(DefectKinds.IsUnsound), window) / (double)window.Area);
            if (defect > 0.5 + Noise || unsound > 0.25 + Noise)
                yield return string.Create(CultureInfo.InvariantCulture, $"face {face.Face.Name}: the first foot at the {end} end is {100.0 * (1.0 - defect):0} % clear and {100.0 * unsound:0} % unsound (at least 50, at most 25)");
        }
    }

    /// <summary>Wane of the No. 1 Common side of FAS one face, and of both faces of narrow Selects.</summary>
    public static IEnumerable<string> Wane(GradedBoard board, BoardFace face)
    {
        var wane = face.Defects.Where(defect => defect.Kind == DefectKind.Wane).ToList();
        var widths = Widest(wane.Where(GradedBoard.OnLowerEdge)) + Widest(wane.Where(board.OnUpperEdge));
        return widths > (board.Width.Inches / 3.0) + Noise
            ? WaneLength(board, face).Append($"face {face.Name}: wane of both edges is {Inches(widths)} wide together (a third of the width, {Inches(board.Width.Inches / 3.0)}, is the most)")
            : WaneLength(board, face);
    }

    public static IEnumerable<string> OfNo1Common(GradedBoard board, BoardFace face)
    {
        var pith = Sum(face, DefectKind.Pith);
        if (pith > (board.Length.Inches / 2.0) + Noise)
            yield return $"face {face.Name}: {Inches(pith)} of pith (half the length, {Inches(board.Length.Inches / 2.0)}, is the most)";
    }

    private static IEnumerable<string> Pith(BoardFace face, int sm)
    {
        var pith = Sum(face, DefectKind.Pith);
        if (pith > sm + Noise)
            yield return $"face {face.Name}: {Inches(pith)} of pith ({sm} in, the surface measure, is the most)";
    }

    private static IEnumerable<string> WaneLength(GradedBoard board, BoardFace face)
    {
        var half = board.Length.Inches / 2.0;
        foreach (var (edge, length) in new[] { ("lower", WaneAlong(face, GradedBoard.OnLowerEdge)), ("upper", WaneAlong(face, board.OnUpperEdge)) })
        {
            if (length > half + Noise)
                yield return $"face {face.Name}: {Inches(length)} of wane on the {edge} edge (half the length, {Inches(half)}, is the most)";
        }
    }

    private static IEnumerable<string> Knots(BoardFace face, int sm)
    {
        var most = sm / 3.0;
        var largest = face.Defects.Where(defect => defect.Kind is DefectKind.Knot or DefectKind.UnsoundKnot or DefectKind.Hole).Select(defect => (defect.Length.Inches + defect.Width.Inches) / 2.0).DefaultIfEmpty().Max();
        if (largest > most + Noise)
            yield return $"face {face.Name}: a knot or hole of {Inches(largest)} mean diameter ({Inches(most)}, a third of the surface measure, is the most)";
    }

    private static IEnumerable<string> Splits(BoardFace face, int sm)
    {
        var (split, most) = (Sum(face, DefectKind.Split), Math.Max(12.0, 2.0 * sm));
        if (split > most + Noise)
            yield return $"face {face.Name}: splits of {Inches(split)} together ({Inches(most)} is the most)";
        if (face.Defects.Any(defect => defect.Kind == DefectKind.Split && defect.Width.Metres * 12.0 > defect.Length.Metres + Noise))
            yield return $"face {face.Name}: a split that runs off by more than 1 in 12";
    }

    private static double WaneAlong(BoardFace face, Func<BoardDefect, bool> onEdge) => face.Defects.Where(defect => defect.Kind == DefectKind.Wane && onEdge(defect)).Sum(defect => defect.Length.Inches);

    private static double Widest(IEnumerable<BoardDefect> wane) => wane.Select(defect => defect.Width.Inches).DefaultIfEmpty().Max();

    private static double Sum(BoardFace face, DefectKind kind) => face.Defects.Where(defect => defect.Kind == kind).Sum(defect => defect.Length.Inches);

    private static string Inches(double inches) => inches.ToString("0.##", CultureInfo.InvariantCulture) + " in";
}
