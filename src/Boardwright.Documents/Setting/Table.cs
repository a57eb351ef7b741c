using PdfSharp.Drawing;

namespace Boardwright.Documents.Setting;

/// <summary>How one column of a ruled table is set.</summary>
/// <param name="Head">Heading; "\n" parts two lines.</param>
/// <param name="Share">Width relative to the other columns.</param>
/// <param name="Align">Numbers stand right, words left.</param>
/// <param name="Bold">The deciding number.</param>
/// <param name="Pencil">An empty box to write in.</param>
internal sealed record Column(string Head, double Share, Align Align = Align.Right, bool Bold = false, bool Pencil = false);

/// <summary>One ruled row; "\n" in a cell parts a bold line from the plain one under it. A heavy row carries a rule above it and
/// stands bold; a marked one has its first cell reversed, white on black.</summary>
internal sealed record Row(IReadOnlyList<string> Cells, bool Heavy = false, bool Marked = false)
{
    public static Row Of(params string[] cells) => new(cells);
}

/// <summary>A ledger of rows under repeated heads, in one or more panels side by side, over as many sheets as it takes.</summary>
internal sealed class Table(IReadOnlyList<Column> columns)
{
    private const double GutterMm = 6.0;
    private const double CellGapMm = 2.4;
    private const double PaddingMm = 2.4;

    /// <summary>9 mm takes a pencil; printed rows may be lower.</summary>
    public double RowMm { get; init; } = 6.0;

    public double Points { get; init; } = 10.0;

    public int Panels { get; init; } = 1;

    /// <summary>Rows grow with their words instead of cutting them; for tables of one panel.</summary>
    public bool Grows { get; init; }

    public void Draw(Form form, IReadOnlyList<Row> rows)
    {
        for (var done = 0; done < rows.Count;)
        {
            form.Need(HeadMm + (2.0 * RowMm));
            var deep = Grows ? Fitting(form, [.. rows.Skip(done)]) : Math.Min((int)((form.Room - HeadMm) / RowMm), (rows.Count - done + Panels - 1) / Panels);
            for (var panel = 0; panel < Panels; panel++)
                DrawPanel(form, panel, [.. rows.Skip(done + (panel * deep)).Take(deep)]);

            form.Y += HeadMm + (Grows ? rows.Skip(done).Take(deep).Sum(row => HeightMm(form, row)) : deep * RowMm);
            done += deep * Panels;
        }

        form.Y += 2.5;
    }

    // One at least: a row higher than a sheet would be asked for for ever.
    private int Fitting(Form form, IReadOnlyList<Row> rows)
    {
        var (room, deep) = (form.Room - HeadMm, 0);
        while (deep < rows.Count && (room -= HeightMm(form, rows[deep])) >= 0.0)
            deep++;
        return Math.Max(1, deep);
    }

    private double HeightMm(Form form, Row row) => !Grows ? RowMm : Places(form.Left, form.Width).Zip(row.Cells).Max(cell =>
    {
        var font = cell.First.Column.Bold ? form.Letters.Bold(Points) : form.Letters.Regular(Points);
        return Math.Max(RowMm, (Fit.Wrap(form.Sheet, font, cell.Second, cell.First.Width - CellGapMm).Count * Sheet.LineMm(font)) + PaddingMm);
    });

    private double HeadMm => columns.Any(c => c.Head.Contains('\n')) ? 9.5 : 5.5;

    private void DrawPanel(Form form, int panel, IReadOnlyList<Row> rows)
    {
        if (rows.Count == 0)
            return;

        var width = (form.Width - (GutterMm * (Panels - 1))) / Panels;
        var left = form.Left + (panel * (width + GutterMm));
        DrawHeads(form, left, width);
        var y = form.Y + HeadMm;
        form.Sheet.Line(left, y, left + width, y, Ink.Rule);
        foreach (var row in rows)
        {
            if (row.Heavy)
                form.Sheet.Line(left, y, left + width, y, Ink.Heavy);

            var height = HeightMm(form, row);
            DrawRow(form, row, left, width, y, height);
            y += height;
            form.Sheet.Line(left, y, left + width, y, Ink.Fine);
        }
    }

    private void DrawHeads(Form form, double left, double width)
    {
        var font = form.Letters.Regular(9.0);
        foreach (var (column, x, w) in Places(left, width))
        {
            var lines = column.Head.Split('\n');
            for (var i = 0; i < lines.Length; i++)
            {
                var baseline = form.Y + HeadMm - 1.5 - ((lines.Length - 1 - i) * 3.9);
                form.Sheet.Text(Anchor(column, x, w), baseline, lines[i], font, column.Pencil ? Align.Centre : column.Align);
            }
        }
    }

    private void DrawRow(Form form, Row row, double left, double width, double y, double height)
    {
        foreach (var ((column, x, w), text) in Places(left, width).Zip(row.Cells))
        {
            if (column.Pencil && text.Length == 0)
            {
                form.Sheet.Line(x, y, x, y + height, Ink.Fine);
                form.Sheet.Line(x + w, y, x + w, y + height, Ink.Fine);
            }

            var reversed = row.Marked && x <= left;
            if (reversed)
                form.Sheet.Fill(x, y, w, height);

            DrawCell(form, column, row.Heavy || column.Bold, text, x, w, y, height, reversed);
        }
    }

    private void DrawCell(Form form, Column column, bool bold, string text, double x, double w, double y, double height, bool white = false)
    {
        if (Grows)
        {
            var face = bold ? form.Letters.Bold(Points) : form.Letters.Regular(Points);
            var lines = new Fit(face, Fit.Wrap(form.Sheet, face, text, w - CellGapMm));
            lines.Draw(form.Sheet, Anchor(column, x, w), y + ((height - lines.HeightMm) / 2.0) + 0.8, column.Align);
        }
        else if (text.Split('\n') is [var upper, var lower])
        {
            DrawLine(form, column, true, upper, x, w, y - 2.2);
            DrawLine(form, column, false, lower, x, w, y + 2.2);
        }
        else
        {
            DrawLine(form, column, bold, text, x, w, y, RowMm >= 8.0 ? 2 : 1, white);
        }
    }

    private void DrawLine(Form form, Column column, bool bold, string text, double x, double w, double y, int linesMax = 1, bool white = false)
    {
        Func<double, XFont> face = bold ? form.Letters.Bold : form.Letters.Regular;
        var font = face(Points);
        var anchor = Anchor(column, x, w);
        if (form.Sheet.WidthMm(text, font) <= w - CellGapMm)
        {
            form.Sheet.Text(anchor, y + ((RowMm + Sheet.CapitalMm(font)) / 2.0), text, font, column.Align, white);
            return;
        }

        var fit = Fit.Into(form.Sheet, face, text, w - CellGapMm, linesMax, Lettering.SmallestPoints);
        fit.Draw(form.Sheet, anchor, y + ((RowMm - fit.HeightMm) / 2.0) + 0.8, column.Align);
    }

    private static double Anchor(Column column, double x, double w) => column switch
    {
        { Pencil: true } or { Align: Align.Centre } => x + (w / 2.0),
        { Align: Align.Right } => x + w - (CellGapMm / 2.0),
        _ => x + (CellGapMm / 2.0),
    };

    private IEnumerable<(Column Column, double X, double Width)> Places(double left, double width)
    {
        var scale = width / columns.Sum(column => column.Share);
        foreach (var column in columns)
        {
            yield return (column, left, column.Share * scale);
            left += column.Share * scale;
        }
    }
}
