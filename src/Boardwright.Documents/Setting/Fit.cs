using System.Text;
using PdfSharp.Drawing;

namespace Boardwright.Documents.Setting;

/// <summary>Text made to fit a width: the largest size that fits, then more lines, and at the very last a cut marked by an ellipsis.</summary>
internal sealed record Fit(XFont Font, IReadOnlyList<string> Lines)
{
    public double HeightMm => Lines.Count * Sheet.LineMm(Font);

    /// <param name="sizes">Points, largest first; the last is the smallest allowed.</param>
    public static Fit Into(Sheet sheet, Func<double, XFont> face, string text, double widthMm, int linesMax, params double[] sizes)
    {
        foreach (var size in sizes)
        {
            var lines = Wrap(sheet, face(size), text, widthMm);
            if (lines.Count <= linesMax)
                return new(face(size), lines);
        }

        var font = face(sizes[^1]);
        var all = Wrap(sheet, font, text, widthMm);
        return new(font, [.. all.Take(linesMax - 1), Shorten(sheet, font, all[linesMax - 1] + " " + all[linesMax], widthMm)]);
    }

    /// <summary>Lines no wider than the width; a word wider than that is broken.</summary>
    public static IReadOnlyList<string> Wrap(Sheet sheet, XFont font, string text, double widthMm)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Broken(sheet, font, word, widthMm)))
        {
            if (line.Length > 0 && sheet.WidthMm($"{line} {word}", font) > widthMm)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        lines.Add(line.ToString());
        return lines;
    }

    public void Draw(Sheet sheet, double xMm, double topMm, Align align = Align.Left)
    {
        for (var i = 0; i < Lines.Count; i++)
            sheet.Text(xMm, topMm + (i * Sheet.LineMm(Font)) + Sheet.CapitalMm(Font), Lines[i], Font, align);
    }

    private static string Shorten(Sheet sheet, XFont font, string text, double widthMm)
    {
        while (text.Length > 1 && sheet.WidthMm(text + "…", font) > widthMm)
            text = text[..^1];

        return text.TrimEnd() + "…";
    }

    private static IEnumerable<string> Broken(Sheet sheet, XFont font, string word, double widthMm)
    {
        while (word.Length > 1 && sheet.WidthMm(word, font) > widthMm)
        {
            var length = word.Length - 1;
            while (length > 1 && sheet.WidthMm(word[..length], font) > widthMm)
                length--;

            yield return word[..length];
            word = word[length..];
        }

        yield return word;
    }
}
