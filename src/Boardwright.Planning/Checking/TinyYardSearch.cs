namespace Boardwright.Planning;

/// <summary>Finds the best plan of a tiny yard by trying every plan there is: the measure of the solver, not a planner.</summary>
/// <remarks>Tries every set of charges, order of charges, warm-up, load step, unload step and choice of wood. Accepted: at most 5 stacks outside started charges.</remarks>
public sealed class TinyYardSearch
{
    private readonly PlanTables tables;
    private readonly List<TimedCharge> charges = [];
    private readonly List<StepRange> works = [];
    private readonly List<int[]> servingChoices;
    private (PlanScore Score, List<TimedCharge> Charges, int[] Chosen)? best;

    private TinyYardSearch(PlanInput input)
    {
        tables = new(input);
        var free = tables.Stacks.Count(stack => !stack.Started);
        if (free > 5)
        {
            throw new ArgumentOutOfRangeException(nameof(input), free, "Accepted: at most 5 stacks outside started charges.");
        }

        servingChoices = [.. Choices(0, new int[tables.Orders.Length])];
    }

    /// <summary>The best plan and its score; null when even the empty plan breaks a rule.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The yard is not tiny.</exception>
    public static (Plan Plan, PlanScore Score)? Best(PlanInput input)
    {
        var search = new TinyYardSearch(input);
        search.FromKiln(0, ~0 & ((1 << search.tables.Stacks.Length) - 1));
        return search.best is { } found ? (PlanBuilder.Build(search.tables, found.Charges, found.Chosen), found.Score) : null;
    }

    private void FromKiln(int kiln, int unplaced)
    {
        if (kiln == tables.Kilns.Length)
        {
            Weigh();
            return;
        }

        if (tables.Kilns[kiln].Started is not { } started)
        {
            NextCharge(kiln, unplaced, 0);
            return;
        }

        var stacks = Enumerable.Range(0, tables.Stacks.Length).Where(s => started.Stacks.Contains(tables.Stacks[s].Stack.Id)).ToArray();
        foreach (var unload in tables.Kilns[kiln].UnloadStarts.Where(step => step >= tables.Kilns[kiln].StartedDry))
        {
            var charge = TimedCharge.Standing(tables, kiln, stacks, unload);
            WithWork([new(unload, charge.UnloadEnd)], () => WithCharge(charge, () => NextCharge(kiln, unplaced, charge.UnloadEnd)));
        }

        WithCharge(TimedCharge.Standing(tables, kiln, stacks, tables.Calendar.Steps), () => FromKiln(kiln + 1, unplaced));
    }

    private void NextCharge(int kiln, int unplaced, int free)
    {
        FromKiln(kiln + 1, unplaced);
        for (var set = unplaced; set > 0; set = (set - 1) & unplaced)
        {
            var stacks = Enumerable.Range(0, tables.Stacks.Length).Where(s => (set >> s & 1) != 0).ToArray();
            if (Fits(kiln, stacks))
            {
                EveryTime(kiln, stacks, unplaced & ~set, free);
            }
        }
    }

    private void EveryTime(int kiln, int[] stacks, int unplaced, int free)
    {
        var k = tables.Kilns[kiln];
        foreach (var load in k.LoadStarts.Where(step => step >= free && stacks.All(s => step >= tables.Stacks[s].AvailableStep)))
        {
            for (var warmUp = 0; warmUp < k.WarmSteps.Length; warmUp++)
            {
                foreach (var unload in k.UnloadStarts.Where(step => step > load))
                {
                    var charge = TimedCharge.Begun(tables, kiln, stacks, warmUp, load, unload);
                    var whole = new StepRange(load, charge.UnloadEnd);
                    var coil = k.HoldMostTenths + Math.Max(charge.WarmTenths, charge.RunTenths) <= k.CoilTenths;
                    if (unload >= charge.Dry && coil && !k.Kiln.Outages.Any(whole.Touches))
                    {
                        WithWork([new(load, charge.LoadEnd), new(unload, charge.UnloadEnd)], () => WithCharge(charge, () => NextCharge(kiln, unplaced, charge.UnloadEnd)));
                    }
                }
            }
        }
    }

    private bool Fits(int kiln, int[] stacks) =>
        stacks.All(s => tables.Stacks[s].Uses[kiln] is not null)
        && stacks.Sum(s => tables.Stacks[s].LoadTenths) <= tables.Kilns[kiln].CapacityTenths
        && stacks.Sum(s => tables.Stacks[s].WeightKg) <= tables.Kilns[kiln].WeightMostKg
        && stacks.All(a => stacks.All(b => a == b || tables.Together[a, b]))
        && stacks.Select(s => tables.Stacks[s].Stack.MatchedSet).Where(set => set is not null).All(set =>
            tables.Stacks.Where(s => s.Stack.MatchedSet == set).All(s => stacks.Contains(Array.IndexOf(tables.Stacks, s))));

    private void WithWork(StepRange[] added, Action then)
    {
        var all = works.Concat(added).ToList();
        if (added.All(work => all.All(start => !start.Touches(work) || all.Count(other => other.From <= start.From && start.From < other.To) <= tables.Calendar.KilnsAtOnce)))
        {
            works.AddRange(added);
            then();
            works.RemoveRange(works.Count - added.Length, added.Length);
        }
    }

    private void WithCharge(TimedCharge charge, Action then)
    {
        charges.Add(charge);
        then();
        charges.RemoveAt(charges.Count - 1);
    }

    private void Weigh()
    {
        var demand = Scoring.DemandTenths(tables, charges);
        if (demand.Select((tenths, period) => tenths - tables.SpareTenths[period] > tables.ShortMostTenths[period]).Any(over => over))
        {
            return;
        }

        var chargeOfStack = Scoring.ChargeOfStack(tables, charges);
        foreach (var chosen in servingChoices.Where(chosen => Allowed(chosen, chargeOfStack)))
        {
            var score = Scoring.Score(tables, charges, chosen);
            if (best is not { } known || score < known.Score)
            {
                best = (score, [.. charges], chosen);
            }
        }
    }

    private bool Allowed(int[] chosen, TimedCharge?[] chargeOfStack)
    {
        for (var o = 0; o < chosen.Length; o++)
        {
            for (var w = 0; chosen[o] > 0 && w < tables.Orders[o].Wood.Length; w++)
            {
                var wood = tables.Orders[o].Wood[w];
                var charge = chargeOfStack[wood.Stack];
                var wrong = wood.Kilned ? charge is null || charge.Unload == tables.Calendar.Steps : charge is not null;
                if ((chosen[o] >> w & 1) != 0 && wrong)
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Every choice of wood for the orders that the yields allow: for each order the wood as bits, or -1 for not met.</summary>
    private IEnumerable<int[]> Choices(int order, int[] chosen)
    {
        if (order == tables.Orders.Length)
        {
            return PlanBuilder.Allocate(tables, chosen) is null ? [] : [[.. chosen]];
        }

        var some = Enumerable.Range(1, (1 << tables.Orders[order].Wood.Length) - 1);
        return some.Prepend(-1).SelectMany(bits => Choices(order + 1, [.. chosen[..order], bits, .. chosen[(order + 1)..]]));
    }
}
