using Boardwright.Sawing;

namespace Boardwright.Bench.Sawing;

/// <summary>What is done without a plan, on the same log at the same prices, unturned, through and through.</summary>
internal static class SimplePractice
{
    private const double SlabMm = 25.4;

    /// <summary>4/4 from end to end of the log's height, the first face an inch under the top of the log.</summary>
    public static double FixedFace(LogShape log)
    {
        var space = new CuttingSpace(log, new SawingRules(), RandomLogs.Of(4));
        var (lie, sum) = (space.Lie(0.0), 0.0);
        for (var i = (int)(SlabMm / space.GridMm); i < lie.Count; i += space.PitchSteps[0])
            sum += lie.Field.Whole[i];
        return sum;
    }

    /// <summary>The flitch that is worth most anywhere in the log, then the one worth most in what is left, and so on.</summary>
    public static double Greedy(LogShape log)
    {
        var space = new CuttingSpace(log, new SawingRules(), RandomLogs.Prices);
        var lie = space.Lie(0.0);
        return Greedy(space, lie, 0, lie.Count + space.KerfSteps);
    }

    private static double Greedy(CuttingSpace space, LogLie lie, int from, int to)
    {
        var (best, at, thick) = (0.0, -1, 0);
        for (var t = 0; t < space.PitchSteps.Length; t++)
        {
            for (var i = from; i < lie.Count && i + space.PitchSteps[t] <= to; i++)
            {
                if (lie.Field.Whole[(t * lie.Field.Stride) + i] > best)
                    (best, at, thick) = (lie.Field.Whole[(t * lie.Field.Stride) + i], i, t);
            }
        }

        return at < 0 ? 0.0 : best + Greedy(space, lie, from, at) + Greedy(space, lie, at + space.PitchSteps[thick], to);
    }
}
