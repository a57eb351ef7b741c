using System.Runtime.Intrinsics;

namespace Boardwright.Sawing;

/// <summary>Ceilings of all flitches of a lie from the chords of few heights.</summary>
/// <remarks>
/// <para>A section is convex, so left and right ends of its chord are a convex and a concave function of the height, and so are greatest left end and least right end of several chords: the clear width of a
/// trim window is a concave function w of the flitch's height while all its sections have wood. Between two heights a block apart w therefore lies under the line through both heights before them and under
/// the line through both after them, and over the less of both. Where that leaves one width step nothing else is asked; where a window has no two heights on either side, its flitches are worked out.</para>
/// <para>Holds for boards trimmed to one length, without grain and rot. Cost: chords, and a handful of operations a window, for one height in a block; then a look-up for four heights at a time, of the lengths that may be best.</para>
/// </remarks>
internal sealed class FlitchBound
{
    private const int Lanes = FlitchField.Lanes;

    // Stands for where there is no wood; far beyond any log, so that a line through it bounds nothing.
    private const double FarMm = 1e6;
    private const double HalfFarMm = FarMm / 2.0;

    private readonly CuttingSpace space;
    private readonly Stations stations;
    private readonly ValueTable values;
    private readonly LogLie lie;
    private readonly FlitchField field;
    private readonly int blocks;
    private readonly int samples;
    private readonly double[] underLow;
    private readonly double[] underHigh;
    private readonly double[] low;
    private readonly double[] high;
    private readonly double[] runLow;
    private readonly double[] runHigh;

    // Width of every window at every sampled height, by window; windows and greatest, surely reached and most width of each length.
    private readonly List<double[]> widths = [];
    private readonly List<int>[] ofLength;
    private readonly double[][] floor;
    private readonly double[][] most;
    private readonly bool[] unknown;
    private readonly Vector256<double>[] fine;

    public FlitchBound(CuttingSpace space, LogLie lie, FlitchField field)
    {
        (this.space, this.lie, this.field, stations, values) = (space, lie, field, space.Stations, space.Values);
        blocks = (field.Blocks + Lanes - 1) / Lanes * Lanes;

        // One height before the first block and two after the last.
        samples = blocks + Lanes;
        var size = stations.Count * samples;
        (underLow, underHigh, low, high) = (new double[size], new double[size], new double[size], new double[size]);
        (runLow, runHigh) = (new double[samples], new double[samples]);
        ofLength = [.. Enumerable.Range(0, values.Longest + 1).Select(_ => new List<int>())];
        floor = [.. Enumerable.Range(0, values.Longest + 1).Select(_ => new double[blocks])];
        most = [.. Enumerable.Range(0, values.Longest + 1).Select(_ => new double[blocks])];
        unknown = new bool[blocks];
        fine = new Vector256<double>[field.BlockHeights / Lanes];
    }

    private double BlockMm => this.field.BlockHeights * space.GridMm;

    /// <summary>Raises the ceilings of the flitches to what they bring at most, and widens the hull of their strips.</summary>
    public void Fill()
    {
        for (var j = 0; j < stations.Count; j++)
            Chords(j, 0.0, underLow, underHigh);
        for (var t = 0; t < values.GreenMm.Length; t++)
        {
            Array.Clear(unknown);
            for (var wane = 0; wane < values.WaneShares.Length; wane++)
            {
                var (green, missing) = (values.GreenMm[t], values.WaneShares[wane] * values.GreenMm[t]);
                Begin();
                for (var face = 0; face < (wane == 0 ? 1 : 2); face++)
                {
                    var (from, to) = face == 0 ? (0.0, green - missing) : (missing, green);
                    Strips(from, to);
                    Windows(wane, t, from, to);
                }

                Bring(wane, t);
            }

            for (var block = 0; block < field.Blocks; block++)
            {
                if (unknown[block])
                    field.WorkOut(t, block);
            }
        }
    }

    private void Chords(int station, double above, double[] lows, double[] highs)
    {
        for (var x = 0; x < samples; x += Lanes)
        {
            var first = lie.Log.Lowest + ((x - 1) * BlockMm) + above;
            lie.Log.Chord(station, Vector256.Create(first, first + BlockMm, first + (2.0 * BlockMm), first + (3.0 * BlockMm)), out var left, out var right);
            Vector256.Min(left, Vector256.Create(FarMm)).CopyTo(lows, (station * samples) + x);
            Vector256.Max(right, Vector256.Create(-FarMm)).CopyTo(highs, (station * samples) + x);
        }
    }

    private void Begin()
    {
        widths.Clear();
        for (var s = 0; s < ofLength.Length; s++)
        {
            ofLength[s].Clear();
            Array.Fill(floor[s], -FarMm);
            Array.Fill(most[s], -FarMm);
        }
    }

    // What both faces leave at every station.
    private void Strips(double from, double to)
    {
        for (var j = 0; j < stations.Count; j++)
        {
            var at = j * samples;
            Chords(j, to, low, high);
            if (from > 0.0)
                Chords(j, from, underLow, underHigh);
            for (var x = at; x < at + samples; x += Lanes)
            {
                Vector256.Max(Vector256.Create(underLow, x), Vector256.Create(low, x)).CopyTo(low, x);
                Vector256.Min(Vector256.Create(underHigh, x), Vector256.Create(high, x)).CopyTo(high, x);
            }
        }

        for (var j = 0; j < stations.Count && from > 0.0; j++)
            Chords(j, 0.0, underLow, underHigh);
    }

    private void Windows(int wane, int t, double from, double to)
    {
        for (var f = 0; f < stations.Families.Length; f++)
        {
            var family = stations.Families[f];
            for (var place = 0; place < family.Length - stations.StepsMin; place++)
            {
                var p = family[place];
                Array.Copy(low, p * samples, runLow, 0, samples);
                Array.Copy(high, p * samples, runHigh, 0, samples);
                var (lowest, highest) = (lie.Log.LowestOf(p), lie.Log.HighestOf(p));
                for (var k = place + 1; k < family.Length; k++)
                {
                    for (var j = family[k - 1] + 1; j <= family[k] && !stations.IsNested; j++)
                    {
                        Meet(j * samples);
                        (lowest, highest) = (Math.Max(lowest, lie.Log.LowestOf(j)), Math.Min(highest, lie.Log.HighestOf(j)));
                    }

                    if (k - place >= stations.StepsMin && !Window(wane, t, k - place, lowest - from, highest - to))
                        break;
                }
            }
        }
    }

    private void Meet(int at)
    {
        for (var x = 0; x < samples; x += Lanes)
        {
            Vector256.Max(Vector256.Create(runLow, x), Vector256.Create(low, at + x)).CopyTo(runLow, x);
            Vector256.Min(Vector256.Create(runHigh, x), Vector256.Create(high, at + x)).CopyTo(runHigh, x);
        }
    }

    /// <summary>Takes a window in; false where nothing of it is wide enough for a board, and so of no longer one.</summary>
    private bool Window(int wane, int t, int steps, double fromMm, double toMm)
    {
        var number = widths.Count;
        var width = Scratch(number);
        for (var x = 0; x < samples; x += Lanes)
            (Vector256.Create(runHigh, x) - Vector256.Create(runLow, x)).CopyTo(width, x);

        // Blocks that hold a height at which all sections have wood.
        var (first, last) = (Math.Floor(((fromMm - lie.Log.Lowest) / BlockMm) - 1e-6), Math.Floor(((toMm - lie.Log.Lowest) / BlockMm) + 1e-6));
        var (narrowest, any) = (Vector256.Create(values.NarrowestMm - 1e-9), false);
        var at = field.Hull.At(wane, t, steps);
        for (var b = 0; b < blocks; b += Lanes)
        {
            var index = Vector256.Create((double)b, b + 1, b + 2, b + 3);
            var inWood = Vector256.GreaterThanOrEqual(index, Vector256.Create(first)) & Vector256.LessThanOrEqual(index, Vector256.Create(last)) & Vector256.GreaterThanOrEqual(Vector256.Create(toMm), Vector256.Create(fromMm - 1e-6));
            var upper = Vector256.ConditionalSelect(inWood, Upper(width, b), Vector256.Create(-FarMm));
            var wide = Vector256.GreaterThanOrEqual(upper, narrowest);
            if (wide == Vector256<double>.Zero)
                continue;

            any = true;
            var sure = Vector256.Min(Vector256.Create(width, b + 1), Vector256.Create(width, b + 2));
            Vector256.Max(Vector256.Create(floor[steps], b), sure).CopyTo(floor[steps], b);
            Vector256.Max(Vector256.Create(most[steps], b), upper).CopyTo(most[steps], b);
            Widen(at + b, wide, b);
            for (var lane = 0; lane < Lanes && b + lane < blocks; lane++)
                unknown[b + lane] |= upper[lane] > HalfFarMm;
        }

        if (any)
        {
            ofLength[steps].Add(number);
            widths.Add(width);
        }

        return any;
    }

    private readonly List<double[]> spare = [];

    private double[] Scratch(int number)
    {
        while (spare.Count <= number)
            spare.Add(new double[samples]);
        return spare[number];
    }

    /// <summary>The most a concave function known at the heights reaches between two of them; far where nothing bounds it. The first height is one before the first block.</summary>
    private static Vector256<double> Upper(double[] width, int block)
    {
        var (before, left, right, after) = (Vector256.Create(width, block), Vector256.Create(width, block + 1), Vector256.Create(width, block + 2), Vector256.Create(width, block + 3));
        var (none, far) = (Vector256.Create(-HalfFarMm), Vector256.Create(FarMm));
        var byLeft = Vector256.ConditionalSelect(Vector256.GreaterThan(left, none), Vector256.Max(left, left + left - before), far);
        var byRight = Vector256.ConditionalSelect(Vector256.GreaterThan(right, none), Vector256.Max(right, right + right - after), far);
        return Vector256.Min(byLeft, byRight);
    }

    private void Widen(int at, Vector256<double> wide, int b)
    {
        var hull = field.Hull;
        var hair = Vector256.Create(StripHull.Hair);
        var left = Vector256.ConditionalSelect(wide, -Reach(runLow, b, -1.0) - hair, Vector256.Create(double.PositiveInfinity));
        var right = Vector256.ConditionalSelect(wide, Reach(runHigh, b, 1.0) + hair, Vector256.Create(double.NegativeInfinity));
        Vector256.Min(Vector256.Create(hull.Low, at), left).CopyTo(hull.Low, at);
        Vector256.Max(Vector256.Create(hull.High, at), right).CopyTo(hull.High, at);
    }

    // The same bound for one side; a left end is looked at with its sign changed.
    private static Vector256<double> Reach(double[] side, int block, double sign)
    {
        var (before, left, right, after) = (sign * Vector256.Create(side, block), sign * Vector256.Create(side, block + 1), sign * Vector256.Create(side, block + 2), sign * Vector256.Create(side, block + 3));
        var (none, far) = (Vector256.Create(-HalfFarMm), Vector256.Create(FarMm));
        var byLeft = Vector256.ConditionalSelect(Vector256.GreaterThan(left, none), Vector256.Max(left, left + left - before), far);
        var byRight = Vector256.ConditionalSelect(Vector256.GreaterThan(right, none), Vector256.Max(right, right + right - after), far);
        return Vector256.Min(byLeft, byRight);
    }

    private void Bring(int wane, int t)
    {
        for (var block = 0; block < field.Blocks; block++)
        {
            if (unknown[block])
                continue;

            var sure = 0.0;
            for (var s = stations.StepsMin; s <= values.Longest; s++)
                sure = Math.Max(sure, values.At(wane, t, 0, s, values.Units(Math.Max(0.0, floor[s][block] - StripHull.Hair))));
            var at = (t * field.Stride) + (block * field.BlockHeights);
            Raise(at, Vector256.Create(sure));
            for (var s = stations.StepsMin; s <= values.Longest; s++)
            {
                if (values.At(wane, t, 0, s, values.Units(Math.Max(0.0, most[s][block] + StripHull.Hair))) > sure)
                    Bring(wane, t, s, block, at);
            }
        }
    }

    private void Raise(int at, Vector256<double> to)
    {
        for (var g = 0; g < field.BlockHeights; g += Lanes)
            Vector256.Max(Vector256.Create(field.Whole, at + g), to).CopyTo(field.Whole, at + g);
    }

    // Height by height, by the windows of a length that may be the widest somewhere in the block.
    private void Bring(int wane, int t, int s, int block, int at)
    {
        Array.Fill(fine, Vector256.Create(floor[s][block]));
        foreach (var number in ofLength[s])
        {
            var width = widths[number];
            var (before, left, right, after) = (width[block], width[block + 1], width[block + 2], width[block + 3]);
            var (hasLeft, hasRight) = (left > -HalfFarMm, right > -HalfFarMm);
            if ((!hasLeft && !hasRight) || Math.Min(hasLeft ? Math.Max(left, left + left - before) : FarMm, hasRight ? Math.Max(right, right + right - after) : FarMm) <= floor[s][block])
                continue;

            var (byLeft, slope) = hasLeft ? (left, left - before) : (FarMm, 0.0);
            var (byRight, back) = hasRight ? (right, right - after) : (FarMm, 0.0);
            for (var g = 0; g < fine.Length; g++)
            {
                var share = (Vector256.Create((double)(g * Lanes)) + Vector256.Create(0.0, 1.0, 2.0, 3.0)) * Vector256.Create(1.0 / field.BlockHeights);
                var one = Vector256.Min(Vector256.Create(byLeft) + (Vector256.Create(slope) * share), Vector256.Create(byRight) + (Vector256.Create(back) * (Vector256<double>.One - share)));
                fine[g] = Vector256.Max(fine[g], one);
            }
        }

        for (var g = 0; g < fine.Length; g++)
            Vector256.Max(Vector256.Create(field.Whole, at + (g * Lanes)), values.At(wane, t, s, fine[g] + Vector256.Create(StripHull.Hair))).CopyTo(field.Whole, at + (g * Lanes));
    }
}
