namespace Boardwright.Sawing;

/// <summary>The most area that at most k cuttings take out of a window of a face, none overlapping another or an obstacle.</summary>
/// <remarks>
/// <para>A set of cuttings either has a straight line across the window that meets none of them, or it has a last one: every other lies left of it or below it.
/// So F(window, k) is the best over lines and ways to share k between both sides, and, from four cuttings on, over corners c of F(above and right of c, 1) + F(the rest, k - 1).</para>
/// <para>F of a part never falls as the part grows. So F on the far side of the last line of a range plus F on the far side of the first bounds every line of the
/// range, and the range is halved until its bound is no better than what was found; corners likewise by quarters.</para>
/// </remarks>
internal sealed class CuttingSearch
{
    private const int FewestWithoutLine = 4;

    private readonly FaceObstacles obstacles;
    private readonly ReachableWood reachable;
    private readonly CuttingSize size;
    private readonly SearchEffort effort;
    private readonly GridLines acrossLines;
    private readonly GridLines alongLines;
    private readonly Dictionary<(FaceBox, int), CuttingSet> known = [];

    public CuttingSearch(FaceBox board, FaceObstacles obstacles, CuttingSize size, SearchEffort effort)
        : this(
            board, obstacles, size, effort,
            new GridLines(obstacles.Boxes.SelectMany(box => new[] { box.Left, box.Right }).Append(0L).Append(board.Right), [.. size.Lengths], board.Right),
            new GridLines(obstacles.Boxes.SelectMany(box => new[] { box.Bottom, box.Top }).Append(0L).Append(board.Top), [.. size.Widths], board.Top))
    {
    }

    private CuttingSearch(FaceBox board, FaceObstacles obstacles, CuttingSize size, SearchEffort effort, GridLines acrossLines, GridLines alongLines)
    {
        (this.obstacles, this.size, this.effort, this.acrossLines, this.alongLines) = (obstacles, size, effort, acrossLines, alongLines);
        reachable = new ReachableWood(board, obstacles);
    }

    /// <summary>The best set of at most <paramref name="count"/> cuttings; only a lower bound once the effort is spent.</summary>
    public CuttingSet Best(FaceBox window, int count)
    {
        if (count <= 0 || window.Length < size.LengthMin || window.Width < size.WidthMin)
            return CuttingSet.None;
        if (known.TryGetValue((window, count), out var before))
            return before;

        var best = count == 1 ? One(window) : Several(window, count);
        if (!effort.IsSpent)
            known[(window, count)] = best;
        return best;
    }

    /// <summary>No set of at most <paramref name="count"/> cuttings in the window takes more; quick, and not always reached.</summary>
    public long Ceiling(FaceBox window, int count)
    {
        if (known.TryGetValue((window, count), out var exact))
            return exact.Area;
        var one = Best(window, 1).Area;
        if (one == 0L || count <= 1)
            return one;

        var ceiling = Math.Min(Times(one, count), reachable.Area(window));
        for (var fewer = count - 1; fewer > 1; fewer--)
        {
            if (!known.TryGetValue((window, fewer), out var found))
                continue;

            // The largest of the best k take at least their share of them; and any k are some of them and the others.
            ceiling = Math.Min(ceiling, found.Area + (long)((Int128)found.Area * (count - fewer) / fewer));
            if (known.TryGetValue((window, count - fewer), out var others))
                ceiling = Math.Min(ceiling, found.Area + others.Area);
        }

        return ceiling;
    }

    private CuttingSet One(FaceBox window) => obstacles.Largest(window) is { } largest ? new CuttingSet(largest.Area, [largest]) : CuttingSet.None;

    private CuttingSet Several(FaceBox window, int count)
    {
        var best = Best(window, count - 1);
        var ceiling = Ceiling(window, count);
        foreach (var anchored in (ReadOnlySpan<bool>)[true, false])
        {
            foreach (var along in (ReadOnlySpan<bool>)[true, false])
            {
                var lines = Inside(window, along, anchored);
                for (var first = 1; first < count && best.Area < ceiling && lines.Count > 0; first++)
                    Part(new(window, along, anchored, first, count - first), lines, 0, lines.Count - 1, ref best);
            }
        }

        return count >= FewestWithoutLine && best.Area < ceiling && window.Width >= 2 * size.WidthMin && window.Length >= 2 * size.LengthMin ? WithoutLine(window, count, best) : best;
    }

    private void Part(Parting parting, ArraySegment<long> lines, int low, int high, ref CuttingSet best)
    {
        if (effort.IsSpent)
            return;

        var (before, after) = (parting.Before(lines[high]), parting.After(lines[low]));
        var (first, second) = (parting.First, parting.Second);
        if (Ceiling(before, first) + Ceiling(after, second) <= best.Area || (!parting.Anchored && !MayHoldLeast(parting, lines[low], lines[high], best.Area)))
            return;

        // The side with fewer cuttings is quicker to know.
        if ((first <= second ? Best(before, first).Area + Ceiling(after, second) : Ceiling(before, first) + Best(after, second).Area) <= best.Area)
            return;

        var (left, right) = (Best(before, first), Best(after, second));
        if (left.Area + right.Area <= best.Area)
            return;

        if (low == high)
        {
            best = left + right;
            return;
        }

        var middle = (low + high) / 2;
        Part(parting, lines, low, middle, ref best);
        Part(parting, lines, middle + 1, high, ref best);
    }

    /// <summary>A line that lies on no edge counts only where a cutting of exactly least size touches it: whether such a set may be worth more.</summary>
    private bool MayHoldLeast(Parting parting, long low, long high, long needed)
    {
        var (before, after) = (parting.Before(high), parting.After(low));
        foreach (var least in (parting.Along ? acrossLines : alongLines).Least)
        {
            var cap = least * parting.Across;
            var inFront = Math.Min(cap, Best(parting.Before(high, low - least), 1).Area);
            if (inFront > 0L && inFront + Ceiling(before, parting.First - 1) + Ceiling(after, parting.Second) > needed)
                return true;

            var behind = Math.Min(cap, Best(parting.After(low, high + least), 1).Area);
            if (behind > 0L && behind + Ceiling(before, parting.First) + Ceiling(after, parting.Second - 1) > needed)
                return true;
        }

        return false;
    }

    private CuttingSet WithoutLine(FaceBox window, int count, CuttingSet best)
    {
        long[] across = [.. Inside(window, along: true, anchored: true).Concat(Inside(window, along: true, anchored: false)).Order()];
        long[] along = [.. Inside(window, along: false, anchored: true).Concat(Inside(window, along: false, anchored: false)).Order()];
        if (across.Length == 0 || along.Length == 0)
            return best;
        if (count == FewestWithoutLine)
            return new VaneSearch(window, across, along, arm => Best(arm, 1), effort).Better(best);

        Corner(window, count, across, along, (0, across.Length - 1), (0, along.Length - 1), ref best);
        return best;
    }

    private void Corner(FaceBox window, int count, long[] across, long[] along, (int Low, int High) x, (int Low, int High) y, ref CuttingSet best)
    {
        if (effort.IsSpent)
            return;

        var last = Best(window with { Left = across[x.Low], Bottom = along[y.Low] }, 1);
        var (left, below) = (window with { Right = across[x.High] }, window with { Top = along[y.High] });
        if (last.Area == 0L || !MayPass(best.Area - last.Area, left, below, count - 1, exact: false) || !MayPass(best.Area - last.Area, left, below, count - 1, exact: true))
            return;

        if (x.Low == x.High && y.Low == y.High)
        {
            var rest = Without(window with { Left = across[x.High], Bottom = along[y.High] }, window);
            if (last.Area + rest.Ceiling(window, count - 1) > best.Area && rest.Best(window, count - 1) is var others && last.Area + others.Area > best.Area)
                best = others + last;
            return;
        }

        var (xMiddle, yMiddle) = ((x.Low + x.High) / 2, (y.Low + y.High) / 2);
        foreach (var xPart in Halves(x, xMiddle))
        {
            foreach (var yPart in Halves(y, yMiddle))
                Corner(window, count, across, along, xPart, yPart, ref best);
        }
    }

    /// <summary>Each of the others lies wholly left of the corner or wholly below it: whether some sharing of them between both strips takes more than needed.</summary>
    private bool MayPass(long needed, FaceBox left, FaceBox below, int count, bool exact)
    {
        for (var leftCount = 1; leftCount < count; leftCount++)
        {
            var (first, second) = (leftCount, count - leftCount);
            if ((exact ? Best(left, first).Area + Best(below, second).Area : Ceiling(left, first) + Ceiling(below, second)) > needed)
                return true;
        }

        return false;
    }

    private CuttingSearch Without(FaceBox taken, FaceBox window) => new(window, new FaceObstacles(obstacles.Boxes.Append(taken), size, effort), size, effort, acrossLines, alongLines);

    private static IEnumerable<(int, int)> Halves((int Low, int High) range, int middle) => range.Low == range.High ? [range] : [(range.Low, middle), (middle + 1, range.High)];

    /// <summary>The lines that leave room for a cutting on both sides.</summary>
    private ArraySegment<long> Inside(FaceBox window, bool along, bool anchored)
    {
        var grid = along ? acrossLines : alongLines;
        var lines = anchored ? grid.Anchors : grid.Between;
        return along ? GridLines.Part(lines, window.Left + size.LengthMin, window.Right - size.LengthMin) : GridLines.Part(lines, window.Bottom + size.WidthMin, window.Top - size.WidthMin);
    }

    private static long Times(long area, int count) => area > long.MaxValue / count ? long.MaxValue : area * count;

    /// <summary>Lines across a window in one direction, and how the cuttings are shared between both sides.</summary>
    private readonly record struct Parting(FaceBox Window, bool Along, bool Anchored, int First, int Second)
    {
        /// <summary>How long a line is.</summary>
        public long Across => Along ? Window.Width : Window.Length;

        public FaceBox Before(long line) => Along ? Window with { Right = line } : Window with { Top = line };

        public FaceBox After(long line) => Along ? Window with { Left = line } : Window with { Bottom = line };

        public FaceBox Before(long line, long from) => Along ? new(Math.Max(from, Window.Left), line, Window.Bottom, Window.Top) : new(Window.Left, Window.Right, Math.Max(from, Window.Bottom), line);

        public FaceBox After(long line, long to) => Along ? new(line, Math.Min(to, Window.Right), Window.Bottom, Window.Top) : new(Window.Left, Window.Right, line, Math.Min(to, Window.Top));
    }
}
