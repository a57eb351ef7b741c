using System.Runtime.Intrinsics;

namespace Boardwright.Sawing;

/// <summary>Values of all flitches of a lie, four neighbouring heights at a time, by the recurrence of <see cref="FlitchTrim"/>; and ceilings of clipped ones.</summary>
/// <remarks>
/// <para>Ceilings: for each block of heights and each length the widest strip of any trim place is kept. Clipped, a flitch brings at most the best way to cut its length into such strips
/// regardless of place.</para>
/// <para>Cost: blocks x thicknesses x (stations + trim places squared) vector operations. Nothing is allocated after construction.</para>
/// </remarks>
internal sealed class FlitchField
{
    /// <summary>Heights worked out together.</summary>
    public const int Lanes = 4;

    private const double QuarteredShare = 0.8;

    // The widest strips are kept a hair wider than they are.
    private const double Hair = 1e-6;

    private readonly CuttingSpace space;
    private readonly Stations stations;
    private readonly ValueTable values;
    private readonly LogLie lie;
    private readonly int blocks;
    // Widest strip, and with grain what all have in common, by wane class, thickness, length and block; length 0 for the widest of all.
    private readonly double[] widestLow;
    private readonly double[] widestHigh;
    private readonly double[] commonLow;
    private readonly double[] commonHigh;
    private readonly double[] byLength;
    private readonly Vector256<double>[] fourByLength;
    private readonly (double Low, double High) ups;
    private readonly (double Low, double High) acrosses;

    // Scratch of one block: strip, core and best from a station on; what is clear from trim place to trim place; widest and inner strips by length.
    private readonly Vector256<double>[] underLow;
    private readonly Vector256<double>[] underHigh;
    private readonly Vector256<double>[] low;
    private readonly Vector256<double>[] high;
    private readonly Vector256<double>[] coreLow;
    private readonly Vector256<double>[] coreHigh;
    private readonly Vector256<double>[] from;
    private readonly Vector256<double>[][] segments;
    private readonly Vector256<double>[] widest;
    private Vector256<double> underAt = Vector256.Create(double.NaN);

    public FlitchField(CuttingSpace space, LogLie lie)
    {
        (this.space, this.lie, stations, values) = (space, lie, space.Stations, space.Values);
        blocks = (lie.Count + (Lanes * Lanes) - 1) / (Lanes * Lanes) * Lanes;
        Stride = blocks * Lanes;
        Whole = new double[values.GreenMm.Length * Stride];
        var size = values.WaneShares.Length * values.GreenMm.Length * (values.Longest + 1) * blocks;
        (widestLow, widestHigh) = (new double[size], new double[size]);
        (commonLow, commonHigh) = values.HasGrain ? (new double[size], new double[size]) : ([], []);
        (byLength, fourByLength) = (new double[values.Longest + 1], new Vector256<double>[values.Longest + 1]);
        (ups, acrosses) = ((lie.Log.Up.Min(), lie.Log.Up.Max()), (lie.Log.Across.Min(), lie.Log.Across.Max()));
        var count = stations.Count;
        (underLow, underHigh) = (new Vector256<double>[count], new Vector256<double>[count]);
        (low, high, coreLow, coreHigh) = (new Vector256<double>[count], new Vector256<double>[count], new Vector256<double>[count], new Vector256<double>[count]);
        (from, widest) = (new Vector256<double>[count + 1], new Vector256<double>[4 * (values.Longest + 1)]);
        segments = [.. stations.Families.Select(family => new Vector256<double>[4 * family.Length])];
        Most = values.HasGrain ? new double[Whole.Length] : Whole;
        for (var block = 0; block < blocks; block++)
        {
            for (var t = 0; t < values.GreenMm.Length; t++)
                Evaluate(t, block, FlitchClip.None, Whole.AsSpan((t * Stride) + (block * Lanes), Lanes), keep: true);
        }

        for (var at = 0; at < Most.Length && values.HasGrain; at += Lanes * Lanes)
        {
            var four = Narrowed(at / Stride, at % Stride / Lanes, FlitchClip.None);
            for (var lane = 0; lane < Lanes; lane++)
                Most.AsSpan(at + (lane * Lanes), Lanes).Fill(four[lane]);
        }
    }

    /// <summary>Heights to a thickness in <see cref="Whole"/>.</summary>
    public int Stride { get; }

    /// <summary>Value of every unclipped flitch, at thickness x stride + height.</summary>
    public double[] Whole { get; }

    /// <summary>Most that every flitch brings, clipped or not; its value where no row asks for a grain.</summary>
    public double[] Most { get; }

    /// <summary>Values of a block of clipped flitches, exact.</summary>
    public void Evaluate(int t, int block, FlitchClip clip, Span<double> into) => Evaluate(t, block, clip, into, keep: false);

    /// <summary>Most that clipped flitches bring, into an array like <see cref="Whole"/>.</summary>
    /// <param name="clip">What they are clipped to.</param>
    /// <param name="into">Thickness x stride + height.</param>
    /// <param name="isClose">Look at every length, not at the widest strip alone: nearer, and slower.</param>
    public void Clipped(FlitchClip clip, double[] into, bool isClose)
    {
        for (var t = 0; t < values.GreenMm.Length; t++)
        {
            for (var block = 0; block < blocks; block += Lanes)
            {
                var four = isClose && (values.HasGrain || clip.HeartRadiusMm > 0.0)
                    ? Vector256.Create(Closely(t, block, clip), Closely(t, block + 1, clip), Closely(t, block + 2, clip), Closely(t, block + 3, clip))
                    : isClose ? Plainly(t, block, clip) : Narrowed(t, block, clip);
                for (var lane = 0; lane < Lanes; lane++)
                {
                    var at = (t * Stride) + ((block + lane) * Lanes);
                    Vector256.Min(Vector256.Create(Most, at), Vector256.Create(four[lane])).CopyTo(into, at);
                }
            }
        }
    }

    private Vector256<double> Narrowed(int t, int block, FlitchClip clip)
    {
        var best = Vector256<double>.Zero;
        for (var wane = 0; wane < values.WaneShares.Length; wane++)
            best = Vector256.Max(best, values.Ceiling(t, Width(Strips(wane, t, 0) + block, clip)));
        return best;
    }

    private Vector256<double> Plainly(int t, int block, FlitchClip clip)
    {
        var best = Vector256<double>.Zero;
        for (var wane = 0; wane < values.WaneShares.Length; wane++)
        {
            var last = Vector256<double>.Zero;
            for (var s = stations.StepsMin; s <= values.Longest; s++)
            {
                last = Vector256.Max(last, values.At(wane, t, s, Width(Strips(wane, t, s) + block, clip)));
                for (var part = stations.StepsMin; part <= s / 2 && stations.CutsAcross; part++)
                    last = Vector256.Max(last, fourByLength[part] + fourByLength[s - part]);
                fourByLength[s] = last;
            }

            best = Vector256.Max(best, last);
        }

        return best;
    }

    private Vector256<double> Width(int at, FlitchClip clip) =>
        Vector256.Min(Vector256.Create(clip.HighMm), Vector256.Create(widestHigh, at)) - Vector256.Max(Vector256.Create(clip.LowMm), Vector256.Create(widestLow, at));

    private void Evaluate(int t, int block, FlitchClip clip, Span<double> into, bool keep)
    {
        var bottom = Vector256.Create(lie.Height(block * Lanes), lie.Height((block * Lanes) + 1), lie.Height((block * Lanes) + 2), lie.Height((block * Lanes) + 3));
        var best = Vector256<double>.Zero;
        for (var wane = 0; wane < values.WaneShares.Length; wane++)
        {
            Clear();
            for (var face = 0; face < (wane == 0 ? 1 : 2); face++)
            {
                var core = Fill(t, bottom, clip, wane, face);
                best = Vector256.Max(best, Best(t, wane, bottom + Vector256.Create(values.GreenMm[t] / 2.0), core));
            }

            if (keep)
                Keep(wane, t, block);
        }

        best.CopyTo(into);
        for (var lane = 0; lane < Lanes && clip.IsWhole && values.Slabs[t].Length > 0; lane++)
            into[lane] = Math.Max(into[lane], lie.Trim.Slab(t, bottom[lane], out _, out _));
    }

    private void Clear()
    {
        for (var s = 0; s < widest.Length; s += 4)
        {
            (widest[s], widest[s + 1]) = (Vector256.Create(double.PositiveInfinity), Vector256.Create(double.NegativeInfinity));
            (widest[s + 2], widest[s + 3]) = (Vector256.Create(double.NegativeInfinity), Vector256.Create(double.PositiveInfinity));
        }
    }

    private void Keep(int wane, int t, int block)
    {
        for (var s = stations.StepsMin; s <= values.Longest; s++)
        {
            var at = Strips(wane, t, s) + block;
            (widest[0], widest[1]) = (Vector256.Min(widest[0], widest[4 * s]), Vector256.Max(widest[1], widest[(4 * s) + 1]));
            (widestLow[at], widestHigh[at]) = (Least(widest[4 * s]) - Hair, -Least(-widest[(4 * s) + 1]) + Hair);
            if (values.HasGrain)
                (commonLow[at], commonHigh[at]) = (-Least(-widest[(4 * s) + 2]) + Hair, Least(widest[(4 * s) + 3]) - Hair);
        }

        var any = Strips(wane, t, 0) + block;
        (widestLow[any], widestHigh[any]) = (Least(widest[0]) - Hair, -Least(-widest[1]) + Hair);
    }

    private static double Least(Vector256<double> lanes) => Math.Min(Math.Min(lanes[0], lanes[1]), Math.Min(lanes[2], lanes[3]));

    private bool Fill(int t, Vector256<double> bottom, FlitchClip clip, int wane, int face)
    {
        var (core, radius, top) = (false, Math.Max(clip.HeartRadiusMm, space.RotRadiusMm), bottom + Vector256.Create(values.GreenMm[t]));
        var missing = Vector256.Create(values.WaneShares[wane] * values.GreenMm[t]);
        var (under, over) = wane == 0 ? (bottom, top) : face == 0 ? (bottom, top - missing) : (bottom + missing, top);
        var (clipLow, clipHigh) = (Vector256.Create(clip.LowMm), Vector256.Create(clip.HighMm));
        Under(under);
        for (var j = 0; j < low.Length; j++)
        {
            lie.Log.Chord(j, over, out var left, out var right);
            (low[j], high[j]) = (Vector256.Max(clipLow, Vector256.Max(underLow[j], left)), Vector256.Min(clipHigh, Vector256.Min(underHigh[j], right)));
            if (radius > 0.0)
            {
                lie.Log.Core(j, bottom, top, radius, out coreLow[j], out coreHigh[j]);
                core |= Vector256.LessThanAny(coreLow[j], coreHigh[j]);
            }
        }

        return core;
    }

    // The lower faces of all thicknesses on a block have the same chords.
    private void Under(Vector256<double> height)
    {
        if (height == underAt)
            return;
        underAt = height;
        for (var j = 0; j < underLow.Length; j++)
            lie.Log.Chord(j, height, out underLow[j], out underHigh[j]);
    }

    private Vector256<double> Best(int t, int wane, Vector256<double> middle, bool core)
    {
        for (var f = 0; f < segments.Length && !stations.IsNested; f++)
            Merge(stations.Families[f], segments[f], core);

        var narrowest = Vector256.Create(values.NarrowestMm - 1e-9);
        from[^1] = Vector256<double>.Zero;
        for (var p = low.Length - 1; p >= 0; p--)
        {
            from[p] = from[p + 1];
            if (Vector256.LessThanAll(high[p] - low[p], narrowest))
                continue;
            for (var f = 0; f < segments.Length; f++)
            {
                if (stations.PlaceIn[f][p] >= 0)
                    From(t, wane, middle, core, p, f, narrowest);
            }
        }

        return from[0];
    }

    private void From(int t, int wane, Vector256<double> middle, bool core, int p, int f, Vector256<double> narrowest)
    {
        var (family, segment, place, nested) = (stations.Families[f], segments[f], stations.PlaceIn[f][p], stations.IsNested);
        var (left, right, best) = (low[p], high[p], from[p]);
        var (rotLeft, rotRight) = core ? (coreLow[p], coreHigh[p]) : (Vector256.Create(double.PositiveInfinity), Vector256.Create(double.NegativeInfinity));
        for (var k = place + 1; k < family.Length; k++)
        {
            if (!nested)
            {
                (left, right) = (Vector256.Max(left, segment[(4 * k) - 4]), Vector256.Min(right, segment[(4 * k) - 3]));
                if (Vector256.LessThanAll(right - left, narrowest))
                    break;
                if (core)
                    (rotLeft, rotRight) = (Vector256.Min(rotLeft, segment[(4 * k) - 2]), Vector256.Max(rotRight, segment[(4 * k) - 1]));
            }

            var steps = k - place;
            if (steps < stations.StepsMin)
                continue;

            Widen(4 * steps, left, right);
            var value = core || values.HasGrain
                ? EachLane(t, wane, middle, p, family[k], steps, left, right, rotLeft, rotRight)
                : values.At(wane, t, steps, right - left);
            best = Vector256.Max(best, value + from[stations.After[family[k]]]);
        }

        from[p] = best;
    }

    private void Widen(int at, Vector256<double> left, Vector256<double> right)
    {
        (widest[at], widest[at + 1]) = (Vector256.Min(widest[at], left), Vector256.Max(widest[at + 1], right));
        if (values.HasGrain)
            (widest[at + 2], widest[at + 3]) = (Vector256.Max(widest[at + 2], left), Vector256.Min(widest[at + 3], right));
    }

    // What is clear, and what the core takes, from each trim place to the next.
    private void Merge(int[] family, Vector256<double>[] segment, bool core)
    {
        for (var k = 0; k < family.Length - 1; k++)
        {
            var (left, right) = (low[family[k]], high[family[k]]);
            for (var j = family[k] + 1; j <= family[k + 1]; j++)
                (left, right) = (Vector256.Max(left, low[j]), Vector256.Min(right, high[j]));
            (segment[4 * k], segment[(4 * k) + 1]) = (left, right);
            if (!core)
                continue;

            (left, right) = (coreLow[family[k]], coreHigh[family[k]]);
            for (var j = family[k] + 1; j <= family[k + 1]; j++)
                (left, right) = (Vector256.Min(left, coreLow[j]), Vector256.Max(right, coreHigh[j]));
            (segment[(4 * k) + 2], segment[(4 * k) + 3]) = (left, right);
        }
    }

    private Vector256<double> EachLane(int t, int wane, Vector256<double> middle, int p, int q, int steps, Vector256<double> left, Vector256<double> right, Vector256<double> rotLeft, Vector256<double> rotRight)
    {
        Span<double> value = stackalloc double[Lanes];
        for (var lane = 0; lane < Lanes; lane++)
            value[lane] = lie.Trim.Strip(t, wane, middle[lane], p, q, steps, left[lane], right[lane], rotLeft[lane], rotRight[lane]);
        return Vector256.Create<double>(value);
    }

    private double Closely(int t, int block, FlitchClip clip)
    {
        var (a, b, best) = (lie.Height(block * Lanes), lie.Height((block * Lanes) + Lanes - 1), 0.0);
        var (heartLow, heartHigh) = Heart(t, a, b, clip.HeartRadiusMm);
        for (var wane = 0; wane < values.WaneShares.Length; wane++)
        {
            Array.Clear(byLength);
            for (var s = stations.StepsMin; s <= values.Longest; s++)
            {
                byLength[s] = byLength[s - 1];
                var at = Strips(wane, t, s) + block;
                var (left, right) = (Math.Max(clip.LowMm, widestLow[at]), Math.Min(clip.HighMm, widestHigh[at]));
                if (right - left >= values.NarrowestMm - 1e-9)
                    byLength[s] = Math.Max(byLength[s], Widest(t, wane, at, s, a, b, clip, left, right, heartLow, heartHigh));
                for (var part = stations.StepsMin; part <= s / 2 && stations.CutsAcross; part++)
                    byLength[s] = Math.Max(byLength[s], byLength[part] + byLength[s - part]);
            }

            best = Math.Max(best, byLength[^1]);
        }

        return best;
    }

    private double Widest(int t, int wane, int at, int s, double a, double b, FlitchClip clip, double left, double right, double heartLow, double heartHigh)
    {
        if (heartLow < heartHigh)
            return values.Best(wane, t, s, values.Units(Math.Max(0.0, Math.Min(right, heartLow) - left))) + values.Best(wane, t, s, values.Units(Math.Max(0.0, right - Math.Max(left, heartHigh))));

        var units = values.Units(right - left);
        if (!values.HasGrain)
            return values.At(wane, t, 0, s, units);

        // Rings may stand in some flitch of the block unless the part that lies flat in all of them is too wide.
        var half = values.GreenMm[t] / 2.0;
        var rise = Math.Max(0.0, Math.Max(a + half - ups.High, ups.Low - b - half));
        var flat = Math.Min(Math.Min(commonHigh[at], clip.HighMm), acrosses.Low + rise) - Math.Max(Math.Max(commonLow[at], clip.LowMm), acrosses.High - rise);
        return flat <= ((1.0 - QuarteredShare) * (right - left)) + 1e-9 ? values.Best(wane, t, s, units) : values.At(wane, t, 0, s, units);
    }

    // The heart takes at least what all stations and both ends of the block agree on: how far it lies off a flitch is greatest at one of them.
    private (double Low, double High) Heart(int t, double a, double b, double radius)
    {
        if (radius <= 0.0)
            return (0.0, 0.0);

        var (heartLow, heartHigh) = (double.NegativeInfinity, double.PositiveInfinity);
        for (var j = 0; j < stations.Count; j++)
        {
            lie.Log.Core(j, a, a + values.GreenMm[t], radius, out var low1, out var high1);
            lie.Log.Core(j, b, b + values.GreenMm[t], radius, out var low2, out var high2);
            (heartLow, heartHigh) = (Math.Max(heartLow, Math.Max(low1, low2)), Math.Min(heartHigh, Math.Min(high1, high2)));
        }

        return (heartLow, heartHigh);
    }

    private int Strips(int wane, int t, int steps) => ((((wane * values.GreenMm.Length) + t) * (values.Longest + 1)) + steps) * blocks;
}
