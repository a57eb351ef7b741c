using System.Runtime.Intrinsics;

namespace Boardwright.Sawing;

/// <summary>Ceilings of clipped flitches, block by block: at most the best way to cut the widest strips of a block, clipped, into lengths, regardless of place.</summary>
/// <remarks>Four clips at a time are run through the recurrence of <see cref="LayerBound"/> together. Nothing is allocated after construction.</remarks>
internal sealed class ClipCeilings
{
    private const int Lanes = FlitchField.Lanes;
    private const double QuarteredShare = 0.8;

    private readonly CuttingSpace space;
    private readonly Stations stations;
    private readonly ValueTable values;
    private readonly LogLie lie;
    private readonly FlitchField field;
    private readonly double[] byLength;
    private readonly Vector256<double>[] fourByLength;
    private readonly Vector256<double>[] fourWidths;
    private readonly Vector256<double>[] fourCeilings;
    private readonly Vector256<double>[] fourFresh;
    private readonly Vector256<double>[] fourSkip;
    private readonly (double Low, double High) ups;
    private readonly (double Low, double High) acrosses;

    public ClipCeilings(CuttingSpace space, LogLie lie, FlitchField field)
    {
        (this.space, this.lie, this.field, stations, values) = (space, lie, field, space.Stations, space.Values);
        (byLength, fourByLength, fourWidths) = (new double[values.Longest + 1], new Vector256<double>[values.Longest + 1], new Vector256<double>[values.Longest + 1]);
        fourCeilings = new Vector256<double>[values.GreenMm.Length * field.Blocks];
        var places = field.Stride + space.PitchSteps.Max() + space.KerfSteps + 1;
        (fourFresh, fourSkip) = (new Vector256<double>[places], new Vector256<double>[places]);
        (ups, acrosses) = ((lie.Log.Up.Min(), lie.Log.Up.Max()), (lie.Log.Across.Min(), lie.Log.Across.Max()));
    }

    /// <summary>Most that clipped flitches bring, into an array like <see cref="FlitchField.Whole"/>.</summary>
    public void Fill(FlitchClip clip, double[] into)
    {
        for (var t = 0; t < values.GreenMm.Length; t++)
        {
            for (var block = 0; block < field.Blocks; block++)
            {
                var most = Vector256.Create(One(t, block, clip));
                var at = (t * field.Stride) + (block * field.BlockHeights);
                for (var g = at; g < at + field.BlockHeights; g += Lanes)
                    Vector256.Min(Vector256.Create(field.Most, g), most).CopyTo(into, g);
            }
        }
    }

    /// <summary>Most that any strip of each block brings, however it is edged.</summary>
    public double[] OfAnyStrip()
    {
        var into = new double[field.Whole.Length];
        for (var t = 0; t < values.GreenMm.Length; t++)
        {
            for (var block = 0; block < field.Blocks; block++)
            {
                var best = 0.0;
                for (var wane = 0; wane < values.WaneShares.Length; wane++)
                {
                    for (var s = stations.StepsMin; s <= values.Longest; s++)
                        best = Math.Max(best, values.Ceiling(t, Math.Max(0.0, field.Hull.High[field.Hull.At(wane, t, s) + block] - field.Hull.Low[field.Hull.At(wane, t, s) + block])));
                }

                into.AsSpan((t * field.Stride) + (block * field.BlockHeights), field.BlockHeights).Fill(best);
            }
        }

        return into;
    }

    /// <summary>Most that all flitches bring together, cut level from the bottom up, under each of four clips.</summary>
    public Vector256<double> Together(ReadOnlySpan<FlitchClip> clips)
    {
        FillFour(clips);
        var (pitch, kerf, most, stride) = (space.PitchSteps, space.KerfSteps, field.Most, field.Stride);
        for (var block = field.Blocks - 1; block >= 0; block--)
        {
            for (var i = ((block + 1) * field.BlockHeights) - 1; i >= block * field.BlockHeights; i--)
            {
                var best = Vector256<double>.Zero;
                for (var t = 0; t < pitch.Length; t++)
                    best = Vector256.Max(best, Vector256.Min(Vector256.Create(most[(t * stride) + i]), fourCeilings[(t * field.Blocks) + block]) + fourFresh[i + pitch[t]]);
                fourSkip[i] = Vector256.Max(best, fourSkip[i + 1]);
                fourFresh[i] = Vector256.Max(best, fourSkip[i + kerf]);
            }
        }

        return fourSkip[0];
    }

    private double One(int t, int block, FlitchClip clip) => !space.IsPruned ? values.Limit
        : values.HasGrain || clip.HeartRadiusMm > 0.0 ? Closely(t, block, clip)
        : Alone(t, block, clip);

    private double Alone(int t, int block, FlitchClip clip)
    {
        var isSame = false;
        return Plainly(t, block, Vector256.Create(clip.LowMm), Vector256.Create(clip.HighMm), default, ref isSame)[0];
    }

    private void FillFour(ReadOnlySpan<FlitchClip> clips)
    {
        var (a, b, c, d) = (clips[0], clips[Math.Min(1, clips.Length - 1)], clips[Math.Min(2, clips.Length - 1)], clips[Math.Min(3, clips.Length - 1)]);
        var (low, high) = (Vector256.Create(a.LowMm, b.LowMm, c.LowMm, d.LowMm), Vector256.Create(a.HighMm, b.HighMm, c.HighMm, d.HighMm));
        var plain = space.IsPruned && !values.HasGrain && a.HeartRadiusMm == 0.0;
        for (var t = 0; t < values.GreenMm.Length; t++)
        {
            var (isSame, last) = (false, Vector256<double>.Zero);
            for (var block = 0; block < field.Blocks; block++)
            {
                last = plain ? Plainly(t, block, low, high, last, ref isSame) : Vector256.Create(One(t, block, a), One(t, block, b), One(t, block, c), One(t, block, d));
                fourCeilings[(t * field.Blocks) + block] = last;
            }
        }
    }

    // The middle of a log is wider than a clip: what it leaves there is the same from block to block.
    private Vector256<double> Plainly(int t, int block, Vector256<double> low, Vector256<double> high, Vector256<double> last, ref bool isSame)
    {
        var (hull, same) = (field.Hull, isSame);
        for (var s = stations.StepsMin; s <= values.Longest && values.WaneShares.Length == 1; s++)
        {
            var at = hull.At(0, t, s) + block;
            var width = Vector256.Min(high, Vector256.Create(hull.High[at])) - Vector256.Max(low, Vector256.Create(hull.Low[at]));
            same &= width == fourWidths[s];
            fourWidths[s] = width;
        }

        isSame = true;
        if (same && values.WaneShares.Length == 1)
            return last;

        var best = Vector256<double>.Zero;
        for (var wane = 0; wane < values.WaneShares.Length; wane++)
        {
            var most = Vector256<double>.Zero;
            for (var s = stations.StepsMin; s <= values.Longest; s++)
            {
                var at = hull.At(wane, t, s) + block;
                most = Vector256.Max(most, values.At(wane, t, s, Vector256.Min(high, Vector256.Create(hull.High[at])) - Vector256.Max(low, Vector256.Create(hull.Low[at]))));
                for (var part = stations.StepsMin; part <= s / 2 && stations.CutsAcross; part++)
                    most = Vector256.Max(most, fourByLength[part] + fourByLength[s - part]);
                fourByLength[s] = most;
            }

            best = Vector256.Max(best, most);
        }

        return best;
    }

    private double Closely(int t, int block, FlitchClip clip)
    {
        var (a, b, best) = (lie.Height(block * field.BlockHeights), lie.Height((block * field.BlockHeights) + field.BlockHeights - 1), 0.0);
        var (heartLow, heartHigh) = Heart(t, a, b, clip.HeartRadiusMm);
        for (var wane = 0; wane < values.WaneShares.Length; wane++)
        {
            Array.Clear(byLength);
            for (var s = stations.StepsMin; s <= values.Longest; s++)
            {
                byLength[s] = byLength[s - 1];
                var at = field.Hull.At(wane, t, s) + block;
                var (left, right) = (Math.Max(clip.LowMm, field.Hull.Low[at]), Math.Min(clip.HighMm, field.Hull.High[at]));
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
        var flat = Math.Min(Math.Min(field.Hull.CommonHigh[at], clip.HighMm), acrosses.Low + rise) - Math.Max(Math.Max(field.Hull.CommonLow[at], clip.LowMm), acrosses.High - rise);
        return flat <= ((1.0 - QuarteredShare) * (right - left)) + 1e-9 ? values.Best(wane, t, s, units) : values.At(wane, t, 0, s, units);
    }

    // The heart takes at least what all stations and both ends of the block agree on: how far it lies off a flitch is greatest at one of them.
    private (double Low, double High) Heart(int t, double a, double b, double radius)
    {
        if (radius <= 0.0 || b + values.GreenMm[t] <= ups.High - radius || a >= ups.Low + radius)
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
}
