using System.Globalization;
using System.Text;

namespace Boardwright.Web.Drawings;

/// <summary>Numbers and paths as SVG wants them: tenths of a pixel, a dot for the decimal, no more.</summary>
public static class Svg
{
    /// <summary>A length or position in drawing units.</summary>
    public static string N(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A line through the points, open.</summary>
    public static string Line(IEnumerable<(double X, double Y)> points) => Path(points, close: false);

    /// <summary>A closed outline through the points.</summary>
    public static string Outline(IEnumerable<(double X, double Y)> points) => Path(points, close: true);

    /// <summary>The space between an upper and a lower line that share their x positions.</summary>
    public static string Between(IReadOnlyList<(double X, double Y)> upper, IReadOnlyList<(double X, double Y)> lower) =>
        Outline(upper.Concat(lower.Reverse()));

    private static string Path(IEnumerable<(double X, double Y)> points, bool close)
    {
        var text = new StringBuilder();
        foreach (var (x, y) in points)
        {
            text.Append(text.Length == 0 ? 'M' : 'L').Append(N(x)).Append(' ').Append(N(y));
        }

        return close && text.Length > 0 ? text.Append('Z').ToString() : text.ToString();
    }
}
