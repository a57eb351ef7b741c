namespace Boardwright.Sawing;

/// <summary>The lines on which the edges of a best set of cuttings may be taken to lie, in one direction.</summary>
/// <remarks>
/// An edge lies on an edge of a defect or of the board (an anchor), or a chain of cuttings of least size away from one, so a whole number of the greatest common
/// measure of the least sizes (docs/methods/board-grade.md, "Why the grid is enough"): feet along, inches across.
/// </remarks>
internal sealed class GridLines
{
    /// <summary>The lines inside the board, in order.</summary>
    /// <param name="anchors">Edges of the board and of what may not be touched.</param>
    /// <param name="least">Least sizes of a cutting in this direction.</param>
    /// <param name="extent">Size of the board in this direction.</param>
    public GridLines(IEnumerable<long> anchors, IReadOnlyList<long> least, long extent)
    {
        Least = least;
        var measure = least.Aggregate(GreatestCommonMeasure);
        long[] all = [.. anchors.Distinct()];
        Anchors = [.. all.Where(line => line > 0 && line < extent).Order()];
        var others = all.Select(anchor => anchor % measure).Distinct()
            .SelectMany(first => Enumerable.Range(0, (int)((extent - first + measure - 1) / measure)).Select(step => first + (step * measure)));
        Between = [.. others.Where(line => line > 0 && line < extent).Except(Anchors).Order()];
    }

    /// <summary>Lines on an edge of a defect.</summary>
    public long[] Anchors { get; }

    /// <summary>Lines a whole number of measures away from one.</summary>
    public long[] Between { get; }

    public IReadOnlyList<long> Least { get; }

    /// <summary>Those of an ordered set of lines from one place to another, both included.</summary>
    public static ArraySegment<long> Part(long[] lines, long from, long to)
    {
        var (low, high) = (FirstFrom(lines, from), FirstFrom(lines, to + 1));
        return new(lines, low, Math.Max(0, high - low));
    }

    private static int FirstFrom(long[] lines, long from) => Array.BinarySearch(lines, from) is >= 0 and var at ? at : ~Array.BinarySearch(lines, from);

    private static long GreatestCommonMeasure(long left, long right) => right == 0L ? left : GreatestCommonMeasure(right, left % right);
}
