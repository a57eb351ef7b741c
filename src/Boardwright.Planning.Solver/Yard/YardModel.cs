using Google.OrTools.Sat;
using Google.OrTools.Util;

namespace Boardwright.Planning.Solver;

/// <summary>The yard as a constraint model; see docs/methods/kiln-plan.md for the equations.</summary>
/// <remarks>
/// Each kiln has a row of places for charges, used from the first on. Values that the objective pushes down (drying times, ready days,
/// heat) are bounded from below only; what a solution means is read from its choices alone (<see cref="Read"/>).
/// </remarks>
internal sealed partial class YardModel
{
    private readonly PlanTables tables;
    private readonly Func<int, int> chargesEachKiln;
    private readonly List<ChargeSlot> slots = [];
    private readonly List<LinearExpr> costs = [];

    /// <param name="tables">The yard.</param>
    /// <param name="chargesMost">New charges in each kiln, at most.</param>
    /// <param name="start">A plan the model must be able to hold.</param>
    public YardModel(PlanTables tables, int chargesMost, Plan start)
    {
        this.tables = tables;
        chargesEachKiln = kiln => Math.Max(chargesMost, start.Charges.Count(charge => charge.Started is null && charge.Kiln == tables.Kilns[kiln].Kiln.Id));
        for (var kiln = 0; kiln < tables.Kilns.Length; kiln++)
        {
            KilnRow(kiln);
        }

        PlaceStacks();
        Crew();
        Heat();
        Orders();
        Cost = LinearExpr.Sum(costs);
    }

    public CpModel Model { get; } = new();

    public LinearExpr Late { get; private set; } = LinearExpr.Constant(0);

    public LinearExpr Risk { get; private set; } = LinearExpr.Constant(0);

    public LinearExpr Cost { get; }

    private int Steps => tables.Calendar.Steps;

    private int PerDay => tables.Calendar.StepsPerDay;

    private void KilnRow(int kiln)
    {
        var k = tables.Kilns[kiln];
        ChargeSlot? before = null;
        var intervals = StepRange.Joined(k.Kiln.Outages).Select(outage => Model.NewFixedSizeIntervalVar(outage.From, outage.Length, "outage")).ToList();
        if (k.Started is not null)
        {
            before = StandingSlot(kiln);
            slots.Add(before);
        }

        for (var place = 0; place < Places(kiln); place++)
        {
            var slot = NewSlot(kiln, place);
            intervals.Add(Model.NewOptionalIntervalVar(slot.Load, slot.Stand, slot.UnloadEnd, slot.Used, "stand"));
            if (before is not null)
            {
                Model.Add(slot.Load >= before.UnloadEnd).OnlyEnforceIf(slot.Used);
                Model.AddImplication(slot.Used, before.Emptied);
            }

            slots.Add(slot);
            before = slot;
        }

        Model.AddNoOverlap(intervals);
    }

    /// <summary>No more charges than stacks, nor than fit into the plan one after the other, nor than the search is limited to.</summary>
    private int Places(int kiln)
    {
        var k = tables.Kilns[kiln];
        var uses = tables.Stacks.Where(s => s.Uses[kiln] is not null).Select(s => s.Uses[kiln]!).ToList();
        if (uses.Count == 0 || k.LoadStarts.Length == 0 || k.UnloadStarts.Length == 0)
        {
            return 0;
        }

        var shortest = k.Loading + k.WarmSteps.Min() + uses.Min(use => use.Half.Min()) + k.Unloading;
        return Math.Min(chargesEachKiln(kiln), Math.Min(uses.Count, (k.UnloadStarts[^1] + k.Unloading - Math.Max(k.LoadStarts[0], k.StartedDry)) / shortest));
    }

    private ChargeSlot NewSlot(int kiln, int place)
    {
        var k = tables.Kilns[kiln];
        var name = $"{k.Kiln.Id}.{place}";
        var used = Model.NewBoolVar($"{name} used");
        var load = Model.NewIntVarFromDomain(Domain.FromValues([.. k.LoadStarts.Select(step => (long)step)]), $"{name} load");
        var unload = Model.NewIntVarFromDomain(Domain.FromValues([.. k.UnloadStarts.Select(step => (long)step)]), $"{name} unload");
        var warm = k.WarmSteps.Select((_, j) => Model.NewBoolVar($"{name} warm-up {j}")).ToArray();
        var warmSteps = LinearExpr.WeightedSum(warm, k.WarmSteps.Select(steps => (long)steps));
        var uses = tables.Stacks.Where(s => s.Uses[kiln] is not null).Select(s => s.Uses[kiln]!).ToList();
        var half = Model.NewIntVar(0, uses.Max(use => use.Half.Max()), $"{name} p50");
        var most = Model.NewIntVar(0, uses.Max(use => use.Most.Max()), $"{name} p90");
        var loadEnd = load + k.Loading;
        var slot = new ChargeSlot
        {
            Kiln = kiln,
            Standing = false,
            Used = used,
            Emptied = used,
            Load = load,
            Warm = warm,
            Half = half,
            Most = most,
            Unload = unload,
            LoadDay = DayOf(load, name),
            UnloadDay = DayOf(unload, name),
            UnloadMost = UnloadMost(k, uses.Max(use => use.Most.Max()) + k.WarmSteps.Max(), name, out var mostDay),
            UnloadMostDay = mostDay,
            LoadEnd = loadEnd,
            WarmEnd = loadEnd + warmSteps,
            Dry = loadEnd + warmSteps + half,
            DryMost = loadEnd + warmSteps + most,
            UnloadEnd = unload + k.Unloading,
            Stand = Model.NewIntVar(0, Steps, $"{name} stands"),
            Has = [.. tables.Stacks.Select(s => s.Uses[kiln] is null ? null : Model.NewBoolVar($"{name} has {s.Stack.Id}"))],
        };
        Model.Add(LinearExpr.Sum(warm) == used);
        Model.Add(slot.Unload >= slot.Dry).OnlyEnforceIf(used);
        Model.Add(slot.UnloadMost >= slot.DryMost).OnlyEnforceIf(used);
        Model.Add(slot.UnloadMost >= slot.Unload).OnlyEnforceIf(used);
        Model.Add(load == k.LoadStarts[0]).OnlyEnforceIf(used.Not());
        Model.Add(unload == k.UnloadStarts[0]).OnlyEnforceIf(used.Not());
        costs.Add(slot.Stand * k.StandCentsPerStep);
        costs.Add((warmSteps + half) * k.HoldCentsPerStep);
        costs.Add(used * k.StructureCents);
        return slot;
    }

    private ChargeSlot StandingSlot(int kiln)
    {
        var k = tables.Kilns[kiln];
        var name = k.Started!.Id;
        var emptied = Model.NewBoolVar($"{name} emptied");
        var unload = Model.NewIntVarFromDomain(Domain.FromValues([.. k.UnloadStarts.Where(step => step >= k.StartedDry).Append(Steps).Select(step => (long)step)]), $"{name} unload");
        Model.Add(unload == Steps).OnlyEnforceIf(emptied.Not());
        Model.Add(unload <= Steps - 1).OnlyEnforceIf(emptied);
        var zero = Model.NewConstant(0);
        var slot = new ChargeSlot
        {
            Kiln = kiln,
            Standing = true,
            Used = emptied,
            Emptied = emptied,
            Load = zero,
            LoadDay = zero,
            Warm = [],
            Half = zero,
            Most = zero,
            Unload = unload,
            UnloadDay = DayOf(unload, name),
            UnloadMost = UnloadMost(k, k.StartedDryMost, name, out var mostDay),
            UnloadMostDay = mostDay,
            LoadEnd = zero,
            WarmEnd = zero,
            Dry = LinearExpr.Constant(k.StartedDry),
            DryMost = LinearExpr.Constant(k.StartedDryMost),
            UnloadEnd = unload + emptied * k.Unloading,
            Stand = zero,
            Has = [.. tables.Stacks.Select(_ => (BoolVar?)null)],
        };
        Model.Add(slot.UnloadMost >= slot.DryMost).OnlyEnforceIf(emptied);
        Model.Add(slot.UnloadMost >= unload).OnlyEnforceIf(emptied);
        costs.Add(slot.UnloadEnd * k.StandCentsPerStep);
        costs.Add(LinearExpr.Constant(k.StartedDry * k.HoldCentsPerStep));
        return slot;
    }

    private IntVar DayOf(IntVar step, string name)
    {
        var day = Model.NewIntVar(0, tables.Calendar.Days, $"{name} day");
        Model.AddLinearConstraint(step - day * PerDay, 0, PerDay - 1);
        return day;
    }

    /// <summary>When unloading can begin at p90: a step with a crew, or the midnight of a day after the plan.</summary>
    private IntVar UnloadMost(KilnTable k, int longest, string name, out IntVar day)
    {
        var daysAfter = longest / PerDay + 2;
        var after = Enumerable.Range(0, daysAfter).Select(j => (long)(Steps + j * PerDay));
        var step = Model.NewIntVarFromDomain(Domain.FromValues([.. k.UnloadStarts.Select(s => (long)s).Concat(after)]), $"{name} unload p90");
        day = Model.NewIntVar(0, tables.Calendar.Days + daysAfter, $"{name} day p90");
        Model.AddLinearConstraint(step - day * PerDay, 0, PerDay - 1);
        return step;
    }

    private void PlaceStacks()
    {
        for (var s = 0; s < tables.Stacks.Length; s++)
        {
            Model.AddAtMostOne(PlacesOf(s));
            DryingTimes(s);
            Waiting(s);
            costs.Add(LinearExpr.Sum(PlacesOf(s)) * -tables.Stacks[s].GainCents);
        }

        foreach (var slot in slots.Where(slot => !slot.Standing))
        {
            var k = tables.Kilns[slot.Kiln];
            var here = Enumerable.Range(0, tables.Stacks.Length).Where(s => slot.Has[s] is not null).ToList();
            Model.AddMaxEquality(slot.Used, here.Select(s => slot.Has[s]!));
            Model.Add(LinearExpr.WeightedSum(here.Select(s => slot.Has[s]!), here.Select(s => (long)tables.Stacks[s].LoadTenths)) <= k.CapacityTenths);
            if (k.WeightMostKg < int.MaxValue)
            {
                Model.Add(LinearExpr.WeightedSum(here.Select(s => slot.Has[s]!), here.Select(s => (long)tables.Stacks[s].WeightKg)) <= k.WeightMostKg);
            }

            foreach (var a in here)
            {
                costs.Add(slot.Has[a]! * tables.Stacks[a].Uses[slot.Kiln]!.HeatCents);
                if (tables.Stacks[a].AvailableStep > 0)
                {
                    Model.Add(slot.Load >= tables.Stacks[a].AvailableStep).OnlyEnforceIf(slot.Has[a]!);
                }

                foreach (var b in here.Where(b => b > a && !tables.Together[a, b]))
                {
                    Model.AddBoolOr([slot.Has[a]!.Not(), slot.Has[b]!.Not()]);
                }
            }

            Coil(slot, here);
            MatchedSets(slot);
        }
    }

    private void Waiting(int stack)
    {
        if (tables.Stacks[stack].WaitCentsPerDay == 0)
        {
            return;
        }

        var days = Model.NewIntVar(0, tables.Calendar.Days, "waits");
        var inside = new List<ILiteral>();
        foreach (var slot in slots)
        {
            var here = slot.Standing && IsIn(slot, stack) ? slot.Emptied : slot.Has[stack];
            if (here is not null)
            {
                Model.Add(days >= slot.UnloadDay).OnlyEnforceIf(here);
                inside.Add(here.Not());
            }
        }

        Model.Add(days == tables.Calendar.Days).OnlyEnforceIf([.. inside]);
        costs.Add(days * tables.Stacks[stack].WaitCentsPerDay);
    }

    /// <summary>Whether a stack stands in a started charge.</summary>
    private bool IsIn(ChargeSlot standing, int stack) => tables.Kilns[standing.Kiln].Started!.Stacks.Contains(tables.Stacks[stack].Stack.Id);

    private IEnumerable<BoolVar> PlacesOf(int stack) => slots.Select(slot => slot.Has[stack]).OfType<BoolVar>();

    private void MatchedSets(ChargeSlot slot)
    {
        foreach (var set in Enumerable.Range(0, tables.Stacks.Length).Where(s => tables.Stacks[s].Stack.MatchedSet is not null && !tables.Stacks[s].Started).GroupBy(s => tables.Stacks[s].Stack.MatchedSet))
        {
            var members = set.Select(s => slot.Has[s]).ToList();
            foreach (var member in members.OfType<BoolVar>())
            {
                if (members.Contains(null))
                {
                    Model.AddBoolAnd([member.Not()]);
                }
                else
                {
                    Model.AddImplication(members[0]!, member);
                    Model.AddImplication(member, members[0]!);
                }
            }
        }
    }

    /// <summary>A charge takes as long as its slowest stack, whose time depends on the day of loading.</summary>
    private void DryingTimes(int stack)
    {
        var day = Model.NewIntVar(0, tables.Calendar.Days - 1, $"{tables.Stacks[stack].Stack.Id} load day");
        foreach (var group in slots.Where(slot => slot.Has[stack] is not null).GroupBy(slot => slot.Kiln))
        {
            var use = tables.Stacks[stack].Uses[group.Key]!;
            LinearExpr half = ByDay(use.Half, day), most = ByDay(use.Most, day);
            foreach (var slot in group)
            {
                Model.Add(slot.Half >= half).OnlyEnforceIf(slot.Has[stack]!);
                Model.Add(slot.Most >= most).OnlyEnforceIf(slot.Has[stack]!);
                Model.Add(day == slot.LoadDay).OnlyEnforceIf(slot.Has[stack]!);
            }
        }
    }

    private LinearExpr ByDay(int[] steps, IntVar day)
    {
        if (steps.All(value => value == steps[0]))
        {
            return LinearExpr.Constant(steps[0]);
        }

        var value = Model.NewIntVar(steps.Min(), steps.Max(), "steps by day");
        Model.AddElement(day, steps.Select(v => (long)v), value);
        return value;
    }

    private void Crew()
    {
        var works = new List<IntervalVar>();
        foreach (var slot in slots)
        {
            var k = tables.Kilns[slot.Kiln];
            works.Add(Model.NewOptionalFixedSizeIntervalVar(slot.Unload, k.Unloading, slot.Emptied, "unloading"));
            if (!slot.Standing)
            {
                works.Add(Model.NewOptionalFixedSizeIntervalVar(slot.Load, k.Loading, slot.Used, "loading"));
            }
        }

        if (tables.Calendar.KilnsAtOnce == 1)
        {
            Model.AddNoOverlap(works);
        }
        else
        {
            Model.AddCumulative(tables.Calendar.KilnsAtOnce).AddDemands(works, works.Select(_ => 1L));
        }
    }
}
