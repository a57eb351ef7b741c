using Boardwright.Documents.Setting;

namespace Boardwright.Documents.Logs;

/// <summary>The small end of the log as it lies on the bed in one opening, to scale, with boards, blade lines and flags.</summary>
internal sealed class LogEnd
{
    private const double LettersMm = 12.0;
    private const double LabelsMm = 42.0;
    private const double MarkMm = 5.0;
    private const double BedMm = 5.0;

    private readonly Form form;
    private readonly CuttingSheetContent content;
    private readonly int index;
    private readonly Opening opening;
    private readonly double scale;
    private readonly PointMm centre;
    private readonly IReadOnlyList<PointMm> outline;
    private readonly IReadOnlyList<PointMm> barkOutline;

    private LogEnd(Form form, CuttingSheetContent content, int index, double heightMaxMm)
    {
        (this.form, this.content, this.index, opening) = (form, content, index, content.Openings[index]);
        var turned = content.Outline.Select(Turn).ToList();
        var barked = turned.Select(p => Grow(p, content.Bark.Millimetres)).ToList();
        var (low, high) = (barked.Min(p => p.YMm), barked.Max(p => p.YMm));

        // The bed is drawn where it is, unless the log is blocked up so high that it would shrink the picture.
        var bed = -opening.CentreHeight.Millimetres;
        var bottom = bed > low - (0.25 * (high - low)) ? Math.Min(low, bed) : low;
        scale = Math.Min((heightMaxMm - MarkMm - BedMm) / (high - bottom), (form.Width - LettersMm - LabelsMm) / (barked.Max(p => p.XMm) - barked.Min(p => p.XMm)));
        Height = ((high - bottom) * scale) + MarkMm + BedMm;
        form.Need(Height);
        centre = new(form.Left + LettersMm + ((form.Width - LettersMm - LabelsMm) / 2.0), form.Y + MarkMm + (high * scale));
        outline = [.. turned.Select(OnSheet)];
        barkOutline = [.. barked.Select(OnSheet)];
    }

    /// <summary>A height as the mill is set.</summary>
    public static string OnScale(BladeCut cut) => cut.OnScale ?? Print.OnTheRule(cut.Height);

    private double Height { get; }

    private Sheet Sheet => form.Sheet;

    public static void Draw(Form form, CuttingSheetContent content, int index, double heightMaxMm)
    {
        var end = new LogEnd(form, content, index, heightMaxMm);
        end.DrawLog();
        end.DrawBoards();
        end.DrawBlade();
        end.DrawFlags();
        form.Y += end.Height + 1.0;
    }

    private void DrawLog()
    {
        for (var i = 0; i < outline.Count; i += Math.Max(1, outline.Count / 60))
            Sheet.Line(outline[i].XMm, outline[i].YMm, barkOutline[i].XMm, barkOutline[i].YMm, Ink.Fine);

        Sheet.Outline(barkOutline, Ink.Rule);
        Sheet.Outline(outline, Ink.Rule);
        var top = Turn(new(0.0, content.Outline.Max(p => p.YMm)));
        var (tip, foot) = (Grow(top, content.Bark.Millimetres), Grow(top, content.Bark.Millimetres + (MarkMm / scale)));
        var (a, b) = (OnSheet(tip), OnSheet(foot));
        var (acrossX, acrossY) = ((a.YMm - b.YMm) * 0.45, (b.XMm - a.XMm) * 0.45);
        Sheet.Fill([a, new(b.XMm + acrossX, b.YMm + acrossY), new(b.XMm - acrossX, b.YMm - acrossY)]);
        DrawBed();
    }

    private void DrawBed()
    {
        var y = centre.YMm + (opening.CentreHeight.Millimetres * scale);
        if (y > form.Y + Height)
            return;

        var (left, right) = (barkOutline.Min(p => p.XMm), barkOutline.Max(p => p.XMm));
        Sheet.Line(left, y, right, y, Ink.Heavy);
        Sheet.Hatch([new(left, y), new(right, y), new(right, y + 2.5), new(left, y + 2.5)], 2.0);
        Sheet.Text(left - 2.0, y + 1.5, "bed", form.Letters.Regular(9.0), Align.Right);
    }

    private void DrawBoards()
    {
        foreach (var board in content.Boards.OrderBy(board => board.Opening))
        {
            var corners = Corners(board).Select(Turn).Select(OnSheet).ToList();
            if (board.Opening < index)
            {
                Sheet.Hatch(corners, 2.2);
                Sheet.Outline(corners, Ink.Fine);
                continue;
            }

            Sheet.Outline(corners, board.Opening > index ? Ink.Fine : board.IsFirstQuality ? Ink.Rule : Ink.Dashed);
            if (board.Opening == index)
                DrawNumber(board, corners);
        }

        var pith = OnSheet(new(0.0, 0.0));
        Sheet.Fill(pith.XMm - 0.5, pith.YMm - 0.5, 1.0, 1.0);
    }

    private void DrawNumber(SawnBoard board, List<PointMm> corners)
    {
        var (x, y) = (corners.Average(p => p.XMm), corners.Average(p => p.YMm));
        var tall = corners.Max(p => p.YMm) - corners.Min(p => p.YMm);
        var font = form.Letters.Bold(tall > 5.5 ? 11.0 : 9.0);
        var text = Print.Number(board.Number);
        if (tall < Sheet.CapitalMm(font) + 0.6 || corners.Max(p => p.XMm) - corners.Min(p => p.XMm) < Sheet.WidthMm(text, font))
            return;

        Sheet.Text(x, y + (Sheet.CapitalMm(font) / 2.0), text, font, Align.Centre);
    }

    /// <summary>Blade lines with a letter on the left and the height on the right; labels that would touch are spread, with a leader.</summary>
    private void DrawBlade()
    {
        const double pitchMm = 4.6;
        var (left, right) = (form.Left + LettersMm - 4.0, form.Left + form.Width - LabelsMm + 3.0);
        var (bold, plain) = (form.Letters.Bold(11.0), form.Letters.Regular(10.0));
        var cuts = opening.Cuts.OrderByDescending(cut => cut.Height).ToList();
        var lines = cuts.Select(cut => centre.YMm + ((opening.CentreHeight.Millimetres - cut.Height.Millimetres) * scale)).ToList();
        var labels = Spread(lines, pitchMm);
        for (var i = 0; i < cuts.Count; i++)
        {
            Sheet.Line(left, lines[i], right, lines[i], Ink.Heavy);
            Sheet.Line(right, lines[i], right + 4.0, labels[i], Ink.Fine);
            Sheet.Line(left, lines[i], left - 3.0, labels[i], Ink.Fine);
            var baseline = labels[i] + (Sheet.CapitalMm(bold) / 2.0);
            Sheet.Text(left - 4.0, baseline, cuts[i].Name, bold, Align.Right);
            Sheet.Text(right + 24.5, baseline, OnScale(cuts[i]), bold, Align.Right);
            Sheet.Text(form.Right, baseline, content.Metric ? Print.Number(cuts[i].Height.Inches, 2) : Print.Number(cuts[i].Height.Millimetres), plain, Align.Right);
        }
    }

    /// <summary>Positions at least a pitch apart, each as near its own line as its neighbours allow.</summary>
    private static double[] Spread(List<double> lines, double pitchMm)
    {
        var labels = lines.ToArray();
        for (var round = 0; round < 200; round++)
        {
            for (var i = 1; i < labels.Length; i++)
            {
                var overlap = pitchMm - (labels[i] - labels[i - 1]);
                if (overlap <= 1e-6)
                    continue;

                labels[i - 1] -= overlap / 2.0;
                labels[i] += overlap / 2.0;
            }
        }

        return labels;
    }

    private void DrawFlags()
    {
        var font = form.Letters.Bold(10.0);
        const string words = "stop: metal";
        var width = Sheet.WidthMm(words, font) + 5.0;
        foreach (var hit in content.MetalHits)
        {
            var angle = (hit.ClockDegrees + opening.TurnDegrees) * Math.PI / 180.0;
            var radius = content.Outline.Max(p => p.YMm);
            var spot = OnSheet(new(Math.Sin(angle) * radius, Math.Cos(angle) * radius));
            var flag = OnSheet(new(Math.Sin(angle) * radius * 0.66, Math.Cos(angle) * radius * 0.66));
            Sheet.Line(spot.XMm, spot.YMm, flag.XMm, flag.YMm, Ink.Heavy);
            Sheet.Fill(spot.XMm - 1.3, spot.YMm - 1.3, 2.6, 2.6);
            Sheet.Fill(flag.XMm - (width / 2.0) - 0.8, flag.YMm - 3.8, width + 1.6, 7.6, white: true);
            Sheet.Fill(flag.XMm - (width / 2.0), flag.YMm - 3.0, width, 6.0);
            Sheet.Text(flag.XMm, flag.YMm + (Sheet.CapitalMm(font) / 2.0), words, font, Align.Centre, white: true);
        }
    }

    private static PointMm[] Corners(SawnBoard board) =>
    [
        new(board.LeftMm, board.BottomMm), new(board.LeftMm + board.WidthMm, board.BottomMm),
        new(board.LeftMm + board.WidthMm, board.BottomMm + board.HeightMm), new(board.LeftMm, board.BottomMm + board.HeightMm),
    ];

    private PointMm Turn(PointMm p)
    {
        var (sin, cos) = Math.SinCos(opening.TurnDegrees * Math.PI / 180.0);
        return new((p.XMm * cos) + (p.YMm * sin), (p.YMm * cos) - (p.XMm * sin));
    }

    private static PointMm Grow(PointMm p, double byMm)
    {
        var radius = Math.Sqrt((p.XMm * p.XMm) + (p.YMm * p.YMm));
        return new(p.XMm * (radius + byMm) / radius, p.YMm * (radius + byMm) / radius);
    }

    private PointMm OnSheet(PointMm p) => new(centre.XMm + (p.XMm * scale), centre.YMm - (p.YMm * scale));
}
