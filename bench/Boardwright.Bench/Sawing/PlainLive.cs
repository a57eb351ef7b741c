using Boardwright.Sawing;

namespace Boardwright.Bench.Sawing;

/// <summary>Live sawing by the same recurrences, written plainly: every flitch of every height, thickness and turn is trimmed and edged by itself from the log's sections.</summary>
internal sealed class PlainLive(LogShape shape, SawingRules rules, IReadOnlyList<BoardPrice> prices, double gridMm)
{
    private readonly List<double> places = [.. Places(shape, rules)];

    public double Best(IEnumerable<double> turns) => turns.Max(At);

    private static IEnumerable<double> Places(LogShape shape, SawingRules rules)
    {
        var (length, step) = (shape.Length.Millimetres, rules.LengthStep.Millimetres);
        return Enumerable.Range(0, (int)((length / step) + 1e-6) + 1).SelectMany(n => new[] { n * step, length - (n * step) }).Concat(shape.Sections.Select(one => one.At.Millimetres)).Order();
    }

    private double At(double turn)
    {
        var sections = places.Select(place => Turned(place, turn * Math.PI / 180.0)).ToList();
        var (lowest, highest) = (sections.Min(one => one.Up - one.HalfHeight), sections.Max(one => one.Up + one.HalfHeight));
        var settings = rules.Settings.Where(setting => prices.Any(price => price.Thickness == setting.Nominal)).ToList();
        var pitches = settings.Select(setting => (int)Math.Ceiling(((setting.Green + rules.Kerf).Millimetres / gridMm) - 1e-6)).ToList();
        var (kerf, count) = ((int)Math.Ceiling((rules.Kerf.Millimetres / gridMm) - 1e-6), (int)Math.Ceiling((highest - lowest) / gridMm) + 1);
        var (fresh, skip) = (new double[count + pitches.Max() + kerf + 1], new double[count + pitches.Max() + kerf + 1]);
        for (var i = count - 1; i >= 0; i--)
        {
            var best = 0.0;
            for (var t = 0; t < settings.Count; t++)
                best = Math.Max(best, Flitch(sections, lowest + (i * gridMm), settings[t]) + fresh[i + pitches[t]]);
            (skip[i], fresh[i]) = (Math.Max(best, skip[i + 1]), Math.Max(best, skip[i + kerf]));
        }

        return skip[0];
    }

    private double Flitch(List<(double Across, double Up, double HalfHeight, double Shear, double HalfChord)> sections, double bottom, GreenSetting setting)
    {
        var from = new double[places.Count + 1];
        for (var p = places.Count - 1; p >= 0; p--)
        {
            from[p] = from[p + 1];
            var (left, right) = (double.NegativeInfinity, double.PositiveInfinity);
            for (var q = p; q < places.Count; q++)
            {
                foreach (var height in new[] { bottom, bottom + setting.Green.Millimetres })
                {
                    var one = sections[q];
                    var (rise, share) = (height - one.Up, (height - one.Up) / one.HalfHeight);
                    var half = Math.Abs(share) < 1.0 ? one.HalfChord * Math.Sqrt(1.0 - (share * share)) : double.NegativeInfinity;
                    (left, right) = (Math.Max(left, one.Across + (one.Shear * rise) - half), Math.Min(right, one.Across + (one.Shear * rise) + half));
                }

                var steps = Math.Round((places[q] - places[p]) / rules.LengthStep.Millimetres);
                if (q == p || right <= left || Math.Abs((steps * rules.LengthStep.Millimetres) - places[q] + places[p]) > 1e-4)
                    continue;
                var width = Math.Floor(((right - left) / rules.WidthStep.Millimetres) + 1e-9) * rules.WidthStep.Millimetres;
                from[p] = Math.Max(from[p], Board(setting, width, steps * rules.LengthStep.Millimetres));
            }
        }

        return from[0];
    }

    private double Board(GreenSetting setting, double widthMm, double lengthMm) => prices
        .Where(price => price.Thickness == setting.Nominal && widthMm >= price.WidthMin.Millimetres - 1e-6 && lengthMm >= price.LengthMin.Millimetres - 1e-6)
        .Select(price => price.MoneyPerBoardFoot * setting.Nominal.Inches * (widthMm / 25.4) * (lengthMm / 304.8) / 12.0).DefaultIfEmpty(0.0).Max();

    private (double Across, double Up, double HalfHeight, double Shear, double HalfChord) Turned(double place, double angle)
    {
        var section = LogShape.At(shape.Sections, place / 1000.0);
        var ((sin, cos), a, b) = (Math.SinCos(angle), section.DiameterX.Millimetres / 2.0, section.DiameterY.Millimetres / 2.0);
        var half = Math.Sqrt((a * a * sin * sin) + (b * b * cos * cos));
        return ((section.OffsetXMm * cos) + (section.OffsetYMm * sin), (section.OffsetYMm * cos) - (section.OffsetXMm * sin), half, ((b * b) - (a * a)) * sin * cos / (half * half), a * b / half);
    }
}
