using PdfSharp.Drawing;

namespace Boardwright.Documents.Setting;

/// <summary>Fonts of one document by size in points. Nothing smaller than nine points leaves the shop.</summary>
internal sealed class Lettering
{
    public const double SmallestPoints = 9.0;

    private readonly Dictionary<(bool Bold, double Points), XFont> fonts = [];

    public Lettering() => EmbeddedFonts.Install();

    public XFont Regular(double points) => Get(false, points);

    public XFont Bold(double points) => Get(true, points);

    private XFont Get(bool bold, double points)
    {
        if (points < SmallestPoints)
            throw new ArgumentOutOfRangeException(nameof(points), points, $"Accepted: {SmallestPoints} points or more.");

        if (!fonts.TryGetValue((bold, points), out var font))
            fonts[(bold, points)] = font = new XFont(EmbeddedFonts.Family, points, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);

        return font;
    }
}
