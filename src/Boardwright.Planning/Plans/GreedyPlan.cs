using Boardwright.Numerics;

namespace Boardwright.Planning;

/// <summary>A plan made in one pass: the most pressing order first, each charge as early as it can be; then stock rides where there is room.</summary>
/// <remarks>Breaks no rule and is far from best: where the solver starts from.</remarks>
internal sealed class GreedyPlan
{
    private readonly PlanTables tables;
    private readonly List<TimedCharge> charges = [];
    private readonly List<StepRange> works = [];
    private readonly int[] yieldLeft;
    private readonly int[] chosen;
    private readonly bool[] keptAsItStands;
    private readonly bool mayDry;

    private GreedyPlan(PlanTables tables, bool mayDry)
    {
        this.tables = tables;
        this.mayDry = mayDry;
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
        greedy.EmptyStanding();
        foreach (var one in order)
        {
            greedy.Serve(one);
        }

        greedy.FillWithStock();
        return PlanBuilder.Build(tables, greedy.charges, greedy.chosen);
    }

    private static List<int> Pressing(PlanTables tables) =>
        [.. Enumerable.Range(0, tables.Orders.Length).OrderBy(o => tables.Orders[o].DueDay).ThenByDescending(o => tables.Orders[o].CentsPerDay)];

    /// <summary>A person's charges one after the other, each as early as it can be from its day on; orders are served from what is dried.</summary>
    public static (Plan Plan, IReadOnlyList<string> Left) Follow(PlanTables tables, IEnumerable<(int Kiln, int[] Stacks, int FromStep)> wanted)
    {
        var greedy = new GreedyPlan(tables, false);
        greedy.EmptyStanding();
        var left = new List<string>();
        foreach (var (kiln, stacks, from) in wanted)
        {
            var fitting = new List<int>();
            foreach (var stack in stacks)
            {
                if (greedy.Fits(kiln, [.. fitting, stack]))
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
                greedy.Add(charge);
            }
            else
            {
                left.AddRange(fitting.Select(stack => tables.Stacks[stack].Stack.Id));
            }
        }

        Pressing(tables).ForEach(greedy.Serve);
        return (PlanBuilder.Build(tables, greedy.charges, greedy.chosen), left);
    }

    private void EmptyStanding()
    {
        for (var k = 0; k < tables.Kilns.Length; k++)
        {
            if (tables.Kilns[k].Started is { } started)
            {
                var stacks = Enumerable.Range(0, tables.Stacks.Length).Where(s => started.Stacks.Contains(tables.Stacks[s].Stack.Id)).ToArray();
                var unload = tables.Kilns[k].UnloadStarts.Where(step => step >= tables.Kilns[k].StartedDry && CrewFree(new(step, step + tables.Kilns[k].Unloading)));
                Add(TimedCharge.Standing(tables, k, stacks, unload.FirstOrDefault(tables.Calendar.Steps)));
            }
        }
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
        var charge = charges.FirstOrDefault(c => c.Stacks.Contains(wood.Stack));
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
            Add(first);
        }

        return first is not null;
    }

    private TimedCharge? First(int kiln, int[] stacks, int from = 0)
    {
        var k = tables.Kilns[kiln];
        var free = charges.Where(c => c.Kiln == kiln).Select(c => c.UnloadEnd).DefaultIfEmpty(0).Max();
        if (!Fits(kiln, stacks))
        {
            return null;
        }

        foreach (var load in k.LoadStarts.Where(step => step >= Math.Max(free, from) && stacks.All(s => step >= tables.Stacks[s].AvailableStep) && CrewFree(new(step, step + k.Loading))))
        {
            for (var warmUp = 0; warmUp < k.WarmSteps.Length; warmUp++)
            {
                var dry = TimedCharge.Begun(tables, kiln, stacks, warmUp, load, 0).Dry;
                var unload = k.UnloadStarts.Where(step => step >= dry && CrewFree(new(step, step + k.Unloading))).FirstOrDefault(-1);
                var charge = unload < 0 ? null : TimedCharge.Begun(tables, kiln, stacks, warmUp, load, unload);
                if (charge is not null && !k.Kiln.Outages.Any(new StepRange(load, charge.UnloadEnd).Touches) && HeatAllows(charge, null))
                {
                    return charge;
                }
            }
        }

        return null;
    }

    /// <summary>Joins a charge that is planned already, without making it longer.</summary>
    private bool Ride(int stack)
    {
        if (WithItsSet(stack).Length > 1)
        {
            return false;
        }

        for (var c = 0; c < charges.Count; c++)
        {
            var charge = charges[c];
            var all = charge.Stacks.Append(stack).ToArray();
            if (charge.Started || charge.Load < tables.Stacks[stack].AvailableStep || !Fits(charge.Kiln, all))
            {
                continue;
            }

            var longer = TimedCharge.Begun(tables, charge.Kiln, all, charge.WarmUp, charge.Load, charge.Unload);
            if (longer.Dry <= charge.Unload && HeatAllows(longer, charge))
            {
                charges[c] = longer;
                return true;
            }
        }

        return false;
    }

    private void FillWithStock()
    {
        foreach (var stack in Enumerable.Range(0, tables.Stacks.Length).Where(s => tables.Stacks[s].GainCents > 0).OrderByDescending(s => tables.Stacks[s].GainCents))
        {
            if (!keptAsItStands[stack] && !charges.Any(c => c.Stacks.Contains(stack)))
            {
                Ride(stack);
            }
        }
    }

    private bool Fits(int kiln, int[] stacks)
    {
        var k = tables.Kilns[kiln];
        return stacks.All(s => tables.Stacks[s].Uses[kiln] is not null)
            && stacks.Sum(s => tables.Stacks[s].LoadTenths) <= k.CapacityTenths
            && stacks.All(a => stacks.All(b => a == b || tables.Together[a, b]));
    }

    private bool CrewFree(StepRange work) => works.Append(work).All(start =>
        works.Append(work).Count(other => other.From <= start.From && start.From < other.To) <= tables.Calendar.KilnsAtOnce);

    private bool HeatAllows(TimedCharge charge, TimedCharge? instead)
    {
        var kiln = tables.Kilns[charge.Kiln];
        var demand = Scoring.DemandTenths(tables, [.. charges.Where(c => c != instead), charge]);
        return kiln.HoldMostTenths + Math.Max(charge.WarmTenths, charge.RunTenths) <= kiln.CoilTenths
            && !demand.Where((tenths, period) => tenths - tables.SpareTenths[period] > tables.ShortMostTenths[period]).Any();
    }

    private void Add(TimedCharge charge)
    {
        charges.Add(charge);
        if (!charge.Started)
        {
            works.Add(new(charge.Load, charge.LoadEnd));
        }

        if (charge.Unload < tables.Calendar.Steps)
        {
            works.Add(new(charge.Unload, charge.UnloadEnd));
        }
    }
}
