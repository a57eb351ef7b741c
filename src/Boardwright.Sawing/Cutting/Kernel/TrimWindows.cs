namespace Boardwright.Sawing;

/// <summary>A flitch trimmed from one station to another, the strip that is clear of wane between them, and what rot takes out of it (empty when low is above high).</summary>
internal readonly record struct TrimWindow(int From, int To, int Steps, double Low, double High, double RotLow, double RotHigh);

/// <summary>The trims of every flitch that are worth a look: none whose strip lies within the strip of one at least as long that holds no more rot.</summary>
/// <remarks>Sections are convex, so the four corners of a flitch decide at each station; between stations the log is their hull, so its stations decide.</remarks>
internal sealed class TrimWindows(CuttingSpace space, TurnedLog log)
{
    private readonly double[] low = new double[space.Stations.Count];
    private readonly double[] high = new double[space.Stations.Count];
    private readonly List<TrimWindow>[] bySteps = [.. Enumerable.Range(0, space.Stations.LongestFrom.Max() + 1).Select(_ => new List<TrimWindow>())];
    private readonly List<TrimWindow> kept = [];

    /// <summary>Windows of all flitches, thickness by thickness and height by height, longest first, and where each flitch's begin.</summary>
    public (int[] From, TrimWindow[] Windows) Of(int thicknesses, int count, Func<int, double> height)
    {
        var from = new int[(thicknesses * count) + 1];
        for (var t = 0; t < thicknesses; t++)
        {
            for (var i = 0; i < count; i++)
            {
                from[(t * count) + i] = kept.Count;
                var (bottom, top) = (height(i), height(i) + space.Values.GreenMm[t]);
                Clear(bottom, top);
                Keep(bottom, top);
            }
        }

        from[^1] = kept.Count;
        return (from, [.. kept]);
    }

    private void Clear(double bottom, double top)
    {
        for (var j = 0; j < low.Length; j++)
        {
            log.Chord(j, bottom, out var low1, out var high1);
            log.Chord(j, top, out var low2, out var high2);
            (low[j], high[j]) = (Math.Max(low1, low2), Math.Min(high1, high2));
        }
    }

    private void Keep(double bottom, double top)
    {
        var stations = space.Stations;
        for (var p = 0; p < low.Length; p++)
        {
            var (left, right) = (low[p], high[p]);
            for (var q = p; q < low.Length && stations.LongestFrom[p] > 0; q++)
            {
                (left, right) = stations.IsNested ? (left, right) : (Math.Max(left, low[q]), Math.Min(right, high[q]));
                if (right - left < space.Values.NarrowestMm - 1e-9)
                    break;
                if (stations.StepsBetween[(p * low.Length) + q] is > 0 and var steps && (!stations.IsNested || q == low.Length - 1))
                    bySteps[steps].Add(Rotten(new(p, q, steps, left, right, double.PositiveInfinity, double.NegativeInfinity), bottom, top));
            }
        }

        var first = kept.Count;
        for (var steps = bySteps.Length - 1; steps > 0; steps--)
        {
            foreach (var window in bySteps[steps])
            {
                if (!IsWithin(window, first))
                    kept.Add(window);
            }

            bySteps[steps].Clear();
        }
    }

    private TrimWindow Rotten(TrimWindow window, double bottom, double top)
    {
        if (space.RotRadiusMm == 0.0)
            return window;

        var (rotLow, rotHigh) = log.CoreBetween(window.From, window.To, bottom, top, space.RotRadiusMm);
        return window with { RotLow = rotLow, RotHigh = rotHigh };
    }

    private bool IsWithin(in TrimWindow window, int first)
    {
        for (var k = first; k < kept.Count; k++)
        {
            if (kept[k].Low <= window.Low && kept[k].High >= window.High && kept[k].RotLow >= window.RotLow && kept[k].RotHigh <= window.RotHigh)
                return true;
        }

        return false;
    }
}
