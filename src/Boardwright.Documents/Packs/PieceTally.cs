using Boardwright.Documents.Setting;
using Boardwright.Quantities;

namespace Boardwright.Documents.Packs;

/// <summary>The board-by-board tally of one pack: rows tall enough to tick with a pencil, subtotals by length, total, signatures.</summary>
internal static class PieceTally
{
    private const double PencilRowMm = 9.0;

    public static void Draw(Form form, PackTally pack)
    {
        form.Heading($"Piece tally {pack.Pack}: {pack.Thickness} {pack.Species}");
        form.Paragraph(Description(pack));
        form.Y += 2.0;
        DrawBoards(form, pack);
        DrawTotals(form, pack);
        Signatures.Draw(form, $"Tallied by {pack.TalliedBy}, {Print.Day(pack.TalliedOn)}", "Second count by, day", "Received by, day");
    }

    private static string Description(PackTally pack)
    {
        var parts = new List<string> { $"{char.ToUpperInvariant(pack.Surface[0])}{pack.Surface[1..]}, {pack.Grade}" };
        if (PackingList.Moisture(pack) is { Length: > 0 } range)
            parts.Add(pack.MoistureBasis is { } basis ? $"Moisture {range} ({basis})" : $"Moisture {range}");

        if (pack.MoistureOrdered is { } ordered)
            parts.Add(ordered);

        parts.Add(pack.Charge is { } charge ? $"Kiln charge {charge}" : "Not from a kiln");
        parts.Add("Heat treated: " + Words.Of(pack.HeatTreatment) + (pack.HeatTreatmentProof is { } proof ? $" ({proof.TrimEnd('.')})" : ""));
        return string.Join(". ", parts) + ".";
    }

    private static void DrawBoards(Form form, PackTally pack)
    {
        var metric = pack.Units == TallyUnits.MillimetresAndMetres;
        var graded = pack.Boards.Any(board => board.Grade is not null);
        var columns = new List<Column>
        {
            new("Board", 9), new(metric ? "Width,\nmm" : "Width,\nin", 12), new(metric ? "Length,\nm" : "Length,\nft", 12),
            metric ? new("Volume,\nm³", 14, Bold: true) : new("SM,\nft²", 10, Bold: true),
        };
        if (graded)
            columns.Add(new("Grade", 24, Align.Left));

        columns.Add(new("Check", 13, Pencil: true));
        var decimals = pack.Boards.Max(board => Decimals(board.Width.Inches));
        var rows = pack.Boards.Select(board => new Row([.. Cells(board, metric, graded, decimals)])).ToList();
        new Table(columns) { RowMm = PencilRowMm, Points = 11.0, Panels = graded ? 2 : 3 }.Draw(form, rows);
    }

    private static IEnumerable<string> Cells(TallyBoard board, bool metric, bool graded, int decimals)
    {
        yield return Print.Number(board.Number);
        yield return metric ? Print.Number(board.Width.Millimetres) : Print.Number(board.Width.Inches, decimals);
        yield return metric ? Print.Number(board.Length.Metres, 2) : Print.Short(board.Length.Feet, 2);
        yield return metric ? Cubic(board.Volume, 4) : Whole(board.SurfaceMeasure);
        if (graded)
            yield return board.Grade ?? "";

        yield return "";
    }

    /// <summary>As many decimals as the boards' widths need, quarters two and eighths three, so that the column stands in line.</summary>
    private static int Decimals(double inches) => Enumerable.Range(0, 3).FirstOrDefault(d => Math.Abs(inches - Math.Round(inches, d)) < 1e-6, 3);

    private static void DrawTotals(Form form, PackTally pack)
    {
        var metric = pack.Units == TallyUnits.MillimetresAndMetres;
        Column[] columns =
        [
            new(metric ? "Length, m" : "Length, ft", 24, Align.Left), new("Pieces", 20),
            metric ? new("Volume, m³", 28) : new("Surface measure, ft²", 38), new($"Board feet, {Words.Of(pack.Basis)}", 34, Bold: true), new("", 60),
        ];
        var rows = pack.ByLength.Select(length => Row.Of(
            metric ? Print.Number(length.Length.Metres, 2) : Print.Short(length.Length.Feet, 2),
            Print.Number(length.Pieces),
            metric ? Cubic(length.Volume, 3) : Whole(length.SurfaceMeasure),
            length.Footage is { } footage ? Print.Number(footage.Count) : "",
            "")).ToList();
        rows.Add(new(
        [
            "Total", Print.Number(pack.Boards.Count),
            metric ? Cubic(pack.Volume, 3) : Whole(pack.Boards.Sum(board => board.SurfaceMeasure ?? 0)),
            Print.Number(pack.Footage.Count), "",
        ], Heavy: true));
        form.Heading("By length", (rows.Count * 6.0) + 20.0);
        new Table(columns).Draw(form, rows);
        form.Paragraph(Basis(pack));
        form.Paragraph(pack.Basis == FootageBasis.Net ? FootageStatement.Net : FootageStatement.Gross);
    }

    private static string Basis(PackTally pack)
    {
        var parts = new List<string> { $"{Print.Number(pack.Footage.Count)} bf by {pack.FootageRule}" };
        if (pack.FootageUnrounded is { } exact)
            parts.Add($"{Print.Number(exact.Count, 2)} bf without rounding");

        if (pack.Volume is { } volume)
            parts.Add($"{Print.Number(volume.CubicMetres, 3)} m³ {pack.VolumeBasis}");

        if (pack.Weight is { } weight)
            parts.Add($"{Print.Number(weight.Kilograms)} kg ({Print.Number(weight.Pounds)} lb)");

        return string.Join("; ", parts) + ".";
    }

    private static string Whole(int? count) => count is { } known ? Print.Number(known) : "";

    private static string Cubic(Volume? volume, int decimals) => volume is { } known ? Print.Number(known.CubicMetres, decimals) : "";
}
