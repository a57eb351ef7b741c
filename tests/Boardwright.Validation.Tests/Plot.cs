using System.Globalization;
using System.Text;

namespace Boardwright.Validation.Tests;

/// <summary>Ours against the published values as a picture: on the line they agree. A printed range is a bar from end to end.</summary>
internal static class Plot
{
    private const double Size = 360.0;
    private const double Left = 62.0;
    private const double Bottom = 46.0;
    private const double Edge = 14.0;

    public static string Svg(Subject subject, IReadOnlyList<Check> checks)
    {
        var shown = checks.Where(check => check.Printed.IsNumber && check.Ours.Numbers.Count > 0).ToList();
        var values = shown.SelectMany(check => check.Ours.Numbers.Append(check.Printed.Low).Append(End(check))).ToList();
        var scale = new Scale(values.Min(), values.Max(), subject.Logarithmic);
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{Size}\" height=\"{Size}\" viewBox=\"0 0 {Size} {Size}\" role=\"img\" font-family=\"sans-serif\" font-size=\"12\">\n");
        svg.Append(CultureInfo.InvariantCulture, $"<title>{subject.Title}: ours against {shown.Count} published values</title>\n<rect width=\"{Size}\" height=\"{Size}\" fill=\"#fff\"/>\n");
        Axes(svg, scale);
        foreach (var check in shown)
            Point(svg, scale, check);

        return svg.Append("</svg>\n").ToString();
    }

    private static double End(Check check) => double.IsInfinity(check.Printed.High) ? check.Printed.Low : check.Printed.High;

    private static void Axes(StringBuilder svg, Scale scale)
    {
        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{Left} {Edge}V{Size - Bottom}H{Size - Edge}\" fill=\"none\" stroke=\"#222\"/>\n");
        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{Left} {Size - Bottom}L{Size - Edge} {Edge}\" stroke=\"#888\" stroke-dasharray=\"4 3\"/>\n");
        foreach (var tick in scale.Ticks)
        {
            var text = tick.ToString("G4", CultureInfo.InvariantCulture);
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{X(scale, tick):0.0}\" y=\"{Size - Bottom + 16}\" text-anchor=\"middle\">{text}</text>");
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{Left - 6}\" y=\"{Y(scale, tick) + 4:0.0}\" text-anchor=\"end\">{text}</text>\n");
        }

        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{(Size + Left) / 2}\" y=\"{Size - 8}\" text-anchor=\"middle\">published</text><text transform=\"translate(14 {Size / 2}) rotate(-90)\" text-anchor=\"middle\">ours</text>\n");
    }

    private static void Point(StringBuilder svg, Scale scale, Check check)
    {
        foreach (var number in check.Ours.Numbers)
        {
            var (x, y) = (X(scale, check.Printed.Low), Y(scale, number));
            var end = X(scale, End(check));
            if (end > x)
                svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{x:0.0} {y:0.0}H{end:0.0}\" stroke=\"#1b5e8c\" stroke-width=\"2\"/>\n");
            else if (check.Holds(number))
                svg.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{x:0.0}\" cy=\"{y:0.0}\" r=\"2.5\" fill=\"none\" stroke=\"#1b5e8c\"/>\n");

            if (!check.Holds(number))
                svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{x - 4:0.0} {y - 4:0.0}l8 8m0 -8l-8 8\" stroke=\"#b3261e\" stroke-width=\"1.5\"/>\n");
        }
    }

    private static double X(Scale scale, double value) => Left + scale.Place(value) * (Size - Edge - Left);

    private static double Y(Scale scale, double value) => Size - Bottom - scale.Place(value) * (Size - Edge - Bottom);

    private sealed record Scale(double Low, double High, bool Logarithmic)
    {
        private const double Margin = 0.04;

        private double From => Map(Low) - Margin * Span;

        private double Span => Math.Max(Map(High) - Map(Low), 1e-9);

        public IEnumerable<double> Ticks => Logarithmic && High / Low > 20.0 ? Powers() : Round();

        public double Place(double value) => (Map(value) - From) / (Span * (1.0 + 2.0 * Margin));

        private double Map(double value) => Logarithmic ? Math.Log10(value) : value;

        private IEnumerable<double> Powers()
        {
            var (first, last) = ((int)Math.Ceiling(Math.Log10(Low)), (int)Math.Floor(Math.Log10(High)));
            return Enumerable.Range(first, last - first + 1).Where(i => (i - first) % Math.Max(1, (last - first + 1) / 5) == 0).Select(i => Math.Pow(10.0, i));
        }

        private IEnumerable<double> Round()
        {
            var rough = Math.Max(High - Low, 1e-9) / 4.0;
            var power = Math.Pow(10.0, Math.Floor(Math.Log10(rough)));
            var step = power * (rough / power is var part && part < 2.0 ? 2.0 : part < 5.0 ? 5.0 : 10.0);
            for (var tick = Math.Ceiling(Low / step) * step; tick <= High + 1e-9 * step; tick += step)
                yield return Math.Round(tick, 12);
        }
    }
}
