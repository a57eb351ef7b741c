namespace Boardwright.Planning.Solver;

/// <summary>The units that are worth most together in one charge: a knapsack in which not all may share.</summary>
/// <remarks>Depth first, the most worth for its room first; a branch ends when filling the rest of the room with parts, whether they may share or not, does not reach the best.</remarks>
internal sealed class BestCharge(ChargeYard yard)
{
    private readonly List<int[]> left = [];
    private readonly int[] chosen = new int[yard.Units.Length];

    /// <summary>Units to choose from, in order of worth for room: filled by the caller.</summary>
    public int[] Offered { get; } = new int[yard.Units.Length];

    /// <summary>By unit.</summary>
    public long[] Worth { get; } = new long[yard.Units.Length];

    public int Count { get; set; }

    public int[] Best { get; } = new int[yard.Units.Length];

    public int BestCount { get; private set; }

    /// <summary>What the best is worth; no more than asked for when nothing is above it.</summary>
    public long Find(long room, long above)
    {
        BestCount = 0;
        return Deeper(0, Offered, Count, room, 0, above);
    }

    private long Deeper(int depth, int[] offered, int count, long room, long worth, long best)
    {
        if (left.Count == depth)
        {
            left.Add(new int[yard.Units.Length]);
        }

        var rest = left[depth];
        for (var i = 0; i < count; i++)
        {
            if (worth + Filled(offered, i, count, room) <= best)
            {
                return best;
            }

            var unit = offered[i];
            var (together, space, sum) = (yard.Together[unit], room - yard.Units[unit].LoadTenths, worth + Worth[unit]);
            if (space < 0)
            {
                continue;
            }

            chosen[depth] = unit;
            if (sum > best)
            {
                best = sum;
                BestCount = depth + 1;
                Array.Copy(chosen, Best, BestCount);
            }

            var more = 0;
            for (var j = i + 1; j < count; j++)
            {
                if (together[offered[j]] && yard.Units[offered[j]].LoadTenths <= space)
                {
                    rest[more++] = offered[j];
                }
            }

            if (more > 0)
            {
                best = Deeper(depth + 1, rest, more, space, sum, best);
            }
        }

        return best;
    }

    // The rest of the room filled in turn, the last in part: rounded up.
    private long Filled(int[] offered, int from, int count, long room)
    {
        long sum = 0;
        for (var i = from; i < count; i++)
        {
            long load = yard.Units[offered[i]].LoadTenths;
            if (load > room)
            {
                return sum + (long)((double)Worth[offered[i]] * room / load) + 1;
            }

            (sum, room) = (sum + Worth[offered[i]], room - load);
        }

        return sum;
    }
}
