using System.Diagnostics;

namespace Boardwright.Bench.Drying;

/// <summary>Times several ways in turn, in slices short enough that some run undisturbed on a busy machine, and keeps the quickest slice of each.</summary>
internal static class Slices
{
    private const int Rounds = 60;
    private const double SliceSeconds = 0.003;

    /// <summary>Nanoseconds a unit of each way: the quickest slice over the units in one call.</summary>
    public static double[] NanosecondsPerUnit(IReadOnlyList<(Action Run, double UnitsPerCall)> ways)
    {
        var calls = ways.Select(way => Calls(way.Run)).ToArray();
        var best = ways.Select(_ => double.PositiveInfinity).ToArray();
        for (var round = 0; round < Rounds; round++)
        {
            for (var way = 0; way < ways.Count; way++)
            {
                best[way] = Math.Min(best[way], Seconds(ways[way].Run, calls[way]) / calls[way]);
            }
        }

        return [.. best.Select((seconds, way) => 1e9 * seconds / ways[way].UnitsPerCall)];
    }

    // Calls until the code is compiled for good, then as many as fill a slice.
    private static int Calls(Action run)
    {
        for (var i = 0; i < 5; i++)
        {
            var calls = 1;
            while (Seconds(run, calls) < 0.05)
            {
                calls *= 2;
            }

            Thread.Sleep(150);
        }

        return Math.Max(1, (int)(SliceSeconds / Enumerable.Range(0, 5).Min(_ => Seconds(run, 1))));
    }

    private static double Seconds(Action run, int calls)
    {
        var from = Stopwatch.GetTimestamp();
        for (var i = 0; i < calls; i++)
        {
            run();
        }

        return Stopwatch.GetElapsedTime(from).TotalSeconds;
    }
}
