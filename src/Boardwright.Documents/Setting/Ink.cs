using PdfSharp.Drawing;

namespace Boardwright.Documents.Setting;

/// <summary>The only strokes used: black, and never thinner than half a point, so that a worn drum still prints them.</summary>
internal static class Ink
{
    public static XPen Fine { get; } = Pen(0.5);

    public static XPen Rule { get; } = Pen(0.8);

    public static XPen Heavy { get; } = Pen(1.6);

    public static XPen Dashed { get; } = Pen(0.8, 4.0, 2.5);

    public static XPen HeavyDashed { get; } = Pen(1.4, 3.5, 2.0);

    private static XPen Pen(double points, params double[] dashes)
    {
        var pen = new XPen(XColors.Black, points) { LineCap = XLineCap.Flat, LineJoin = XLineJoin.Miter };
        if (dashes.Length > 0)
            pen.DashPattern = dashes;

        return pen;
    }
}
