using Boardwright.Quantities;

using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver;

/// <summary>Finds why a plan has orders late, by lifting one limit at a time.</summary>
/// <remarks>
/// First what needs no search: is there enough wood, and would it be dry in time with kilns, people and heat without limit? Would it be late even
/// with the yard to itself: then which limit, lifted, helps most? Only then, for one limit at a time, how few days late the order could be
/// with no other order later than in the plan. What helps most is the reason.
/// </remarks>
public static class LateReasons
{
    /// <summary>A reason for each order that the plan has late or does not meet.</summary>
    /// <param name="input">The yard.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="limitsEach">Limits of each of the few short searches an order needs.</param>
    /// <param name="cancel">Ends early; orders not looked at are left out.</param>
    public static IReadOnlyList<LateReason> Find(PlanInput input, Plan plan, SolverLimits limitsEach, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(limitsEach);
        var tables = new PlanTables(input);
        var outlook = PlanOutlook.Of(tables, plan);
        return [.. outlook.Orders.Select((order, index) => (order, index)).Where(o => o.order.LateDays > 0).TakeWhile(_ => !cancel.IsCancellationRequested).Select(o => Reason(tables, plan, outlook, o.index, limitsEach, cancel))];
    }

    private static LateReason Reason(PlanTables tables, Plan plan, PlanOutlook outlook, int index, SolverLimits limits, CancellationToken cancel)
    {
        var order = tables.Orders[index];
        var id = order.Order.Id;
        var wood = order.Wood.Sum(w => (long)tables.Stacks[w.Stack].YieldTenths) / 10.0;
        if (EarliestReady.Day(tables, order) is not { } day)
        {
            return new(id, [LateCause.NoStock], FormattableString.Invariant($"no stock: its wood yields {wood:0} of {order.Order.Quantity.Count:0} bf"));
        }

        if (day > order.DueDay)
        {
            return new(id, [LateCause.NotDry], day < tables.Calendar.Days
                ? FormattableString.Invariant($"its wood is not ready before {tables.Calendar.DateOf(day):d MMM yyyy}, whatever else is done")
                : "its wood is not ready within the plan, whatever else is done");
        }

        (LateCause Cause, string Words, PlanInput Input, bool OthersKept)[] tries =
        [
            (LateCause.Heat, "heat is short", WithHeat(tables.Input), true),
            (LateCause.Crew, "nobody is there to load or unload", WithCrew(tables.Input), true),
            (LateCause.KilnFull, "the kilns are full", WithKilns(tables.Input), true),
            (LateCause.OtherOrders, "other orders go first" + (InItsWay.Of(tables, plan, index) is { } way ? $": {way}" : ""), tables.Input, false),
        ];
        var late = outlook.Orders[index].LateDays;
        var alone = Alone(tables.Input, index);
        var days = alone > 0
            ? tries.Select(t => t.OthersKept ? Math.Min(late, late - alone + Alone(t.Input, index)) : late).ToList() // of the days it would be late with the yard to itself
            : [.. tries.Select(t => t.OthersKept ? DaysLate(t.Input, plan, outlook, index, limits, cancel) : alone)];
        var fewest = days.Min();
        var found = tries.Where((_, t) => days[t] == fewest && fewest < late).ToList();
        return found.Count > 0
            ? new(id, [.. found.Select(t => t.Cause)], string.Join(", or ", found.Select(t => t.Words)) + (fewest <= 0 ? "" : FormattableString.Invariant($" (for {late - fewest} of the {late} days)")))
            : new(id, [LateCause.SeveralThings], "no one thing alone would make it less late");
    }

    /// <summary>Days late when the order has the yard to itself, each charge as early as it can be; no search is needed.</summary>
    private static int Alone(PlanInput input, int index)
    {
        var tables = new PlanTables(input with { Orders = [input.Orders[index]] });
        return PlanOutlook.Of(tables, GreedyPlan.Build(tables)).Orders[0].LateDays;
    }

    /// <summary>Fewest days late found for the order when one limit is lifted; as many as in the plan when none is found.</summary>
    private static int DaysLate(PlanInput input, Plan plan, PlanOutlook outlook, int index, SolverLimits limits, CancellationToken cancel)
    {
        var model = new YardModel(new PlanTables(input), limits.ChargesEachKiln, plan);
        model.Hint(plan);
        for (var o = 0; o < outlook.Orders.Count; o++)
        {
            model.Model.Add(model.DaysLate[o] <= outlook.Orders[o].LateDays - (o == index ? 1 : 0));
        }

        model.Model.Minimize(model.DaysLate[index]);
        if (cancel.IsCancellationRequested)
        {
            return outlook.Orders[index].LateDays;
        }

        var solver = new CpSolver { StringParameters = limits.Parameters(limits.Seconds) + ",repair_hint:true" };
        using (cancel.Register(solver.StopSearch))
        {
            return solver.Solve(model.Model) is CpSolverStatus.Feasible or CpSolverStatus.Optimal
                ? (int)solver.Value(model.DaysLate[index])
                : outlook.Orders[index].LateDays;
        }
    }

    private static PlanInput WithHeat(PlanInput input) =>
        input with { Heat = input.Heat with { Boilers = [.. input.Heat.Boilers, new("heat without limit", Power.FromKilowatts(1e5), [])] } };

    private static PlanInput WithCrew(PlanInput input) => input with
    {
        Calendar = input.Calendar with
        {
            KilnsAtOnce = 100,
            CrewWindows = [.. Enumerable.Range(0, input.Calendar.Days).Select(day => new StepRange(day * input.Calendar.StepsPerDay, (day + 1) * input.Calendar.StepsPerDay))],
        },
    };

    private static PlanInput WithKilns(PlanInput input) =>
        input with { Kilns = [.. input.Kilns, .. input.Kilns.Select(kiln => kiln with { Id = "another " + kiln.Id, Outages = [] })] };
}
