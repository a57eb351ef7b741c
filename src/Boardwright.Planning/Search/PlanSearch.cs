using Boardwright.Numerics;

namespace Boardwright.Planning;

/// <summary>Looks for better plans by changing one at a time: which stacks go together, in which kiln, and which charge is placed first.</summary>
/// <remarks>
/// A list of charges is turned into times by a <see cref="Timetable"/>, so every plan it visits keeps the rules of kilns, crew and heat. Worse plans are
/// accepted now and then, ever less often (simulated annealing); the best plan by the levels of the score is kept. At first only stacks that may serve an order
/// are moved, several times over, for lateness is theirs; then all stacks, for what they gain.
/// </remarks>
internal sealed class PlanSearch
{
    private const double WarmShare = 0.05; // of the first plan's worth: how much worse a change may be at first
    private const double ColdCents = 20.0;
    private const double NearWarmCents = 1500.0; // a few changes more on the way to fewer
    private const int CheckEvery = 16;
    private const int Rounds = 3;
    private const double RoundsShare = 0.75; // of the work: for the stacks that may serve an order
    private const double LastWarmShare = 0.1; // of the first heat: the last round keeps what the others found

    private readonly PlanTables tables;
    private readonly RandomSequence chance;
    private readonly Timetable timetable;
    private readonly WoodChoice wood;
    private readonly int[][] all; // stacks that are moved together: one, or a matched set
    private readonly int[][] asked; // those that may serve an order that counts
    private int[][] units = []; // those being moved now
    private readonly TimedCharge?[] chargeOfStack;
    private List<Grouped> list = [];
    private SearchAim aim = null!;

    public PlanSearch(PlanTables tables, ulong seed)
    {
        this.tables = tables;
        chance = new(seed, 1);
        timetable = new(tables);
        wood = new(tables);
        chargeOfStack = new TimedCharge?[tables.Stacks.Length];
        var asItStands = tables.Orders.SelectMany(order => order.Wood).Where(one => !one.Kilned).Select(one => one.Stack).ToHashSet();
        all =
        [
            .. Enumerable.Range(0, tables.Stacks.Length).GroupBy(s => tables.Stacks[s].Stack.MatchedSet ?? tables.Stacks[s].Stack.Id + "\0").Select(group => group.ToArray())
                .Where(unit => unit.All(s => !tables.Stacks[s].Started && !asItStands.Contains(s)) && Enumerable.Range(0, tables.Kilns.Length).Any(kiln => timetable.Fits(kiln, unit))),
        ];
        var serving = tables.Orders.Where(order => order is { UnmetDays: > 0, CentsPerDay: > 0 }).SelectMany(order => order.Wood).Select(one => one.Stack).ToHashSet();
        asked = [.. all.Where(unit => unit.Any(serving.Contains))];
    }

    public Plan Best { get; private set; } = null!;

    public PlanScore Score { get; private set; }

    /// <summary>Searches from a plan until progress is 1.</summary>
    /// <param name="start">A sound plan.</param>
    /// <param name="progress">How much of the allowed work is done, 0 to 1; asked now and then with the number of plans visited.</param>
    /// <param name="better">Told of each better plan.</param>
    public void Run(Plan start, Func<int, double> progress, Action<Plan, PlanScore>? better = null)
    {
        (Best, Score) = (start, PlanOutlook.Of(tables, start).Score);
        aim = new LeastScore(Score);
        units = all;
        Begin(start);
        if (all.Length == 0)
        {
            return;
        }

        var warm = Math.Max(ColdCents, WarmShare * Math.Abs(Visit(better)));
        var visited = 0;
        for (var round = 0; round < Rounds && asked.Length > 0 && asked.Length < all.Length; round++)
        {
            units = asked;
            Begin(start);
            Anneal(warm, RoundsShare * round / Rounds, RoundsShare * (round + 1) / Rounds);
        }

        var many = units == asked;
        units = all;
        Begin(Best);
        Anneal(many ? Math.Max(ColdCents, LastWarmShare * warm) : warm, many ? RoundsShare : 0.0, 1.0);

        void Anneal(double first, double from, double to)
        {
            var temperature = first;
            for (var energy = Visit(better); ;)
            {
                if (++visited % CheckEvery == 0)
                {
                    var done = progress(visited);
                    if (done >= to)
                    {
                        return;
                    }

                    temperature = first * Math.Pow(ColdCents / first, Math.Max(0.0, (done - from) / (to - from)));
                }

                energy = Accepted(energy, temperature, better);
            }
        }
    }

    /// <summary>Looks for a plan as good as one found that changes less against an earlier one; the one found where there is none.</summary>
    /// <param name="earlier">The earlier plan, under today's facts.</param>
    /// <param name="found">A sound plan.</param>
    /// <param name="worthCents">What a change has to save, in risk and cost together.</param>
    /// <param name="visits">Plans visited.</param>
    /// <param name="isOver">Asked now and then; true ends it.</param>
    public void FewerChanges(Plan earlier, Plan found, long worthCents, int visits, Func<bool> isOver)
    {
        (Best, Score) = (found, PlanOutlook.Of(tables, found).Score);
        aim = new FewestChanges(tables, earlier, found, worthCents);
        units = all;
        if (all.Length == 0)
        {
            return;
        }

        // From the plan found back towards the earlier one, then from the earlier one on.
        foreach (var start in new[] { found, earlier })
        {
            Begin(start);
            var energy = Visit(null);
            for (var visited = 0; visited < visits / 2 && !(visited % CheckEvery == 0 && isOver()); visited++)
            {
                energy = Accepted(energy, NearWarmCents * Math.Pow(ColdCents / NearWarmCents, 2.0 * visited / visits), null);
            }
        }
    }

    // A plan's charges with the stacks that are moved now.
    private void Begin(Plan plan)
    {
        var moved = units.SelectMany(unit => unit).ToHashSet();
        list = [.. plan.Charges.Where(charge => charge.Started is null).OrderBy(charge => charge.LoadStep).Select(charge => PlanOutlook.Timed(tables, charge))
            .Select(charge => new Grouped(charge.Kiln, [.. charge.Stacks.Where(moved.Contains)])).Where(group => group.Stacks.Length > 0)];
    }

    // One change, kept or taken back; the worth of the list then.
    private double Accepted(double energy, double temperature, Action<Plan, PlanScore>? better)
    {
        var before = list;
        list = [.. before];
        if (!Change())
        {
            list = before;
            return energy;
        }

        var found = Visit(better);
        if (found <= energy || chance.NextUniform() < Math.Exp((energy - found) / temperature))
        {
            return found;
        }

        list = before;
        return energy;
    }

    // What the list's plan is worth on the way.
    private double Visit(Action<Plan, PlanScore>? better)
    {
        timetable.Clear();
        Array.Clear(chargeOfStack);
        foreach (var group in list)
        {
            if (timetable.First(group.Kiln, group.Stacks) is { } charge)
            {
                timetable.Add(charge);
            }
        }

        foreach (var charge in timetable.Charges)
        {
            foreach (var stack in charge.Stacks)
            {
                chargeOfStack[stack] = charge;
            }
        }

        var chosen = wood.For(chargeOfStack);
        var score = Scoring.Score(tables, timetable.Charges, chosen, chargeOfStack, timetable.DemandTenths);
        if (aim.Takes(score, chargeOfStack))
        {
            (Best, Score) = (PlanBuilder.Build(tables, timetable.Charges, chosen), score);
            better?.Invoke(Best, Score);
        }

        return aim.Energy(score, chargeOfStack);
    }

    private bool Change() => chance.NextIndex(10) switch
    {
        < 4 => MoveUnit(),
        < 6 => SwapUnits(),
        < 8 => MoveGroup(),
        _ => SwapGroups(),
    };

    private bool MoveUnit()
    {
        var unit = units[chance.NextIndex(units.Length)];
        var from = list.FindIndex(group => group.Stacks.Contains(unit[0]));
        if (from >= 0)
        {
            Leave(from, unit);
        }

        var where = chance.NextIndex(8);
        if (where == 0 && from >= 0)
        {
            return true; // out of the plan
        }

        return where <= 2 ? Alone(unit) : Join(unit);
    }

    private bool Alone(int[] unit)
    {
        var kiln = chance.NextIndex(tables.Kilns.Length);
        if (!timetable.Fits(kiln, unit))
        {
            return false;
        }

        list.Insert(chance.NextIndex(list.Count + 1), new(kiln, unit));
        return true;
    }

    private bool Join(int[] unit)
    {
        if (list.Count == 0)
        {
            return false;
        }

        var start = chance.NextIndex(list.Count);
        for (var i = 0; i < Math.Min(list.Count, 8); i++)
        {
            var g = (start + i) % list.Count;
            int[] together = [.. list[g].Stacks, .. unit];
            if (timetable.Fits(list[g].Kiln, together))
            {
                list[g] = list[g] with { Stacks = together };
                return true;
            }
        }

        return false;
    }

    private bool SwapUnits()
    {
        if (list.Count < 2)
        {
            return false;
        }

        var (a, b) = (chance.NextIndex(list.Count), chance.NextIndex(list.Count));
        if (a == b)
        {
            return false;
        }

        var (one, other) = (UnitIn(a), UnitIn(b));
        int[] first = [.. list[a].Stacks.Except(one), .. other];
        int[] second = [.. list[b].Stacks.Except(other), .. one];
        if (!timetable.Fits(list[a].Kiln, first) || !timetable.Fits(list[b].Kiln, second))
        {
            return false;
        }

        (list[a], list[b]) = (list[a] with { Stacks = first }, list[b] with { Stacks = second });
        return true;
    }

    private bool MoveGroup()
    {
        if (list.Count == 0)
        {
            return false;
        }

        var from = chance.NextIndex(list.Count);
        var group = list[from];
        list.RemoveAt(from);
        var kiln = chance.NextIndex(2) == 0 ? chance.NextIndex(tables.Kilns.Length) : group.Kiln;
        list.Insert(chance.NextIndex(list.Count + 1), timetable.Fits(kiln, group.Stacks) ? group with { Kiln = kiln } : group);
        return true;
    }

    private bool SwapGroups()
    {
        if (list.Count < 2)
        {
            return false;
        }

        var (a, b) = (chance.NextIndex(list.Count), chance.NextIndex(list.Count));
        var (one, other) = (list[a], list[b]);
        var exchange = one.Kiln != other.Kiln && timetable.Fits(other.Kiln, one.Stacks) && timetable.Fits(one.Kiln, other.Stacks);
        (list[a], list[b]) = exchange ? (one with { Stacks = other.Stacks }, other with { Stacks = one.Stacks }) : (other, one);
        return a != b;
    }

    private int[] UnitIn(int group)
    {
        var stack = list[group].Stacks[chance.NextIndex(list[group].Stacks.Length)];
        return tables.Stacks[stack].Stack.MatchedSet is null ? [stack] : Array.Find(units, unit => unit.Contains(stack))!;
    }

    private void Leave(int from, int[] unit)
    {
        int[] rest = [.. list[from].Stacks.Except(unit)];
        if (rest.Length == 0)
        {
            list.RemoveAt(from);
        }
        else
        {
            list[from] = list[from] with { Stacks = rest };
        }
    }
}
