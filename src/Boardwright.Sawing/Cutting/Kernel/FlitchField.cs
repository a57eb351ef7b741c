using System.Runtime.Intrinsics;

namespace Boardwright.Sawing;

/// <summary>What all flitches of a lie bring at most, and exactly where it is asked for: four neighbouring heights at a time, by the recurrence of <see cref="FlitchTrim"/>.</summary>
/// <remarks>Ceilings come from few heights (<see cref="FlitchBound"/>); with grain, rot or boards cut across every flitch is worked out. Cost of that: heights / 4 x thicknesses x (stations + trim places squared) vector operations. Nothing is allocated after construction.</remarks>
internal sealed class FlitchField
{
    /// <summary>Heights worked out together.</summary>
    public const int Lanes = 4;

    private const double BlockMm = 4.0;

    private readonly CuttingSpace space;
    private readonly Stations stations;
    private readonly ValueTable values;
    private readonly LogLie lie;

    // Scratch of four heights: strip, core and best from a station on; what is clear from trim place to trim place; widest and inner strips by length.
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
        BlockHeights = Math.Max(1, (int)Math.Round(BlockMm / (Lanes * space.GridMm))) * Lanes;
        Blocks = (lie.Count + BlockHeights - 1) / BlockHeights;
        Stride = Blocks * BlockHeights;
        Whole = new double[values.GreenMm.Length * Stride];
        Hull = new StripHull(values, Blocks);
        var count = stations.Count;
        (underLow, underHigh) = (new Vector256<double>[count], new Vector256<double>[count]);
        (low, high, coreLow, coreHigh) = (new Vector256<double>[count], new Vector256<double>[count], new Vector256<double>[count], new Vector256<double>[count]);
        (from, widest) = (new Vector256<double>[count + 1], new Vector256<double>[4 * (values.Longest + 1)]);
        segments = [.. stations.Families.Select(family => new Vector256<double>[4 * family.Length])];
        IsExact = space.IsPruned && (values.HasGrain || space.RotRadiusMm > 0.0 || stations.CutsAcross);
        if (!space.IsPruned)
            Array.Fill(Whole, values.Limit);
        else if (IsExact)
            WorkOut();
        else
            Bound();
        Clips = new ClipCeilings(space, lie, this);
        Most = values.HasGrain && space.IsPruned ? Clips.OfAnyStrip() : Whole;
    }

    /// <summary>Heights to a block of ceilings, a multiple of <see cref="Lanes"/>.</summary>
    public int BlockHeights { get; }

    public int Blocks { get; }

    /// <summary>Heights to a thickness in <see cref="Whole"/>.</summary>
    public int Stride { get; }

    /// <summary>Ceiling of every unclipped flitch, at thickness x stride + height; its value where <see cref="IsExact"/>.</summary>
    public double[] Whole { get; }

    /// <summary>Every flitch was worked out.</summary>
    public bool IsExact { get; }

    /// <summary>Most that every flitch brings, clipped or not: with grain a narrower board may bring more.</summary>
    public double[] Most { get; }

    /// <summary>The widest strips.</summary>
    public StripHull Hull { get; }

    /// <summary>Ceilings of clipped flitches.</summary>
    public ClipCeilings Clips { get; }

    /// <summary>Values of a block of clipped flitches, exact.</summary>
    public void Evaluate(int t, int block, FlitchClip clip, Span<double> into) => Evaluate(t, block, clip, into, keep: false);

    /// <summary>Works out all flitches of a block of ceilings.</summary>
    public void WorkOut(int t, int block)
    {
        for (var four = block * BlockHeights / Lanes; four < (block + 1) * BlockHeights / Lanes; four++)
            Evaluate(t, four, FlitchClip.None, Whole.AsSpan((t * Stride) + (four * Lanes), Lanes), keep: true);
    }

    private void WorkOut()
    {
        for (var block = 0; block < Blocks; block++)
        {
            for (var t = 0; t < values.GreenMm.Length; t++)
                WorkOut(t, block);
        }
    }

    private void Bound()
    {
        new FlitchBound(space, lie, this).Fill();
        for (var t = 0; t < values.GreenMm.Length; t++)
        {
            for (var i = 0; i < lie.Count && values.Slabs[t].Length > 0; i++)
                Whole[(t * Stride) + i] = Math.Max(Whole[(t * Stride) + i], lie.Trim.Slab(t, lie.Height(i), out _, out _));
        }
    }

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

    private void Keep(int wane, int t, int four)
    {
        var block = four * Lanes / BlockHeights;
        for (var s = stations.StepsMin; s <= values.Longest; s++)
        {
            var at = Hull.At(wane, t, s) + block;
            Hull.Widen(at, Least(widest[4 * s]), -Least(-widest[(4 * s) + 1]));
            if (values.HasGrain)
                Hull.Narrow(at, -Least(-widest[(4 * s) + 2]), Least(widest[(4 * s) + 3]));
        }
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
}
