using PdfSharp.Fonts;

namespace Boardwright.Documents.Setting;

/// <summary>The two faces every paper is set in, taken from this assembly and never from the machine.</summary>
/// <remarks>Atkinson Hyperlegible Next, SIL Open Font License 1.1 (Fonts/OFL.txt): 0 and O, 1 and l stay apart on a bad printer.</remarks>
internal sealed class EmbeddedFonts : IFontResolver
{
    public const string Family = "Atkinson Hyperlegible Next";

    private const string Regular = "AtkinsonHyperlegibleNext-Regular.ttf";
    private const string Bold = "AtkinsonHyperlegibleNext-Bold.ttf";

    private static readonly Lazy<bool> Installed = new(() =>
    {
        GlobalFontSettings.FontResolver = new EmbeddedFonts();
        return true;
    });

    /// <summary>The library takes one resolver for the whole process, and takes it once.</summary>
    public static bool Install() => Installed.Value;

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        familyName == Family ? new FontResolverInfo(isBold ? Bold : Regular) : null;

    public byte[]? GetFont(string faceName)
    {
        using var stream = typeof(EmbeddedFonts).Assembly.GetManifestResourceStream(faceName)
            ?? throw new InvalidOperationException($"The font {faceName} is not embedded in {typeof(EmbeddedFonts).Assembly.GetName().Name}.");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return TabularFigures.Choose(bytes.ToArray());
    }
}
