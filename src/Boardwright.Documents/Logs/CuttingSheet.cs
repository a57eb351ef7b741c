using System.Globalization;
using Boardwright.Documents.Setting;

namespace Boardwright.Documents.Logs;

/// <summary>Cutting sheet: for each opening the log's end as it lies on the bed, the blade heights, and at last the list of boards.</summary>
public static class CuttingSheet
{
    private const int PanelFrom = 7;
    private const double RowMm = 5.8;

    /// <summary>Guards, lock-out: sources osha-sawmills-etool, osha-1910-265 (mark P). Rescanning: nails of six inches may show no stain
    /// (source sawmill-forums, mark P); plane of the blade, rolling logs: common practice (mark C).</summary>
    private static readonly string[] Cautions =
    [
        "Guards shut, nobody in the plane of the blade. Lock the mill out before a hand goes near the band.",
        "Scan again after every few cuts: a deep nail may show no stain. Blue-black stain means metal in the next pass.",
        "Chock the log. Work from the uphill side and the ends, never between log and stop.",
    ];

    /// <param name="paper">A4 or letter. Default A4.</param>
    public static byte[] Render(CuttingSheetContent content, Paper? paper = null)
    {
        ArgumentNullException.ThrowIfNull(content);
        var head = new FormHead("Cutting sheet", content.Log, content.Yard, Print.Day(content.Date));
        using var form = new Form(paper ?? Paper.A4, $"Cutting sheet {content.Log}", content.Date.ToDateTime(TimeOnly.MinValue), head);
        form.Paragraph(content.Title, 13.0, bold: true);
        form.Paragraph($"{content.Description} Kerf {Print.Number(content.Kerf.Inches, 3)} in.", 10.0);
        form.Y += 2.0;
        for (var i = 0; i < content.Openings.Count; i++)
        {
            if (i > 0)
                form.NewSheet();

            DrawMetal(form, content);
            DrawOpening(form, content, i);
            if (i == 0)
                CautionBox.Draw(form, "At the mill", Cautions, "These are reminders, not a procedure: the mill maker's instructions and the local rules decide.");
        }

        DrawBoards(form, content);
        return form.Finish();
    }

    private static void DrawMetal(Form form, CuttingSheetContent content)
    {
        if (content.Metal == MetalScan.Clear)
        {
            form.Paragraph("Metal: scanned clear. " + content.MetalNote, 11.0);
            form.Y += 1.0;
            return;
        }

        var hits = content.MetalHits.Select(hit => $"{Clock(hit.ClockDegrees)}, {Print.Short(hit.FromSmallEnd.Feet, 1)} ft from the small end: {hit.Note}.");
        var found = content.Metal == MetalScan.Found;
        Flag.Draw(form, found ? "Stop: metal" : content.Metal == MetalScan.Doubtful ? "Scan again" : "Not scanned", [content.MetalNote, .. hits, found ? "Do not open before it is out and scanned clear." : content.Openings.Any(opening => opening.Cuts.Any(cut => cut.ScanFirst)) ? "Scan before the first cut, and at each stop in the list." : "Scan before the first cut."]);
    }

    private static void DrawOpening(Form form, CuttingSheetContent content, int index)
    {
        var opening = content.Openings[index];
        form.Need(40.0);
        Fit.Into(form.Sheet, form.Letters.Bold, $"Opening {index + 1} of {content.Openings.Count}: {opening.Title}", form.Width, 1, 13.0, 11.0, 10.0).Draw(form.Sheet, form.Left, form.Y + 2.0);
        form.Y += 8.0;
        form.Paragraph(Turn(content, index), 11.0, bold: true);
        form.Y += 1.0;
        var lines = opening.Cuts.Count + opening.Cuts.Count(cut => cut.ScanFirst);
        var panels = lines >= PanelFrom ? 2 : 1;
        var below = (((lines + panels - 1) / panels) * RowMm) + 24.0;
        LogEnd.Draw(form, content, index, Math.Clamp(form.Room - below, 90.0, 132.0));
        form.Paragraph("Small end, drawn to scale. Solid: first quality; dashed: other boards; hatched: gone already. Black wedge: the turn mark. Heavy line: the blade.", 9.0);
        form.Y += 2.0;
        Column[] columns =
        [
            new("Cut", 9, Align.Left, Bold: true), new(content.Metric ? "Blade above\nbed, mm" : "Blade above\nbed, in", 26, Bold: true), new("in", 16), new("mm", 14), new("Frees", 37, Align.Left),
        ];
        var rows = opening.Cuts.SelectMany(cut => (Row[])
        [
            .. cut.ScanFirst ? [Row.Of("", "stop: metal", "", "", "scan the face")] : Array.Empty<Row>(),
            Row.Of(cut.Name, LogEnd.OnScale(cut), Print.Number(cut.Height.Inches, 2), Print.Number(cut.Height.Millimetres), cut.Frees),
        ]).ToList();
        new Table(columns) { RowMm = RowMm, Points = 11.0, Panels = panels }.Draw(form, rows);
    }

    private static string Turn(CuttingSheetContent content, int index)
    {
        var opening = content.Openings[index];
        if (index == 0 && opening.TurnDegrees == 0.0)
            return "Paint the turn mark at the top of the small end before the first cut.";

        var before = index == 0 ? 0.0 : content.Openings[index - 1].TurnDegrees;
        var turn = (((opening.TurnDegrees - before) % 360.0) + 360.0) % 360.0;
        var how = turn switch
        {
            0.0 => "Do not turn",
            90.0 => "Turn a quarter clockwise",
            180.0 => "Turn over (half a turn)",
            270.0 => "Turn a quarter anticlockwise",
            _ => $"Turn {Print.Short(turn, 1)}° clockwise",
        };
        return $"{how}: turn mark at {Clock(opening.TurnDegrees)}.";
    }

    /// <summary>Directions around the log's end as a sawyer calls them.</summary>
    private static string Clock(double degrees)
    {
        var around = ((degrees % 360.0) + 360.0) % 360.0;
        var hour = (int)Math.Round(around / 30.0) % 12;
        var off = around - (hour * 30.0);
        var text = $"{(hour == 0 ? 12 : hour).ToString(CultureInfo.InvariantCulture)} o'clock";
        return Math.Abs(off) < 1.0 || Math.Abs(off - 360.0) < 1.0 ? text : $"{Print.Short(around, 1)}° clockwise from the top";
    }

    private static void DrawBoards(Form form, CuttingSheetContent content)
    {
        if (content.Boards.Count == 0)
            return;

        Column[] columns =
        [
            new("Board", 14, Bold: true), new("Size", 44, Align.Left), new("Quality", 20, Align.Left), new("As sawn", 22, Pencil: true),
        ];
        form.Heading("Boards", 30.0);
        var rows = content.Boards.OrderBy(board => board.Number)
            .Select(board => Row.Of(Print.Number(board.Number), board.Size, board.IsFirstQuality ? "first" : "other", "")).ToList();
        new Table(columns) { RowMm = 9.0, Panels = 2 }.Draw(form, rows);
    }
}
