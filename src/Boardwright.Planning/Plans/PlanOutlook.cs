using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>Everything that follows from a plan's choices.</summary>
/// <param name="Charges">Times and cost of each charge, in the plan's order.</param>
/// <param name="Orders">Promise of each order, in the input's order.</param>
/// <param name="Heat">Heat by period.</param>
/// <param name="Score">What the plan is worth.</param>
public sealed record PlanOutlook(
    IReadOnlyList<ChargeOutlook> Charges, IReadOnlyList<OrderOutlook> Orders, IReadOnlyList<HeatOutlook> Heat, PlanScore Score)
{
    /// <summary>Works a plan out. The plan may break rules; <see cref="PlanCheck"/> says which.</summary>
    /// <exception cref="KeyNotFoundException">The plan names a kiln or stack that the input does not have, or a kiln closed to a stack.</exception>
    public static PlanOutlook Of(PlanInput input, Plan plan) => Of(new PlanTables(input), plan);

    internal static PlanOutlook Of(PlanTables tables, Plan plan)
    {
        var timed = plan.Charges.Select(charge => Timed(tables, charge)).ToList();
        var chosen = tables.Orders.Select(order => Chosen(order, plan)).ToArray();
        var chargeOfStack = Scoring.ChargeOfStack(tables, timed);
        var demand = Scoring.DemandTenths(tables, timed);
        return new(
            [.. plan.Charges.Zip(timed, (charge, times) => Outlook(tables, charge, times))],
            [.. tables.Orders.Select((order, index) => Outlook(tables, order, chosen[index], chargeOfStack))],
            [.. Enumerable.Range(0, tables.Periods).Select(period => new HeatOutlook(
                new(period * tables.PeriodSteps, (period + 1) * tables.PeriodSteps),
                Power.FromKilowatts(demand[period] / 10.0), Power.FromKilowatts(tables.SpareTenths[period] / 10.0)))],
            Scoring.Score(tables, timed, chosen, chargeOfStack, demand));
    }

    internal static TimedCharge Timed(PlanTables tables, Charge charge)
    {
        var kiln = Index(tables.Kilns.Select(k => k.Kiln.Id), charge.Kiln);
        var stacks = charge.Stacks.Select(id => Index(tables.Stacks.Select(s => s.Stack.Id), id)).ToArray();
        if (charge.Started is not null)
        {
            return TimedCharge.Standing(tables, kiln, stacks, charge.UnloadStep);
        }

        return stacks.All(s => tables.Stacks[s].Uses[kiln] is not null)
            ? TimedCharge.Begun(tables, kiln, stacks, charge.WarmUp, charge.LoadStep, charge.UnloadStep)
            : throw new KeyNotFoundException($"Kiln {charge.Kiln} is closed to a stack of {string.Join(", ", charge.Stacks)}.");
    }

    private static int Chosen(OrderTable order, Plan plan)
    {
        var servings = plan.Servings.Where(serving => serving.Order == order.Order.Id && serving.Quantity.Count > 0).ToList();
        if (Tenths.Up(servings.Sum(serving => serving.Quantity.Count)) < order.QuantityTenths)
        {
            return -1;
        }

        return servings.Aggregate(0, (bits, serving) => bits | 1 << Index(order.Order.Wood.Select(w => w.Stack), serving.Stack));
    }

    private static int Index(IEnumerable<string> ids, string id)
    {
        var index = 0;
        foreach (var known in ids)
        {
            if (known == id)
            {
                return index;
            }

            index++;
        }

        throw new KeyNotFoundException($"The input has no {id}.");
    }

    private static ChargeOutlook Outlook(PlanTables tables, Charge charge, TimedCharge times)
    {
        var slowest = times.Started ? "" : times.Stacks
            .MaxBy(s => tables.Stacks[s].Uses[times.Kiln]!.Half[tables.Calendar.DayOf(times.Load)]) is var s ? tables.Stacks[s].Stack.Id : "";
        ScheduleMildness? mildness = times.Started ? null
            : times.Stacks.Select(s => tables.Stacks[s].Stack.Mildness).Aggregate(ScheduleMildness.Mildest);
        return new(charge, times.LoadEnd, times.WarmEnd, times.Dry, times.DryMost, times.UnloadEnd, slowest, mildness, Cents.Money(times.CostCents(tables))) { HeatMoney = Cents.Money(times.HeatCents(tables)) };
    }

    private static OrderOutlook Outlook(PlanTables tables, OrderTable order, int chosen, TimedCharge?[] chargeOfStack)
    {
        if (chosen < 0)
        {
            return new(order.Order.Id, false, null, null, order.UnmetDays, order.UnmetDays);
        }

        var (half, most) = Scoring.Ready(tables, order, chosen, chargeOfStack);
        return new(
            order.Order.Id, true, tables.Calendar.DateOf(half), tables.Calendar.DateOf(most), Scoring.DaysLate(order, half), Scoring.DaysLate(order, most));
    }
}
