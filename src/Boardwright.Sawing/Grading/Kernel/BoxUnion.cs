namespace Boardwright.Sawing;

/// <summary>The wood under a heap of boxes, parted into boxes that do not overlap.</summary>
internal static class BoxUnion
{
    public static IReadOnlyList<FaceBox> Parts(IReadOnlyList<FaceBox> boxes)
    {
        var parts = new List<FaceBox>();
        long[] edges = [.. boxes.SelectMany(box => new[] { box.Left, box.Right }).Distinct().Order()];
        for (var i = 0; i + 1 < edges.Length; i++)
        {
            var (left, right) = (edges[i], edges[i + 1]);
            (long Bottom, long Top)? open = null;
            foreach (var box in boxes.Where(box => box.Left <= left && box.Right >= right).OrderBy(box => box.Bottom))
            {
                if (open is { } run && box.Bottom <= run.Top)
                {
                    open = (run.Bottom, Math.Max(run.Top, box.Top));
                    continue;
                }

                if (open is { } closed)
                    parts.Add(new(left, right, closed.Bottom, closed.Top));
                open = (box.Bottom, box.Top);
            }

            if (open is { } last)
                parts.Add(new(left, right, last.Bottom, last.Top));
        }

        return parts;
    }

    /// <summary>Area under the boxes inside a window.</summary>
    public static long Area(IEnumerable<FaceBox> boxes, FaceBox window) =>
        Parts([.. boxes.Where(box => box.Overlaps(window)).Select(box => box.Within(window))]).Sum(part => part.Area);
}
