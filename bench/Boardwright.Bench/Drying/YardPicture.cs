using System.Globalization;
using System.Text;

namespace Boardwright.Bench.Drying;

/// <summary>Core seconds of a yard's forecast against the boards stepped, on two logarithmic scales, with the line of straight proportion through the largest.</summary>
internal static class YardPicture
{
    private const double Wide = 640, High = 400, Edge = 60;
    private const int Usual = 256;

    public static string Svg(IReadOnlyList<(int Stacks, int Boards, double CoreSeconds)> points)
    {
        static double All((int Stacks, int Boards, double CoreSeconds) one) => (double)one.Stacks * one.Boards;
        var (x0, x1) = (Math.Floor(Math.Log10(points.Min(All))), Math.Ceiling(Math.Log10(points.Max(All))));
        var (y0, y1) = (Math.Floor(Math.Log10(points.Min(one => one.CoreSeconds))), Math.Ceiling(Math.Log10(points.Max(one => one.CoreSeconds))));
        double X(double boards) => Edge + ((Math.Log10(boards) - x0) / (x1 - x0) * (Wide - (2 * Edge)));
        double Y(double seconds) => High - Edge - ((Math.Log10(seconds) - y0) / (y1 - y0) * (High - (2 * Edge)));
        var text = new StringBuilder();
        void Add(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Add($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Wide} {High}\" font-family=\"sans-serif\" font-size=\"12\"><title>Core seconds of a forecast of 120 days by the hour against stacks x boards</title>");
        Add($"<rect width=\"{Wide}\" height=\"{High}\" fill=\"white\"/><path d=\"M{Edge} {Edge}V{High - Edge}H{Wide - Edge}\" fill=\"none\" stroke=\"black\"/>");
        for (var power = (int)x0; power <= x1; power++)
            Add($"<text x=\"{X(Math.Pow(10, power)):0}\" y=\"{High - Edge + 18}\" text-anchor=\"middle\">{Math.Pow(10, power):0}</text>");
        for (var power = (int)y0; power <= y1; power++)
            Add($"<text x=\"{Edge - 8}\" y=\"{Y(Math.Pow(10, power)):0}\" text-anchor=\"end\">{Math.Pow(10, power):0.###}</text>");
        var (least, most) = (points.Min(All), points.MaxBy(All));
        Add($"<path d=\"M{X(least):0.0} {Y(most.CoreSeconds * least / All(most)):0.0}L{X(All(most)):0.0} {Y(most.CoreSeconds):0.0}\" stroke=\"gray\" stroke-dasharray=\"4\"/>");
        foreach (var one in points)
            Add($"<circle cx=\"{X(All(one)):0.0}\" cy=\"{Y(one.CoreSeconds):0.0}\" r=\"4\" fill=\"{(one.Boards == Usual ? "black" : "none")}\" stroke=\"black\"/><text x=\"{X(All(one)) + 7:0.0}\" y=\"{Y(one.CoreSeconds) + (one.Boards == Usual ? 14 : -4):0.0}\">{one.Stacks} x {one.Boards}</text>");
        Add($"<text x=\"{Wide / 2}\" y=\"{High - 15}\" text-anchor=\"middle\">stacks x boards a stack; dashed: proportional</text><text x=\"15\" y=\"40\">core seconds</text></svg>");
        return text.ToString();
    }
}
