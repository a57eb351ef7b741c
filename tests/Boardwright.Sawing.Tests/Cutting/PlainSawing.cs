using Boardwright.Quantities;

namespace Boardwright.Sawing.Tests.Cutting;

/// <summary>Live sawing written as plainly as it can be: every sequence of thicknesses and skips tried by recursion, every trim window and width looked at. For small logs.</summary>
internal sealed class PlainSawing(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices, double gridMm)
{
    private readonly double lowest = shape.Sections.Min(one => one.OffsetYMm - (one.DiameterY.Millimetres / 2.0));
    private readonly double highest = shape.Sections.Max(one => one.OffsetYMm + (one.DiameterY.Millimetres / 2.0));
    private readonly double kerfMm = rules.Kerf.Millimetres;

    /// <summary>Best value over all sequences of cuts from the lowest point up.</summary>
    public double Best() => From(lowest, isFresh: false);

    /// <summary>Number of sequences looked at.</summary>
    public long Tried { get; private set; }

    private double From(double height, bool isFresh)
    {
        Tried++;
        if (height > highest)
            return 0.0;

        // Waste: one step, or on from a fresh face at least another kerf.
        var best = From(height + (isFresh ? Math.Ceiling((kerfMm / gridMm) - 1e-6) * gridMm : gridMm), isFresh: false);
        foreach (var setting in rules.Settings)
        {
            if (Flitch(height, setting) is > 0.0 and var value)
                best = Math.Max(best, value + From(height + (Math.Ceiling(((setting.Green.Millimetres + kerfMm) / gridMm) - 1e-6) * gridMm), isFresh: true));
        }

        return best;
    }

    private double Flitch(double height, GreenSetting setting)
    {
        var best = 0.0;
        var (length, step) = (shape.Length.Millimetres, rules.LengthStep.Millimetres);
        for (var steps = 1; steps * step <= length + 1e-6; steps++)
        {
            for (var n = 0; (n + steps) * step <= length + 1e-6; n++)
            {
                best = Math.Max(best, Window(height, setting, n * step, steps));
                best = Math.Max(best, Window(height, setting, length - ((n + steps) * step), steps));
            }
        }

        return best;
    }

    private double Window(double height, GreenSetting setting, double from, int steps)
    {
        var (left, right) = (double.NegativeInfinity, double.PositiveInfinity);
        var at = shape.Sections.Select(one => one.At.Millimetres).Where(z => z > from && z < from + (steps * rules.LengthStep.Millimetres)).Append(from).Append(from + (steps * rules.LengthStep.Millimetres));
        foreach (var section in at.Select(Section))
        {
            foreach (var face in new[] { height, height + setting.Green.Millimetres })
            {
                var share = (face - section.OffsetYMm) / (section.DiameterY.Millimetres / 2.0);
                if (Math.Abs(share) >= 1.0)
                    return 0.0;
                var half = section.DiameterX.Millimetres / 2.0 * Math.Sqrt(1.0 - (share * share));
                (left, right) = (Math.Max(left, section.OffsetXMm - half), Math.Min(right, section.OffsetXMm + half));
            }
        }

        var best = 0.0;
        for (var width = rules.WidthStep.Millimetres; width <= right - left + 1e-7; width += rules.WidthStep.Millimetres)
        {
            foreach (var price in prices.Where(price => price.Thickness == setting.Nominal && width >= price.WidthMin.Millimetres - 1e-6 && steps * rules.LengthStep.Metres >= price.LengthMin.Metres - 1e-9))
                best = Math.Max(best, price.MoneyPerBoardFoot * setting.Nominal.Inches * (width / 25.4) * (steps * rules.LengthStep.Feet) / 12.0);
        }

        return best;
    }

    private LogSection Section(double atMm)
    {
        var next = Enumerable.Range(1, shape.Sections.Count - 1).First(i => i == shape.Sections.Count - 1 || shape.Sections[i].At.Millimetres >= atMm);
        var (a, b) = (shape.Sections[next - 1], shape.Sections[next]);
        var share = (atMm - a.At.Millimetres) / (b.At.Millimetres - a.At.Millimetres);
        double Mix(double from, double to) => from + (share * (to - from));
        return new(
            Length.FromMillimetres(Math.Clamp(atMm, 0.0, shape.Length.Millimetres)), Length.FromMillimetres(Mix(a.DiameterX.Millimetres, b.DiameterX.Millimetres)),
            Length.FromMillimetres(Mix(a.DiameterY.Millimetres, b.DiameterY.Millimetres)), Mix(a.OffsetXMm, b.OffsetXMm), Mix(a.OffsetYMm, b.OffsetYMm));
    }
}
