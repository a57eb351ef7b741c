namespace Boardwright.Planning;

/// <summary>Works out what follows from a plan's choices: when each order is ready, the heat drawn, and the score.</summary>
internal static class Scoring
{
    /// <summary>Ready days of an order drawn from the wood whose bits are set; null when it is not met that way.</summary>
    public static (int Half, int Most) Ready(PlanTables tables, OrderTable order, int chosen, TimedCharge?[] chargeOfStack)
    {
        int half = 0, most = 0;
        for (var w = 0; w < order.Wood.Length; w++)
        {
            if ((chosen >> w & 1) == 0)
            {
                continue;
            }

            var wood = order.Wood[w];
            var charge = chargeOfStack[wood.Stack];
            var day = charge is null ? tables.Stacks[wood.Stack].AvailableDay : tables.Calendar.DayOf(charge.Unload);
            var dayMost = charge is null ? day : tables.Calendar.DayOf(charge.UnloadMost);
            half = Math.Max(half, tables.ReadyDay(order.Order.PlanerRuns, day));
            most = Math.Max(most, tables.ReadyDay(order.Order.PlanerRuns, dayMost));
        }

        return (half, most);
    }

    public static int DaysLate(OrderTable order, int readyDay) => Math.Max(0, readyDay - order.DueDay);

    public static int[] DemandTenths(PlanTables tables, IReadOnlyList<TimedCharge> charges)
    {
        var demand = new int[tables.Periods];
        foreach (var charge in charges.Where(c => tables.Kilns[c.Kiln].OnBoiler))
        {
            for (var period = charge.LoadEnd / tables.PeriodSteps; period < tables.Periods && period * tables.PeriodSteps < charge.Dry; period++)
            {
                demand[period] += charge.DemandTenths(tables, period);
            }
        }

        return demand;
    }

    public static TimedCharge?[] ChargeOfStack(PlanTables tables, IReadOnlyList<TimedCharge> charges)
    {
        var found = new TimedCharge?[tables.Stacks.Length];
        foreach (var charge in charges)
        {
            foreach (var stack in charge.Stacks)
            {
                found[stack] = charge;
            }
        }

        return found;
    }

    /// <summary>The score; <paramref name="chosen"/> has for each order the wood it draws from as bits, or -1 where it is not met.</summary>
    public static PlanScore Score(PlanTables tables, IReadOnlyList<TimedCharge> charges, ReadOnlySpan<int> chosen) =>
        Score(tables, charges, chosen, ChargeOfStack(tables, charges), DemandTenths(tables, charges));

    /// <summary>The same where it is known already which charge each stack is in, and what heat is drawn in each period.</summary>
    public static PlanScore Score(PlanTables tables, IReadOnlyList<TimedCharge> charges, ReadOnlySpan<int> chosen, TimedCharge?[] chargeOfStack, ReadOnlySpan<int> demand)
    {
        long late = 0, risk = 0, cost = 0;
        for (var charge = 0; charge < charges.Count; charge++)
        {
            cost += charges[charge].CostCents(tables);
        }

        for (var o = 0; o < tables.Orders.Length; o++)
        {
            var order = tables.Orders[o];
            if (chosen[o] < 0)
            {
                late += order.UnmetDays * order.CentsPerDay;
                risk += order.UnmetDays * order.CentsPerDay;
                continue;
            }

            var (half, most) = Ready(tables, order, chosen[o], chargeOfStack);
            late += DaysLate(order, half) * order.CentsPerDay;
            risk += DaysLate(order, most) * order.CentsPerDay;
            for (var w = 0; w < order.Wood.Length; w++)
            {
                cost += (chosen[o] >> w & 1) != 0 ? order.Wood[w].ExtraCents : 0;
            }
        }

        for (var s = 0; s < tables.Stacks.Length; s++)
        {
            cost += tables.Stacks[s].WaitCentsPerDay * Math.Min(tables.Calendar.Days, chargeOfStack[s] is { } charge ? tables.Calendar.DayOf(charge.Unload) : tables.Calendar.Days);
        }

        for (var period = 0; period < demand.Length; period++)
        {
            cost += tables.ShortCents * Math.Max(0, demand[period] - tables.SpareTenths[period]);
        }

        return new(late, risk, cost);
    }
}
