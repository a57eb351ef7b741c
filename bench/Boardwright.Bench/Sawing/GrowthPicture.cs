using System.Globalization;
using System.Text;

namespace Boardwright.Bench.Sawing;

/// <summary>Time against size on two logarithmic scales, with the line of straight proportion through the smallest.</summary>
internal static class GrowthPicture
{
    private const double Wide = 640, High = 400, Edge = 60;

    public static string Svg(IReadOnlyList<(double Size, double Ms, double LengthFt)> points)
    {
        var (x0, x1) = (Math.Floor(Math.Log10(points.Min(one => one.Size))), Math.Ceiling(Math.Log10(points.Max(one => one.Size))));
        var (y0, y1) = (Math.Floor(Math.Log10(points.Min(one => one.Ms))), Math.Ceiling(Math.Log10(points.Max(one => one.Ms))));
        double X(double size) => Edge + ((Math.Log10(size) - x0) / (x1 - x0) * (Wide - (2 * Edge)));
        double Y(double ms) => High - Edge - ((Math.Log10(ms) - y0) / (y1 - y0) * (High - (2 * Edge)));
        var text = new StringBuilder();
        void Add(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Add($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Wide} {High}\" font-family=\"sans-serif\" font-size=\"12\"><title>Time of a live plan, 36 turns, against diameter x length / step</title>");
        Add($"<rect width=\"{Wide}\" height=\"{High}\" fill=\"white\"/><path d=\"M{Edge} {Edge}V{High - Edge}H{Wide - Edge}\" fill=\"none\" stroke=\"black\"/>");
        for (var power = (int)x0; power <= x1; power++)
            Add($"<text x=\"{X(Math.Pow(10, power)):0}\" y=\"{High - Edge + 18}\" text-anchor=\"middle\">{Math.Pow(10, power):0}</text>");
        for (var power = (int)y0; power <= y1; power++)
            Add($"<text x=\"{Edge - 8}\" y=\"{Y(Math.Pow(10, power)):0}\" text-anchor=\"end\">{Math.Pow(10, power):0.###}</text>");
        var first = points.Where(one => one.LengthFt == 8).MinBy(one => one.Size);
        var last = points.Where(one => one.LengthFt == 8).MaxBy(one => one.Size).Size;
        Add($"<path d=\"M{X(first.Size):0.0} {Y(first.Ms):0.0}L{X(last):0.0} {Y(first.Ms * last / first.Size):0.0}\" stroke=\"gray\" stroke-dasharray=\"4\"/>");
        foreach (var (size, ms, feet) in points)
            Add($"<circle cx=\"{X(size):0.0}\" cy=\"{Y(ms):0.0}\" r=\"4\" fill=\"{(feet == 8 ? "black" : "none")}\" stroke=\"black\"/><text x=\"{X(size) + 7:0.0}\" y=\"{Y(ms) + 4:0.0}\">{feet} ft</text>");
        Add($"<text x=\"{Wide / 2}\" y=\"{High - 15}\" text-anchor=\"middle\">diameter x length / step (squared inches per inch); dashed: proportional</text><text x=\"15\" y=\"40\">ms of processor time</text></svg>");
        return text.ToString();
    }
}
