namespace Boardwright.Sawing;

/// <summary>Best edging and trimming of one flitch, in two dimensions: where it is cut across into boards, and how each part is edged.</summary>
/// <remarks>
/// <para>E(p) = best from station p on = max( E(p + 1), max over trim places q beyond p of strip(p, q) + E(first station a trim kerf beyond q) ), where strip(p, q) is the value of the
/// common part of all sections from p to q between the flitch's faces, ripped beside rot or heart into two. Sections are convex, so the four corners of a flitch decide at each
/// station; between stations the log is their hull, so its stations decide.</para>
/// <para><see cref="FlitchField"/> works out values by the same recurrence for many flitches at once; this finds how a chosen one is cut.</para>
/// </remarks>
internal sealed class FlitchTrim
{
    private const double QuarteredShare = 0.8;

    private readonly CuttingSpace space;
    private readonly Stations stations;
    private readonly ValueTable values;
    private readonly TurnedLog log;
    private readonly double[] low;
    private readonly double[] high;
    private readonly double[] coreLow;
    private readonly double[] coreHigh;
    private readonly double[] from;
    private readonly int[] to;
    private readonly double[][] segments;

    public FlitchTrim(CuttingSpace space, TurnedLog log)
    {
        (this.space, this.log, stations, values) = (space, log, space.Stations, space.Values);
        var count = stations.Count;
        (low, high, coreLow, coreHigh) = (new double[count], new double[count], new double[count], new double[count]);
        (from, to) = (new double[count + 1], new int[count]);
        segments = [.. stations.Families.Select(family => new double[4 * family.Length])];
    }

    /// <summary>The strips of the best value; empty where a slab is worth more.</summary>
    public IReadOnlyList<TrimmedStrip> Strips(int thickness, double bottom, FlitchClip clip)
    {
        var (best, chosen) = (clip.IsWhole ? Slab(thickness, bottom, out _, out _) : 0.0, (Wane: -1, Face: 0));
        for (var wane = 0; wane < values.WaneShares.Length; wane++)
        {
            for (var face = 0; face < Faces(wane); face++)
            {
                if (Boards(thickness, bottom, clip, wane, face) is var value && value > best)
                    (best, chosen) = (value, (wane, face));
            }
        }

        return chosen.Wane < 0 ? [] : Taken(thickness, bottom, clip, chosen.Wane, chosen.Face);
    }

    /// <summary>Best value of the flitch as a slab, its row and mean width.</summary>
    public double Slab(int thickness, double bottom, out BoardPrice? row, out double meanMm) => Slab(values.Slabs[thickness], thickness, bottom, out row, out meanMm);

    /// <summary>Best value of the flitch as a slab by some rows.</summary>
    public double Slab(BoardPrice[] rows, int thickness, double bottom, out BoardPrice? row, out double meanMm)
    {
        (row, meanMm) = (null, 0.0);
        if (rows.Length == 0)
            return 0.0;

        (meanMm, var least) = SlabMeasure.Of(log, stations.SlabAt, bottom, bottom + values.GreenMm[thickness], space.RotRadiusMm);
        var (best, lengthMm) = (0.0, stations.AtMm[^1]);
        foreach (var price in rows)
        {
            if (least >= price.WidthMin.Millimetres - 1e-6 && meanMm <= (price.WidthMax?.Millimetres ?? double.PositiveInfinity) && lengthMm >= price.LengthMin.Millimetres - 1e-6
                && lengthMm <= (price.LengthMax?.Millimetres ?? double.PositiveInfinity) + 1e-6 && values.Whole(price.MoneyPerBoardFoot * values.Footage(thickness, meanMm, lengthMm)) is var value && value > best)
                (best, row) = (value, price);
        }

        return best;
    }

    private static int Faces(int wane) => wane == 0 ? 1 : 2;

    private double Boards(int thickness, double bottom, FlitchClip clip, int wane, int face)
    {
        var (under, over) = (bottom, bottom + values.GreenMm[thickness]);
        var (core, radius) = (false, Math.Max(clip.HeartRadiusMm, space.RotRadiusMm));
        var missing = values.WaneShares[wane] * values.GreenMm[thickness];
        for (var j = 0; j < low.Length; j++)
        {
            log.Chord(j, face == 0 ? under : under + missing, out var low1, out var high1);
            log.Chord(j, face == 0 ? over - missing : over, out var low2, out var high2);
            (low[j], high[j]) = (Math.Max(clip.LowMm, Math.Max(low1, low2)), Math.Min(clip.HighMm, Math.Min(high1, high2)));
            if (radius > 0.0)
            {
                log.Core(j, under, over, radius, out coreLow[j], out coreHigh[j]);
                core |= coreLow[j] < coreHigh[j];
            }
        }

        return Best(thickness, wane, bottom + (values.GreenMm[thickness] / 2.0), core);
    }

    private double Best(int thickness, int wane, double middle, bool core)
    {
        for (var f = 0; f < segments.Length && !stations.IsNested; f++)
            Merge(stations.Families[f], segments[f], core);

        from[^1] = 0.0;
        for (var p = low.Length - 1; p >= 0; p--)
        {
            (from[p], to[p]) = (from[p + 1], -1);
            if (high[p] - low[p] < values.NarrowestMm - 1e-9)
                continue;
            for (var f = 0; f < segments.Length; f++)
            {
                if (stations.PlaceIn[f][p] >= 0)
                    From(thickness, wane, middle, core, p, f);
            }
        }

        return from[0];
    }

    private void From(int thickness, int wane, double middle, bool core, int p, int f)
    {
        var (family, segment, place) = (stations.Families[f], segments[f], stations.PlaceIn[f][p]);
        var (left, right) = (low[p], high[p]);
        var (rotLeft, rotRight) = core ? (coreLow[p], coreHigh[p]) : (double.PositiveInfinity, double.NegativeInfinity);
        for (var k = place + 1; k < family.Length; k++)
        {
            if (!stations.IsNested)
            {
                (left, right) = (Math.Max(left, segment[(4 * k) - 4]), Math.Min(right, segment[(4 * k) - 3]));
                if (right - left < values.NarrowestMm - 1e-9)
                    return;
            }

            if (core)
                (rotLeft, rotRight) = stations.IsNested ? (rotLeft, rotRight) : (Math.Min(rotLeft, segment[(4 * k) - 2]), Math.Max(rotRight, segment[(4 * k) - 1]));
            if (k - place < stations.StepsMin)
                continue;

            var value = Strip(thickness, wane, middle, p, family[k], k - place, left, right, rotLeft, rotRight) + from[stations.After[family[k]]];
            if (value > from[p])
                (from[p], to[p]) = (value, family[k]);
        }
    }

    // What is clear, and what the core takes, from each trim place to the next.
    private void Merge(int[] family, double[] segment, bool core)
    {
        for (var k = 0; k < family.Length - 1; k++)
        {
            var (left, right, rotLeft, rotRight) = (double.NegativeInfinity, double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity);
            for (var j = family[k]; j <= family[k + 1]; j++)
            {
                (left, right) = (Math.Max(left, low[j]), Math.Min(right, high[j]));
                if (core)
                    (rotLeft, rotRight) = (Math.Min(rotLeft, coreLow[j]), Math.Max(rotRight, coreHigh[j]));
            }

            (segment[4 * k], segment[(4 * k) + 1], segment[(4 * k) + 2], segment[(4 * k) + 3]) = (left, right, rotLeft, rotRight);
        }
    }

    /// <summary>Value of a strip between two trim places, beside the core where it meets it.</summary>
    public double Strip(int thickness, int wane, double middle, int p, int q, int steps, double left, double right, double rotLeft, double rotRight)
    {
        if (rotLeft > rotRight)
            return Clear(thickness, wane, middle, p, q, steps, left, right);

        var (leftTo, rightFrom) = Beside(left, right, rotLeft, rotRight);
        return Clear(thickness, wane, middle, p, q, steps, left, leftTo) + Clear(thickness, wane, middle, p, q, steps, rightFrom, right);
    }

    // A rip needs its kerf even where the rot only just touches the flitch.
    private (double LeftTo, double RightFrom) Beside(double left, double right, double rotLeft, double rotRight)
    {
        var spare = Math.Max(0.0, space.KerfMm - (rotRight - rotLeft)) / 2.0;
        return (Math.Min(right, rotLeft - spare), Math.Max(left, rotRight + spare));
    }

    private double Clear(int thickness, int wane, double middle, int p, int q, int steps, double left, double right) =>
        right <= left ? 0.0 : values.At(wane, thickness, Grain(middle, p, q, left, right), steps, values.Units(right - left));

    /// <summary>Rings round the centre meet a level face at 45 degrees or more where a point lies farther beside the centre than above or below it.</summary>
    private int Grain(double middle, int p, int q, double left, double right)
    {
        if (!values.HasGrain)
            return (int)BoardGrain.Flat;

        var rise = Math.Abs(middle - ((log.Up[p] + log.Up[q]) / 2.0));
        var centre = (log.Across[p] + log.Across[q]) / 2.0;
        var flat = Math.Max(0.0, Math.Min(right, centre + rise) - Math.Max(left, centre - rise));
        return (int)(flat <= (1.0 - QuarteredShare) * (right - left) ? BoardGrain.Quartered : BoardGrain.Flat);
    }

    private List<TrimmedStrip> Taken(int thickness, double bottom, FlitchClip clip, int wane, int face)
    {
        Boards(thickness, bottom, clip, wane, face);
        var taken = new List<TrimmedStrip>();
        var radius = Math.Max(clip.HeartRadiusMm, space.RotRadiusMm);
        var middle = bottom + (values.GreenMm[thickness] / 2.0);
        for (var p = 0; p < low.Length; p = to[p] < 0 ? p + 1 : stations.After[to[p]])
        {
            if (to[p] < 0)
                continue;

            var q = to[p];
            var steps = (int)Math.Round((stations.AtMm[q] - stations.AtMm[p]) / values.LengthStepMm);
            var (left, right, rotLeft, rotRight) = (double.NegativeInfinity, double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity);
            for (var j = p; j <= q; j++)
            {
                (left, right) = (Math.Max(left, low[j]), Math.Min(right, high[j]));
                if (radius > 0.0)
                    (rotLeft, rotRight) = (Math.Min(rotLeft, coreLow[j]), Math.Max(rotRight, coreHigh[j]));
            }

            if (rotLeft > rotRight)
            {
                taken.Add(new(p, steps, wane, left, right, Grain(middle, p, q, left, right)));
                continue;
            }

            var (leftTo, rightFrom) = Beside(left, right, rotLeft, rotRight);
            if (leftTo > left)
                taken.Add(new(p, steps, wane, left, leftTo, Grain(middle, p, q, left, leftTo)));
            if (right > rightFrom)
                taken.Add(new(p, steps, wane, rightFrom, right, Grain(middle, p, q, rightFrom, right)));
        }

        return taken;
    }
}
