namespace Boardwright.Planning;

/// <summary>Shares the yields of stacks among orders that draw from chosen stacks.</summary>
/// <remarks>Maximum flow by augmenting paths; orders and stacks are few.</remarks>
internal static class Allocation
{
    /// <summary>What each order takes of each stack, or null when the yields do not suffice.</summary>
    /// <param name="wanted">Quantity of each order; 0 for an order that is not met.</param>
    /// <param name="yields">Yield of each stack.</param>
    /// <param name="allowed">Whether an order draws from a stack.</param>
    public static int[,]? Find(IReadOnlyList<int> wanted, IReadOnlyList<int> yields, Func<int, int, bool> allowed)
    {
        var taken = new int[wanted.Count, yields.Count];
        var left = yields.ToArray();
        for (var order = 0; order < wanted.Count; order++)
        {
            var need = wanted[order];
            while (need > 0)
            {
                var got = Augment(order, need, taken, left, allowed, new bool[wanted.Count]);
                if (got == 0)
                {
                    return null;
                }

                need -= got;
            }
        }

        return taken;
    }

    private static int Augment(int order, int need, int[,] taken, int[] left, Func<int, int, bool> allowed, bool[] seen)
    {
        seen[order] = true;
        for (var stack = 0; stack < left.Length; stack++)
        {
            if (!allowed(order, stack))
            {
                continue;
            }

            var got = Math.Min(need, left[stack]);
            if (got > 0)
            {
                left[stack] -= got;
                taken[order, stack] += got;
                return got;
            }

            for (var other = 0; other < seen.Length; other++)
            {
                if (seen[other] || taken[other, stack] == 0)
                {
                    continue;
                }

                var freed = Augment(other, Math.Min(need, taken[other, stack]), taken, left, allowed, seen);
                if (freed > 0)
                {
                    taken[other, stack] -= freed;
                    taken[order, stack] += freed;
                    return freed;
                }
            }
        }

        return 0;
    }
}
