namespace Boardwright.Sawing;

/// <summary>Four cuttings that no straight line parts: they stand round a hole like the vanes of a mill, turning one way or the other.</summary>
/// <remarks>
/// Two lines each way place the four arms: the first starts at a corner of the window, each next at the line where the one before ends. An arm's best cutting never
/// falls as the arm grows, so a box of line positions is bounded by the four arms at their longest; the widest side of a box is halved.
/// </remarks>
internal sealed class VaneSearch(FaceBox window, long[] across, long[] along, Func<FaceBox, CuttingSet> largest, SearchEffort effort)
{
    private readonly record struct Range(int Low, int High)
    {
        public int Count => High - Low + 1;
    }

    /// <summary>A better set than the one given; the one given where there is none.</summary>
    public CuttingSet Better(CuttingSet best)
    {
        if (across.Length < 2 || along.Length < 2)
            return best;

        foreach (var mirrored in (ReadOnlySpan<bool>)[false, true])
        {
            Range x = new(0, across.Length - 1), y = new(0, along.Length - 1);
            Try(mirrored, x, x, y, y, ref best);
        }

        return best;
    }

    private void Try(bool mirrored, Range x1, Range x2, Range y1, Range y2, ref CuttingSet best)
    {
        // The first line lies left of the second, and below it.
        if (effort.IsSpent || x1.Low >= x2.High || y1.Low >= y2.High)
            return;

        effort.Spend();
        var arms = Arms(mirrored, x1, x2, y1, y2);
        var area = 0L;
        foreach (var arm in arms)
        {
            if (largest(arm).Area is var one && one == 0L)
                return;
            area += one;
        }

        if (area <= best.Area)
            return;

        var most = Math.Max(Math.Max(x1.Count, x2.Count), Math.Max(y1.Count, y2.Count));
        if (most == 1)
            best = arms.Select(largest).Aggregate((left, right) => left + right);
        else if (x1.Count == most)
            Halved(x1, ref best, (Range part, ref CuttingSet found) => Try(mirrored, part, x2, y1, y2, ref found));
        else if (x2.Count == most)
            Halved(x2, ref best, (Range part, ref CuttingSet found) => Try(mirrored, x1, part, y1, y2, ref found));
        else if (y1.Count == most)
            Halved(y1, ref best, (Range part, ref CuttingSet found) => Try(mirrored, x1, x2, part, y2, ref found));
        else
            Halved(y2, ref best, (Range part, ref CuttingSet found) => Try(mirrored, x1, x2, y1, part, ref found));
    }

    private delegate void Half(Range part, ref CuttingSet found);

    private static void Halved(Range range, ref CuttingSet best, Half next)
    {
        var middle = (range.Low + range.High) / 2;
        next(new(range.Low, middle), ref best);
        next(new(middle + 1, range.High), ref best);
    }

    private FaceBox[] Arms(bool mirrored, Range x1, Range x2, Range y1, Range y2)
    {
        var (left, right, bottom, top) = window;
        return mirrored
            ? [new(across[x1.Low], right, bottom, along[y1.High]), new(left, across[x1.High], bottom, along[y2.High]), new(left, across[x2.High], along[y2.Low], top), new(across[x2.Low], right, along[y1.Low], top)]
            : [new(left, across[x2.High], bottom, along[y1.High]), new(across[x2.Low], right, bottom, along[y2.High]), new(across[x1.Low], right, along[y2.Low], top), new(left, across[x1.High], along[y1.Low], top)];
    }
}
