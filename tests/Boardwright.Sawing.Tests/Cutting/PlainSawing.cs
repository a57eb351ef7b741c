using Boardwright.Quantities;

namespace Boardwright.Sawing.Tests.Cutting;

/// <summary>Live sawing written as plainly as it can be: every sequence of thicknesses and skips tried by recursion, every trim window and width looked at. For small logs.</summary>
internal sealed class PlainSawing(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices, double gridMm)
{
    private readonly double kerfMm = rules.Kerf.Millimetres;

    /// <summary>Left and right limits of every board.</summary>
    public (double Low, double High) Clip { get; init; } = (double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Half of the heart taken out.</summary>
    public double HeartMm { get; init; }

    public double Lowest { get; } = shape.Sections.Min(one => one.OffsetYMm - (one.DiameterY.Millimetres / 2.0));

    public double Highest { get; } = shape.Sections.Max(one => one.OffsetYMm + (one.DiameterY.Millimetres / 2.0));

    /// <summary>Number of sequences looked at.</summary>
    public long Tried { get; private set; }

    /// <summary>The same log turned clockwise by whole quarters.</summary>
    public static LogShape Turned(LogShape shape, int quarters) => quarters == 0 ? shape : Turned(
        Expect.Done(LogShape.Measured([.. shape.Sections.Select(one => one with { DiameterX = one.DiameterY, DiameterY = one.DiameterX, OffsetXMm = one.OffsetYMm, OffsetYMm = -one.OffsetXMm })])), quarters - 1);

    /// <summary>Best value over all sequences of cuts from the lowest point up.</summary>
    public double Best() => From(Lowest, isFresh: false);

    /// <summary>Best value above a height.</summary>
    public double From(double height, bool isFresh)
    {
        Tried++;
        if (height > Highest)
            return 0.0;

        // Waste: one step, or on from a fresh face at least another kerf.
        var best = From(height + (isFresh ? Math.Ceiling((kerfMm / gridMm) - 1e-6) * gridMm : gridMm), isFresh: false);
        foreach (var setting in rules.Settings)
        {
            if (Flitch(height, setting) is > 0.0 and var value)
                best = Math.Max(best, value + From(height + Pitch(setting), isFresh: true));
        }

        return best;
    }

    /// <summary>Best value of boards a kerf apart from a height on, and of what a part above the last of them is worth.</summary>
    public double Block(double height, bool isFirst, Func<double, double> above)
    {
        var best = isFirst ? double.NegativeInfinity : above(height);
        foreach (var setting in rules.Settings)
        {
            if (height <= Highest && Flitch(height, setting) is > 0.0 and var value)
                best = Math.Max(best, value + Block(height + Pitch(setting), false, above));
        }

        return best;
    }

    private double Pitch(GreenSetting setting) => Math.Ceiling(((setting.Green.Millimetres + kerfMm) / gridMm) - 1e-6) * gridMm;

    /// <summary>Every way to cut a flitch across at whole steps from either end.</summary>
    private double Flitch(double height, GreenSetting setting)
    {
        var (length, step) = (shape.Length.Millimetres, rules.LengthStep.Millimetres);
        var places = Enumerable.Range(0, (int)((length / step) + 1e-6) + 1).SelectMany(n => new[] { n * step, length - (n * step) }).Distinct().ToList();
        double After(double from)
        {
            var best = 0.0;
            foreach (var start in places.Where(start => start >= from - 1e-6))
            {
                for (var steps = 1; start + (steps * step) <= length + 1e-6; steps++)
                {
                    if (Window(height, setting, start, steps) is > 0.0 and var value)
                        best = Math.Max(best, value + (rules.CutsAcross ? After(start + (steps * step) + rules.TrimKerf.Millimetres) : 0.0));
                }
            }

            return best;
        }

        return After(0.0);
    }

    private double Window(double height, GreenSetting setting, double from, int steps)
    {
        var ((left, right), (heartLow, heartHigh)) = (Clip, (double.PositiveInfinity, double.NegativeInfinity));
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

        foreach (var section in HeartMm > 0.0 ? at.Select(Section) : [])
        {
            var rise = Math.Max(0.0, Math.Max(height - section.OffsetYMm, section.OffsetYMm - height - setting.Green.Millimetres));
            if (rise < HeartMm && Math.Sqrt((HeartMm * HeartMm) - (rise * rise)) is var half)
                (heartLow, heartHigh) = (Math.Min(heartLow, section.OffsetXMm - half), Math.Max(heartHigh, section.OffsetXMm + half));
        }

        if (heartLow > heartHigh)
            return Widest(setting, steps, right - left);
        var spare = Math.Max(0.0, kerfMm - heartHigh + heartLow) / 2.0;
        return Widest(setting, steps, Math.Min(right, heartLow - spare) - left) + Widest(setting, steps, right - Math.Max(left, heartHigh + spare));
    }

    private double Widest(GreenSetting setting, int steps, double clear)
    {
        var best = 0.0;
        for (var width = rules.WidthStep.Millimetres; width <= clear + 1e-7; width += rules.WidthStep.Millimetres)
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
