using System.Globalization;
using Boardwright.Documents;
using Boardwright.Documents.Logs;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;
using MetalScan = Boardwright.Yard.Book.Facts.MetalScan;
using Paper = Boardwright.Documents.Paper;
using PaperScan = Boardwright.Documents.Logs.MetalScan;

namespace Boardwright.Web.Papers;

/// <summary>The cutting sheet of a log for the mill, as a PDF.</summary>
public static class LogPapers
{
    private const int OutlinePoints = 120;

    /// <summary>The sheet, with the plan the log's page shows.</summary>
    /// <returns>The PDF; a refusal of an unknown log; no answer for a sawn one or one that has no plan.</returns>
    public static Outcome<byte[]> CuttingSheet(YardState state, string tag, LogChoice choice, Paper paper) => LogSheet.Of(state, tag).Then(sheet => sheet.Log.IsSawn
        ? new Outcome<byte[]>.NoAnswer($"{tag} was opened on {sheet.Log.SawnAt:d MMM yyyy}: there is nothing left to cut.")
        : LogCutting.Of(state, sheet.Log, choice.Thickness, choice.Pattern, choice.Orders).Then<byte[]>(cutting => Documents.Logs.CuttingSheet.Render(Content(state, sheet, cutting), paper)));

    private static CuttingSheetContent Content(YardState state, LogSheet sheet, LogCutting cutting)
    {
        var (log, plan) = (sheet.Log, cutting.Plan);
        var scale = Pages.MillScale.Of(state, null);
        var doubtful = log.MetalScan != MetalScan.Clear || log.Seen.MetalMarks;
        var turned = Math.Round(plan.Rotation.Degrees, 3);
        return new CuttingSheetContent
        {
            Yard = state.Yard?.Name ?? "Boardwright",
            Log = log.Tag,
            Title = $"{char.ToUpperInvariant(log.Species.CommonName[0])}{log.Species.CommonName[1..]}, {string.Join(" and ", cutting.Thicknesses)}, {plan.Pattern.ToString().ToLowerInvariant()} sawn",
            Description = sheet.Under + (turned > 0.0 ? string.Create(CultureInfo.InvariantCulture, $" Turn it {turned:0.#}° clockwise from how it was measured; the picture shows it so.") : ""),
            Date = state.Today,
            Outline = [.. Enumerable.Range(0, OutlinePoints).Select(i => Rim(cutting.Shape.Sections[0], 2.0 * Math.PI * i / OutlinePoints, plan.Rotation.Radians))],
            Kerf = cutting.Rules.Kerf,
            Boards = [.. plan.Boards.Select(board => Board(board, plan))],
            Openings = [.. plan.Openings.Select((opening, i) => Lie(opening, plan, i, scale, doubtful))],
            Metric = scale.Metric,
            Metal = log.MetalScan switch
            {
                MetalScan.Clear when !log.Seen.MetalMarks => PaperScan.Clear,
                MetalScan.Clear or MetalScan.HitsDugOut => PaperScan.Doubtful,
                MetalScan.HitsNotDug => PaperScan.Found,
                _ => PaperScan.NotScanned,
            },
            MetalNote = !doubtful ? "" : $"{char.ToUpperInvariant(LogSheet.Scan(log)[0])}{LogSheet.Scan(log)[1..]}{(log.Seen.MetalMarks ? ", with marks of metal" : "")}.",
        };
    }

    private static PointMm Rim(LogSection section, double angle, double turned)
    {
        var (sin, cos) = Math.SinCos(angle + turned);
        var radius = section.RadiusMm(angle);
        return new(radius * sin, radius * cos);
    }

    private static SawnBoard Board(PlannedBoard board, CuttingPlan plan)
    {
        var (left, bottom, width, height) = board.InFirstLie(plan.Rotation);
        var opening = plan.Openings.ToList().FindIndex(one => one.Cuts.Any(cut => cut.Frees.Contains(board.Number)));
        return new(board.Number, left, bottom, width, height, opening, string.Create(CultureInfo.InvariantCulture, $"{board.Thickness} × {board.Width.Inches:0.##} in × {board.Length.Feet:0.#} ft"), Pages.LogPictures.IsFirst(board, plan));
    }

    private static Opening Lie(PlanOpening opening, CuttingPlan plan, int index, Pages.MillScale scale, bool doubtful)
    {
        var turn = (((opening.Turn.Degrees - plan.Rotation.Degrees) % 360.0) + 360.0) % 360.0;
        return new(
            $"{char.ToUpperInvariant(opening.Part[0])}{opening.Part[1..]}", Math.Round(turn, 6), Length.FromMillimetres(Math.Max(0.0, -opening.BedMm)),
            [.. opening.Cuts.Select((cut, i) => new Documents.Logs.BladeCut(Name(index, i), cut.Height, cut.Frees.Count == 0 ? "slab" : $"board {string.Join(", ", cut.Frees)}")
            {
                OnScale = scale.Figure(cut.Height.Millimetres),
                ScanFirst = doubtful && i % Pages.MillScale.CutsPerScan == 0,
            })]);
    }

    private static string Name(int opening, int cut) => opening == 0 ? Pages.LogPictures.Letter(cut) : $"{opening + 1}{Pages.LogPictures.Letter(cut)}";
}
