namespace Boardwright.Sawing;

/// <summary>What no cutting may touch on a face, and the largest cutting that stays clear of it.</summary>
internal sealed class FaceObstacles
{
    private readonly FaceBox[] boxes;                                  // by left edge
    private readonly CuttingSize size;
    private readonly SearchEffort effort;
    private readonly (long Bottom, long Top)[] strips;

    public FaceObstacles(IEnumerable<FaceBox> boxes, CuttingSize size, SearchEffort effort)
    {
        this.boxes = [.. boxes.OrderBy(box => box.Left)];
        (this.size, this.effort) = (size, effort);
        strips = new (long, long)[this.boxes.Length + 2];
    }

    public IReadOnlyList<FaceBox> Boxes => boxes;

    /// <summary>The largest admitted cutting inside a window; null where none fits.</summary>
    /// <remarks>
    /// The left edge of a largest cutting lies on the window's or on an obstacle's right edge, else it would grow. For each such edge the clear strips are
    /// followed to the right; an obstacle that enters a strip ends it there and parts it. Every rectangle that cannot grow is met: O(n² s), s strips side by side.
    /// </remarks>
    public FaceBox? Largest(FaceBox window)
    {
        effort.Spend();
        var best = default(FaceBox);
        Follow(window, window.Left, ref best, null);
        foreach (var box in boxes)
        {
            if (box.Right > window.Left && box.Right < window.Right && (window.Right - box.Right) * window.Width > best.Area)
                Follow(window, box.Right, ref best, null);
        }

        return best.Area > 0L ? best : null;
    }

    /// <summary>Every admitted cutting inside a window that cannot grow to the right, up or down from its left edge.</summary>
    public IReadOnlyList<FaceBox> Ungrowable(FaceBox window)
    {
        var found = new List<FaceBox>();
        var best = default(FaceBox);
        foreach (var left in boxes.Select(box => box.Right).Append(window.Left).Where(x => x >= window.Left && x < window.Right).Distinct())
            Follow(window, left, ref best, found);
        return found;
    }

    private void Follow(FaceBox window, long left, ref FaceBox best, List<FaceBox>? all)
    {
        strips[0] = (window.Bottom, window.Top);
        var count = 1;
        foreach (var box in boxes)
        {
            if (box.Left >= window.Right || count == 0)
                break;
            if (box.Right <= left)
                continue;

            for (var i = count - 1; i >= 0; i--)
            {
                var (bottom, top) = strips[i];
                if (box.Bottom >= top || box.Top <= bottom)
                    continue;

                if (box.Left > left)
                    Keep(new(left, box.Left, bottom, top), ref best, all);
                strips[i] = strips[--count];
                if (box.Bottom - bottom >= size.WidthMin)
                    strips[count++] = (bottom, box.Bottom);
                if (top - box.Top >= size.WidthMin)
                    strips[count++] = (box.Top, top);
            }
        }

        for (var i = 0; i < count; i++)
            Keep(new(left, window.Right, strips[i].Bottom, strips[i].Top), ref best, all);
    }

    private void Keep(FaceBox found, ref FaceBox best, List<FaceBox>? all)
    {
        if ((all is null && found.Area <= best.Area) || !size.Admits(found.Width, found.Length))
            return;

        best = found;
        all?.Add(found);
    }
}
