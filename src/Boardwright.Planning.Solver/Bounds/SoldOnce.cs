namespace Boardwright.Planning.Solver;

/// <summary>Of some ways to serve orders, at most so many can be chosen: their wood does not suffice for more.</summary>
internal readonly record struct TakenRow(int Most, (int Asked, int Way)[] Ways);

/// <summary>No board is sold twice: which ways to serve orders exclude one another.</summary>
internal static class SoldOnce
{
    private const int SharesMost = 3;

    public static IEnumerable<TakenRow> Rows(PlanTables tables, IReadOnlyList<Asked> asked)
    {
        var takers = asked.SelectMany((one, a) => one.Ways.SelectMany((way, w) => way.Stacks.Select(stack => (Stack: stack, Asked: a, Way: w, Least: Least(tables, one, way, stack)))))
            .GroupBy(taker => taker.Stack);
        foreach (var stack in takers)
        {
            long yield = tables.Stacks[stack.Key].YieldTenths;
            var all = stack.Where(taker => taker.Least > 0).ToList();

            // Of takes above a half at most one is given, of takes above a third at most two …
            for (var share = 1; share <= SharesMost; share++)
            {
                if (Row(share, [.. all.Where(taker => (share + 1) * taker.Least > yield)]) is { } row)
                {
                    yield return row;
                }
            }

            // … and a small one with none of those that leave less than it.
            foreach (var small in all.Where(taker => 2 * taker.Least <= yield).GroupBy(taker => taker.Asked))
            {
                var least = small.Min(taker => taker.Least);
                var large = all.Where(taker => taker.Asked != small.Key && 2 * taker.Least > yield && taker.Least + least > yield).ToList();
                if (large.Count > 0 && Row(1, [.. large, .. small]) is { } row)
                {
                    yield return row;
                }
            }
        }

        foreach (var row in NotAll(tables, asked))
        {
            yield return row;
        }
    }

    private static TakenRow? Row(int most, List<(int Stack, int Asked, int Way, long Least)> takers) =>
        takers.Select(taker => taker.Asked).Distinct().Count() > most ? new(most, [.. takers.Select(taker => (taker.Asked, taker.Way))]) : null;

    // What a way takes of a stack at least, when the others give all they have.
    private static long Least(PlanTables tables, Asked asked, AskedWay way, int stack) =>
        asked.Order.QuantityTenths - way.Beside.Where(other => other != stack).Sum(other => (long)tables.Stacks[other].YieldTenths);

    // Two or three orders that ask together for more than all their wood yields are not all met.
    private static IEnumerable<TakenRow> NotAll(PlanTables tables, IReadOnlyList<Asked> asked)
    {
        bool Enough(params ReadOnlySpan<int> orders)
        {
            var (wood, quantity) = (new HashSet<int>(), 0L);
            foreach (var order in orders)
            {
                wood.UnionWith(asked[order].Order.Wood.Select(one => one.Stack));
                quantity += asked[order].Order.QuantityTenths;
            }

            return quantity <= wood.Sum(stack => (long)tables.Stacks[stack].YieldTenths);
        }

        TakenRow Row(params ReadOnlySpan<int> orders)
        {
            var ways = new List<(int, int)>();
            foreach (var order in orders)
            {
                ways.AddRange(asked[order].Ways.Select((_, way) => (order, way)));
            }

            return new(orders.Length - 1, [.. ways]);
        }

        bool Meet(int a, int b) => asked[a].Order.Wood.Any(one => asked[b].Order.Wood.Any(other => other.Stack == one.Stack));
        for (var a = 0; a < asked.Count; a++)
        {
            for (var b = 0; b < a; b++)
            {
                if (!Meet(a, b))
                {
                    continue;
                }

                if (!Enough(a, b))
                {
                    yield return Row(a, b);
                    continue;
                }

                for (var c = 0; c < asked.Count; c++)
                {
                    if (c != a && c != b && Meet(b, c) && Enough(a, c) && Enough(b, c) && !Enough(a, b, c))
                    {
                        yield return Row(a, b, c);
                    }
                }
            }
        }
    }
}
