using BenchmarkDotNet.Attributes;
using Boardwright.Sawing;

namespace Boardwright.Bench.Grading;

/// <summary>The most area in at most k cuttings of No. 1 Common: every set of grid rectangles tried, against lines, vanes and bounds.</summary>
public class CuttingBench
{
    private const long Inch = 25_400_000;
    private static readonly CuttingSize Size = new(0L, (4 * Inch, 24 * Inch), (3 * Inch, 36 * Inch));

    private FaceBox face;
    private FaceBox[] defects = [];

    [Params(1, 2, 3)]
    public int Cuttings { get; set; }

    [GlobalSetup]
    public void Board()
    {
        // 6 in by 8 ft, three knots in whole inches: small enough for the plain way.
        face = new(0, 96 * Inch, 0, 6 * Inch);
        defects = [new(30 * Inch, 32 * Inch, 1 * Inch, 3 * Inch), new(54 * Inch, 55 * Inch, 4 * Inch, 5 * Inch), new(78 * Inch, 81 * Inch, 0, 1 * Inch)];
        if (Plain() != Searched())
            throw new InvalidOperationException("The two ways disagree.");
    }

    [Benchmark(Baseline = true)]
    public long Plain()
    {
        var x = Lines([.. defects.SelectMany(box => new[] { box.Left, box.Right }), 0, face.Right], [.. Size.Lengths], face.Right);
        var y = Lines([.. defects.SelectMany(box => new[] { box.Bottom, box.Top }), 0, face.Top], [.. Size.Widths], face.Top);
        var all = new List<FaceBox>();
        for (var left = 0; left < x.Length; left++)
        {
            for (var right = left + 1; right < x.Length; right++)
            {
                for (var bottom = 0; bottom < y.Length; bottom++)
                {
                    for (var top = bottom + 1; top < y.Length; top++)
                    {
                        var box = new FaceBox(x[left], x[right], y[bottom], y[top]);
                        if (Size.Admits(box.Width, box.Length) && !defects.Any(box.Overlaps))
                            all.Add(box);
                    }
                }
            }
        }

        return Most(all, 0, [], Cuttings);
    }

    [Benchmark]
    public long Searched()
    {
        var effort = new SearchEffort(long.MaxValue);
        return new CuttingSearch(face, new FaceObstacles(defects, Size, effort), Size, effort).Best(face, Cuttings).Area;
    }

    private static long Most(List<FaceBox> all, int from, List<FaceBox> taken, int count)
    {
        var best = 0L;
        for (var i = from; i < all.Count && count > 0; i++)
        {
            if (taken.Exists(all[i].Overlaps))
                continue;
            taken.Add(all[i]);
            best = Math.Max(best, all[i].Area + Most(all, i + 1, taken, count - 1));
            taken.RemoveAt(taken.Count - 1);
        }

        return best;
    }

    private static long[] Lines(long[] anchors, long[] least, long extent) => new GridLines(anchors, least, extent) is var grid ? [.. grid.Anchors.Concat(grid.Between).Append(0L).Append(extent).Order()] : [];
}
