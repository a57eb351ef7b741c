using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Boardwright.Documents.Setting;

/// <summary>A document being set: sheets with the same head and foot, and how far down the current one is filled.</summary>
internal sealed class Form : IDisposable
{
    private const double MarginMm = 12.0;
    private const double FootMm = 6.0;

    private readonly PdfDocument document = new();
    private readonly List<XGraphics> pages = [];
    private readonly Paper paper;
    private readonly FormHead? head;

    /// <summary>Without a head the form is bare: a tag sets its own.</summary>
    public Form(Paper paper, string title, DateTime made, FormHead? head, bool landscape = false)
    {
        (this.paper, this.head) = (landscape ? new Paper(paper.Name, paper.HeightMm, paper.WidthMm) : paper, head);
        document.Info.Title = title;
        document.Info.CreationDate = made;
        document.Info.ModificationDate = made;
        document.Language = "en";
        NewSheet();
    }

    public Lettering Letters { get; } = new();

    public Sheet Sheet { get; private set; } = null!;

    /// <summary>How far down the sheet is filled.</summary>
    public double Y { get; set; }

    public double Left { get; } = MarginMm;

    public double Right => paper.WidthMm - MarginMm;

    public double Width => Right - Left;

    public double PaperHeightMm => paper.HeightMm;

    public double PaperWidthMm => paper.WidthMm;

    /// <summary>What the later sheets show, named in their heads.</summary>
    public string Part { get; set; } = "continued";

    /// <summary>Where the foot begins.</summary>
    public double Bottom => paper.HeightMm - MarginMm - FootMm;

    public double Room => Bottom - Y;

    /// <summary>Starts a new sheet unless this much is still free.</summary>
    public void Need(double heightMm)
    {
        if (Room < heightMm)
            NewSheet();
    }

    public void NewSheet()
    {
        var page = document.AddPage();
        page.Width = XUnit.FromMillimeter(paper.WidthMm);
        page.Height = XUnit.FromMillimeter(paper.HeightMm);
        pages.Add(XGraphics.FromPdfPage(page));
        Sheet = new Sheet(pages[^1]);
        Y = MarginMm;
        if (head is not null)
            DrawHead(head);
    }

    /// <summary>A heading over the next block, kept with at least some of it.</summary>
    public void Heading(string text, double keepWithMm = 20.0)
    {
        Need(10.0 + keepWithMm);
        Y += 5.0;
        Fit.Into(Sheet, Letters.Bold, text, Width, 1, 12.0, 10.0).Draw(Sheet, Left, Y);
        Y += 6.0;
    }

    /// <summary>Wrapped text from the left edge.</summary>
    public void Paragraph(string text, double points = 10.0, bool bold = false)
    {
        var font = bold ? Letters.Bold(points) : Letters.Regular(points);
        foreach (var line in Fit.Wrap(Sheet, font, text, Width))
        {
            Need(Sheet.LineMm(font));
            Sheet.Text(Left, Y + Sheet.CapitalMm(font), line, font);
            Y += Sheet.LineMm(font);
        }
    }

    public byte[] Finish()
    {
        for (var i = 0; head is not null && i < pages.Count; i++)
            DrawFoot(new Sheet(pages[i]), head, i + 1);

        pages.ForEach(page => page.Dispose());
        pages.Clear();
        return StableBytes.Of(document);
    }

    public void Dispose()
    {
        pages.ForEach(page => page.Dispose());
        document.Dispose();
    }

    private void DrawHead(FormHead head)
    {
        var first = pages.Count == 1;
        var when = Letters.Regular(10.0);
        var yardWidth = Width * 0.34;
        var yard = Fit.Into(Sheet, Letters.Bold, head.Yard, yardWidth, 1, 11.0, 10.0, 9.0);
        var title = Fit.Into(Sheet, Letters.Bold, first ? $"{head.Kind} {head.Subject}" : $"{head.Kind} {head.Subject}, {Part}", Width - yardWidth - 4.0, 2,
            first ? [20.0, 17.0, 14.0, 12.0, 10.0] : [13.0, 11.0, 10.0]);
        title.Draw(Sheet, Left, Y + (first ? 1.0 : 0.0));
        yard.Draw(Sheet, Right, Y + 1.0, Align.Right);
        Sheet.Text(Right, Y + 1.0 + yard.HeightMm + Sheet.CapitalMm(when), head.When, when, Align.Right);
        Y += Math.Max(title.HeightMm + (first ? 1.0 : 0.0), yard.HeightMm + Sheet.LineMm(when) + 1.0);
        Sheet.Line(Left, Y, Right, Y, Ink.Heavy);
        Y += 3.0;
    }

    private void DrawFoot(Sheet sheet, FormHead head, int number)
    {
        var font = Letters.Regular(9.0);
        var top = Bottom + 2.0;
        sheet.Line(Left, top, Right, top, Ink.Fine);
        var left = Fit.Into(sheet, Letters.Regular, $"{head.Kind} {head.Subject}", Width - 30.0, 1, 9.0);
        left.Draw(sheet, Left, top + 1.6);
        sheet.Text(Right, top + 1.6 + Sheet.CapitalMm(font), $"Page {number} of {pages.Count}", font, Align.Right);
    }
}
