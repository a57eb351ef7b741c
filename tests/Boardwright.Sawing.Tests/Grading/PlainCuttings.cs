namespace Boardwright.Sawing.Tests.Grading;

/// <summary>Tries every set of rectangles of whole steps on a small face: no lines, no corners, no bounds. Slow and plain.</summary>
/// <remarks>Whole steps hold every best set where defects and least sizes are whole steps; half steps are tried as well, to see that nothing lies between.</remarks>
internal static class PlainCuttings
{
    public static long Best(FaceBox face, IReadOnlyList<FaceBox> defects, CuttingSize size, int count, long step)
    {
        var (columns, rows) = ((int)(face.Right / step), (int)(face.Top / step));
        var all = new List<(UInt128 Cells, long Area)>();
        for (var left = 0; left < columns; left++)
        {
            for (var right = left + 1; right <= columns; right++)
            {
                for (var bottom = 0; bottom < rows; bottom++)
                {
                    for (var top = bottom + 1; top <= rows; top++)
                    {
                        var box = new FaceBox(left * step, right * step, bottom * step, top * step);
                        if (size.Admits(box.Width, box.Length) && !defects.Any(box.Overlaps))
                            all.Add((Cells(left, right, bottom, top, rows), box.Area));
                    }
                }
            }
        }

        return Most(all, 0, UInt128.Zero, count);
    }

    private static long Most(List<(UInt128 Cells, long Area)> all, int from, UInt128 taken, int count)
    {
        var best = 0L;
        for (var i = from; i < all.Count && count > 0; i++)
        {
            if ((all[i].Cells & taken) == UInt128.Zero)
                best = Math.Max(best, all[i].Area + Most(all, i + 1, taken | all[i].Cells, count - 1));
        }

        return best;
    }

    private static UInt128 Cells(int left, int right, int bottom, int top, int rows)
    {
        var cells = UInt128.Zero;
        for (var x = left; x < right; x++)
        {
            for (var y = bottom; y < top; y++)
                cells |= UInt128.One << ((x * rows) + y);
        }

        return cells;
    }
}
