using Boardwright.Documents.Setting;
using PdfSharp.Pdf;
using PdfSharp.Pdf.IO;

namespace Boardwright.Documents.Blanks;

/// <summary>Prints blank forms: black on white, boxes high enough for a pencil, one sheet each.</summary>
public static class BlankPaper
{
    private const double RowMm = 9.0;
    private const double BoxMm = 13.0;
    private const double HeadRoomMm = 24.0;
    private const string Foot = "Write the day and hour of each thing: typed in later, the book keeps them as they were. Tick “in book” when a line is typed in, so that it is typed once.";

    /// <summary>One form.</summary>
    /// <param name="form">Which.</param>
    /// <param name="yard">Whose it is; empty leaves the place free.</param>
    /// <param name="made">For the file; it is not printed.</param>
    /// <param name="paper">A4 or letter. Default A4.</param>
    public static byte[] Render(BlankForm form, string yard, DateTime made, Paper? paper = null)
    {
        ArgumentNullException.ThrowIfNull(form);
        var head = new FormHead(form.Title, "", yard, "Sheet ____ of ____");
        using var sheet = new Form(paper ?? Paper.A4, form.Title, made, head, form.IsWide);
        for (var i = 0; i < form.Parts.Count; i++)
            Draw(sheet, form.Parts[i], form.Parts.Skip(i + 1).Sum(part => HeightMm(sheet, part)) + HeightMm(sheet, new BlankPart.Note(Foot)));

        sheet.Paragraph(Foot, 9.0);
        return sheet.Finish();
    }

    /// <summary>Every form one after the other, to be printed at once and kept in a drawer.</summary>
    public static byte[] RenderAll(IReadOnlyList<BlankForm> forms, string yard, DateTime made, Paper? paper = null)
    {
        ArgumentNullException.ThrowIfNull(forms);
        using var whole = new PdfDocument();
        whole.Info.Title = "Blank forms";
        (whole.Info.CreationDate, whole.Info.ModificationDate) = (made, made);
        whole.Language = "en";
        foreach (var form in forms)
        {
            using var stream = new MemoryStream(Render(form, yard, made, paper));
            using var one = PdfReader.Open(stream, PdfDocumentOpenMode.Import);
            foreach (var page in one.Pages)
                whole.AddPage(page);
        }

        return StableBytes.Of(whole);
    }

    private static void Draw(Form form, BlankPart part, double afterMm)
    {
        switch (part)
        {
            case BlankPart.Boxes(var boxes):
                DrawBoxes(form, boxes);
                break;
            case BlankPart.Rows rows:
                DrawRows(form, rows, afterMm);
                break;
            case BlankPart.Note(var text):
                form.Paragraph(text);
                form.Y += 2.0;
                break;
            case BlankPart.Cautions(var title, var cautions, var deference):
                CautionBox.Draw(form, title, cautions, deference);
                break;
            case BlankPart.Signatures(var meanings):
                Setting.Signatures.Draw(form, [.. meanings]);
                break;
        }
    }

    private static void DrawBoxes(Form form, IReadOnlyList<BlankBox> boxes)
    {
        var used = 0;
        foreach (var box in boxes)
        {
            if (used + box.Twelfths > 12)
            {
                form.Y += BoxMm;
                used = 0;
            }

            var (x, width) = (form.Left + (form.Width * used / 12.0), form.Width * box.Twelfths / 12.0);
            form.Sheet.Box(x, form.Y, width, BoxMm, Ink.Fine);
            Fit.Into(form.Sheet, form.Letters.Regular, box.Label, width - 2.4, 1, 9.0).Draw(form.Sheet, x + 1.2, form.Y + 1.4);
            used += box.Twelfths;
        }

        form.Y += BoxMm + 3.0;
    }

    private static void DrawRows(Form form, BlankPart.Rows rows, double afterMm)
    {
        if (rows.Heading is { } heading)
            form.Heading(heading);
        var count = rows.Count > 0 ? rows.Count : Math.Max(3, (int)((form.Room - afterMm - HeadRoomMm / 2.0) / RowMm));
        var columns = rows.Columns.Select(column => new Column(column.Head, column.Share, Align.Centre, Pencil: true)).ToList();
        new Table(columns) { RowMm = RowMm, Panels = rows.Panels }.Draw(form, [.. Enumerable.Repeat(new Row([.. columns.Select(_ => "")]), count * rows.Panels)]);
    }

    // What a part takes at most; a table that fills the sheet asks for three rows.
    private static double HeightMm(Form form, BlankPart part) => part switch
    {
        BlankPart.Boxes(var boxes) => (Math.Ceiling(boxes.Sum(box => box.Twelfths) / 12.0) * BoxMm) + 3.0,
        BlankPart.Rows rows => (Math.Max(rows.Count, 3) * RowMm) + HeadRoomMm,
        BlankPart.Note(var text) => (Fit.Wrap(form.Sheet, form.Letters.Regular(10.0), text, form.Width).Count * Sheet.LineMm(form.Letters.Regular(10.0))) + 2.0,
        BlankPart.Cautions(_, var cautions, var deference) =>
            (cautions.Append(deference).Sum(one => Fit.Wrap(form.Sheet, form.Letters.Regular(10.0), one, form.Width - 12.0).Count) * Sheet.LineMm(form.Letters.Regular(10.0))) + 12.0,
        _ => 24.0,
    };
}
