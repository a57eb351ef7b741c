using PdfSharp.Drawing;

namespace Boardwright.Documents.Setting;

/// <summary>Where a text stands relative to its x.</summary>
internal enum Align
{
    Left,
    Centre,
    Right,
}

/// <summary>One page, drawn in millimetres from its top left corner. Text is placed by its baseline.</summary>
internal sealed class Sheet(XGraphics graphics)
{
    public const double PointsPerMm = 72.0 / 25.4;

    /// <summary>Height of a capital letter of this face, as a share of the font size.</summary>
    private const double CapitalShare = 0.668;

    public static double LineMm(XFont font) => font.Size * 1.22 / PointsPerMm;

    public static double CapitalMm(XFont font) => font.Size * CapitalShare / PointsPerMm;

    public double WidthMm(string text, XFont font) => graphics.MeasureString(text, font).Width / PointsPerMm;

    public void Text(double xMm, double baselineMm, string text, XFont font, Align align = Align.Left, bool white = false)
    {
        if (text.Length == 0)
            return;

        var left = LeftOf(xMm, WidthMm(text, font), align);
        graphics.DrawString(text, font, Brush(white), left * PointsPerMm, baselineMm * PointsPerMm, XStringFormats.BaseLineLeft);
    }

    public void Line(double x1Mm, double y1Mm, double x2Mm, double y2Mm, XPen pen) =>
        graphics.DrawLine(pen, x1Mm * PointsPerMm, y1Mm * PointsPerMm, x2Mm * PointsPerMm, y2Mm * PointsPerMm);

    public void Box(double xMm, double yMm, double widthMm, double heightMm, XPen pen) =>
        graphics.DrawRectangle(pen, xMm * PointsPerMm, yMm * PointsPerMm, widthMm * PointsPerMm, heightMm * PointsPerMm);

    public void Fill(double xMm, double yMm, double widthMm, double heightMm, bool white = false) =>
        graphics.DrawRectangle(Brush(white), xMm * PointsPerMm, yMm * PointsPerMm, widthMm * PointsPerMm, heightMm * PointsPerMm);

    public void Outline(IReadOnlyList<PointMm> points, XPen pen) => graphics.DrawPolygon(pen, Points(points));

    public void Fill(IReadOnlyList<PointMm> points, bool white = false) => graphics.DrawPolygon(Brush(white), Points(points), XFillMode.Winding);

    /// <summary>Slanted lines inside an outline: what is gone, or not certain.</summary>
    public void Hatch(IReadOnlyList<PointMm> points, double spacingMm)
    {
        var path = new XGraphicsPath();
        path.AddPolygon(Points(points));
        var state = graphics.Save();
        graphics.IntersectClip(path);
        var (top, bottom) = (points.Min(p => p.YMm), points.Max(p => p.YMm));

        // Every line has x + y on one grid of the page, so that neighbours read as one hatched field.
        var first = Math.Ceiling(points.Min(p => p.XMm + p.YMm) / spacingMm) * spacingMm;
        var last = points.Max(p => p.XMm + p.YMm);
        for (var sum = first; sum < last; sum += spacingMm)
            Line(sum - bottom, bottom, sum - top, top, Ink.Fine);

        graphics.Restore(state);
    }

    private static double LeftOf(double xMm, double widthMm, Align align) => align switch
    {
        Align.Left => xMm,
        Align.Centre => xMm - (widthMm / 2.0),
        _ => xMm - widthMm,
    };

    private static XSolidBrush Brush(bool white) => white ? XBrushes.White : XBrushes.Black;

    private static XPoint[] Points(IReadOnlyList<PointMm> points) => [.. points.Select(p => new XPoint(p.XMm * PointsPerMm, p.YMm * PointsPerMm))];
}
