using Boardwright.Numerics;

namespace Boardwright.Planning;

/// <summary>A plan made in one pass: the most pressing order first, each charge as early as it can be; then stock rides where there is room.</summary>
/// <remarks>Breaks no rule and is far from best: where the solver starts from.</remarks>
internal sealed class GreedyPlan
{
    private readonly PlanTables tables;
    private readonly Timetable timetable;
    private readonly int[] yieldLeft;
    private readonly int[] chosen;
    private readonly bool[] keptAsItStands;
    private readonly bool mayDry;

    private GreedyPlan(PlanTables tables, bool mayDry)
    {
        this.tables = tables;
        this.mayDry = mayDry;
        timetable = new(tables);
        timetable.Clear();
        yieldLeft = [.. tables.Stacks.Select(stack => stack.YieldTenths)];
        chosen = [.. tables.Orders.Select(_ => -1)];
        keptAsItStands = new bool[tables.Stacks.Length];
    }

    public static Plan Build(PlanTables tables)
    {
        var pressing = Pressing(tables);
        return Build(tables, pressing);
    }

    /// <summary>The best of several: orders served in their usual order, the dearest first, and by chance orders near the usual one.</summary>
    /// <param name="tables">The yard.</param>
    /// <param name="tries">How many by chance.</param>
    /// <param name="seed">Seed of the chance: the same seed gives the same plan.</param>
    public static Plan BestOf(PlanTables tables, int tries, ulong seed)
    {
        var usual = Pressing(tables);
        var chance = new RandomSequence(seed, 0);
        var best = Build(tables, usual);
        var score = PlanOutlook.Of(tables, best).Score;
        for (var attempt = 0; attempt <= tries && tables.Orders.Length > 1; attempt++)
        {
            List<int> order = attempt == 0
                ? [.. usual.OrderByDescending(o => tables.Orders[o].CentsPerDay)]
                : [.. usual.Select((o, place) => (o, Key: place + usual.Count * chance.NextUniform())).OrderBy(one => one.Key).Select(one => one.o)];
            var plan = Build(tables, order);
            var found = PlanOutlook.Of(tables, plan).Score;
            if (found < score)
            {
                (best, score) = (plan, found);
            }
        }

        return best;
    }

    private static Plan Build(PlanTables tables, IEnumerable<int> order)
    {
        var greedy = new GreedyPlan(tables, true);
        foreach (var one in order)
        {
            greedy.Serve(one);
        }

        greedy.FillWithStock();
        return PlanBuilder.Build(tables, greedy.timetable.Charges, greedy.chosen);
    }

    private static List<int> Pressing(PlanTables tables) =>
        [.. Enumerable.Range(0, tables.Orders.Length).OrderBy(o => tables.Orders[o].DueDay).ThenByDescending(o => tables.Orders[o].CentsPerDay)];

    /// <summary>A person's charges one after the other, each as early as it can be from its day on; orders are served from what is dried.</summary>
    public static (Plan Plan, IReadOnlyList<string> Left) Follow(PlanTables tables, IEnumerable<(int Kiln, int[] Stacks, int FromStep)> wanted)
    {
        var greedy = new GreedyPlan(tables, false);
        var left = new List<string>();
        foreach (var (kiln, stacks, from) in wanted)
        {
            var fitting = new List<int>();
            foreach (var stack in stacks)
            {
                if (greedy.timetable.Fits(kiln, [.. fitting, stack]))
                {
                    fitting.Add(stack);
                }
                else
                {
                    left.Add(tables.Stacks[stack].Stack.Id);
                }
            }

            if (fitting.Count > 0 && greedy.First(kiln, [.. fitting], from) is { } charge)
            {
                greedy.timetable.Add(charge);
            }
            else
            {
                left.AddRange(fitting.Select(stack => tables.Stacks[stack].Stack.Id));
            }
        }

        Pressing(tables).ForEach(greedy.Serve);
        return (PlanBuilder.Build(tables, greedy.timetable.Charges, greedy.chosen), left);
    }

    /// <summary>Whenever a kiln is free, the next stacks of a list that may go in together; orders are served from what is dried.</summary>
    public static Plan InTurn(PlanTables tables, IReadOnlyList<int> ranked)
    {
        var greedy = new GreedyPlan(tables, false);
        var waiting = ranked.ToList();
        var kilns = Enumerable.Range(0, tables.Kilns.Length).ToList();
        while (kilns.Count > 0)
        {
            var kiln = kilns.MinBy(greedy.timetable.FreeFrom);
            var together = greedy.NextTogether(kiln, waiting);
            if (together is null)
            {
                kilns.Remove(kiln);
                continue;
            }

            greedy.timetable.Add(together);
            waiting.RemoveAll(stack => together.Stacks.Contains(stack));
        }

        Pressing(tables).ForEach(greedy.Serve);
        return PlanBuilder.Build(tables, greedy.timetable.Charges, greedy.chosen);
    }

    // From the top of the list until the kiln is full; fewer where heat or the plan's end does not allow as many.
    private TimedCharge? NextTogether(int kiln, List<int> waiting)
    {
        int[] together = [];
        foreach (var stack in waiting)
        {
            int[] more = [.. together, .. WithItsSet(stack).Except(together)];
            together = timetable.Fits(kiln, more) ? more : together;
        }

        for (; together.Length > 0; together = together[..^1])
        {
            var torn = together.Any(stack => WithItsSet(stack).Except(together).Any());
            if (!torn && First(kiln, together) is { } charge)
            {
                return charge;
            }
        }

        return null;
    }

    private void Serve(int index)
    {
        var order = tables.Orders[index];
        var bits = 0;
        var need = order.QuantityTenths;
        for (var w = 0; w < order.Wood.Length && need > 0; w++)
        {
            var wood = order.Wood[w];
            if (yieldLeft[wood.Stack] > 0 && Obtain(wood))
            {
                need -= Math.Min(need, yieldLeft[wood.Stack]);
                bits |= 1 << w;
            }
        }

        if (need > 0)
        {
            return; // what was dried for it stays dried, as stock
        }

        chosen[index] = bits;
        need = order.QuantityTenths;
        for (var w = 0; w < order.Wood.Length; w++)
        {
            if ((bits >> w & 1) != 0)
            {
                var taken = Math.Min(need, yieldLeft[order.Wood[w].Stack]);
                yieldLeft[order.Wood[w].Stack] -= taken;
                keptAsItStands[order.Wood[w].Stack] |= !order.Wood[w].Kilned;
                need -= taken;
            }
        }
    }

    /// <summary>Sees that the wood is there in the state asked; dries it if need be.</summary>
    private bool Obtain(OrderWoodTable wood)
    {
        var charge = timetable.Charges.FirstOrDefault(c => c.Stacks.Contains(wood.Stack));
        if (charge is not null)
        {
            return wood.Kilned && charge.Unload < tables.Calendar.Steps;
        }

        var set = WithItsSet(wood.Stack);
        return !wood.Kilned ? set.Length == 1 : mayDry && !set.Any(s => keptAsItStands[s]) && (Ride(wood.Stack) || Dry(set));
    }

    private int[] WithItsSet(int stack) => tables.Stacks[stack].Stack.MatchedSet is not { } set ? [stack]
        : [.. Enumerable.Range(0, tables.Stacks.Length).Where(s => tables.Stacks[s].Stack.MatchedSet == set)];

    private bool Dry(int[] stacks)
    {
        var first = Enumerable.Range(0, tables.Kilns.Length).Select(kiln => First(kiln, stacks)).Where(charge => charge is not null).MinBy(charge => charge!.UnloadEnd);
        if (first is not null)
        {
            timetable.Add(first);
        }

        return first is not null;
    }

    private TimedCharge? First(int kiln, int[] stacks, int from = 0) => timetable.Fits(kiln, stacks) ? timetable.First(kiln, stacks, from) : null;

    /// <summary>Joins a charge that is planned already, without making it longer.</summary>
    private bool Ride(int stack)
    {
        if (WithItsSet(stack).Length > 1)
        {
            return false;
        }

        for (var c = 0; c < timetable.Charges.Count; c++)
        {
            var charge = timetable.Charges[c];
            int[] all = [.. charge.Stacks, stack];
            if (!charge.Started && charge.Load >= tables.Stacks[stack].AvailableStep && timetable.Fits(charge.Kiln, all) && timetable.Replace(c, all))
            {
                return true;
            }
        }

        return false;
    }

    private void FillWithStock()
    {
        foreach (var stack in Enumerable.Range(0, tables.Stacks.Length).Where(s => tables.Stacks[s].GainCents > 0).OrderByDescending(s => tables.Stacks[s].GainCents))
        {
            if (!keptAsItStands[stack] && !timetable.Charges.Any(c => c.Stacks.Contains(stack)))
            {
                Ride(stack);
            }
        }
    }
}
