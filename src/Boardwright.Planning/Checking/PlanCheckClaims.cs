namespace Boardwright.Planning;

/// <content>Whether what is said to follow from a plan does follow.</content>
public static partial class PlanCheck
{
    private static void Claims(PlanInput input, Plan plan, PlanOutlook claimed, List<PlanFault> found)
    {
        long late = 0, risk = 0;
        var extra = 0m;
        foreach (var order in input.Orders)
        {
            var (met, half, most) = Promise(input, plan, order);
            var due = order.Due.DayNumber - input.Calendar.FirstDay.DayNumber;
            var counted = due >= input.Calendar.Days ? 0 : input.Calendar.Days + 7 - due;
            int lateHalf = met ? Math.Max(0, half - due) : counted, lateMost = met ? Math.Max(0, most - due) : counted;
            var said = claimed.Orders.FirstOrDefault(o => o.Order == order.Id);
            var same = said is not null && said.Met == met && said.LateDays == lateHalf && said.LateDaysMost == lateMost
                && (!met || (said.ReadyHalf == input.Calendar.DateOf(half) && said.ReadyMost == input.Calendar.DateOf(most)));
            Demand(same, PlanFaultKind.WrongClaim, $"{order.Id}: {(met ? $"ready {input.Calendar.DateOf(half):yyyy-MM-dd}, nine times in ten {input.Calendar.DateOf(most):yyyy-MM-dd}" : "not met")}; said otherwise", found);
            var cents = WholeCents(order.LateMoneyPerDay + order.Importance * input.ImportanceMoneyPerDay);
            late += lateHalf * cents;
            risk += lateMost * cents;
            extra += met ? plan.Servings.Where(s => s.Order == order.Id && s.Quantity.Count > 0).Sum(s => WholeCents(order.Wood.First(w => w.Stack == s.Stack).ExtraMoney)) : 0;
        }

        var waiting = input.Stacks.Sum(stack => WholeCents(stack.WaitingMoneyPerDay) * (plan.Charges.FirstOrDefault(c => c.Stacks.Contains(stack.Id)) is { } c ? c.UnloadStep / input.Calendar.StepsPerDay : input.Calendar.Days));
        var cost = (long)extra + waiting + plan.Charges.Sum(charge => ChargeCents(input, charge)) + HeatCents(input, plan, claimed, found);
        Demand(claimed.Score == new PlanScore(late, risk, cost), PlanFaultKind.WrongClaim, $"the score is {late}, {risk}, {cost} cents; said {claimed.Score.LateCents}, {claimed.Score.RiskCents}, {claimed.Score.CostCents}", found);
    }

    private static (bool Met, int Half, int Most) Promise(PlanInput input, Plan plan, Order order)
    {
        var servings = plan.Servings.Where(s => s.Order == order.Id && s.Quantity.Count > 0).ToList();
        if (servings.Sum(s => s.Quantity.Count) < order.Quantity.Count - Forgiven)
        {
            return (false, 0, 0);
        }

        int half = 0, most = 0;
        foreach (var serving in servings)
        {
            var charge = plan.Charges.FirstOrDefault(c => c.Stacks.Contains(serving.Stack));
            var stack = input.Stacks.First(s => s.Id == serving.Stack);
            var day = charge is null ? Math.Max(0, stack.AvailableFrom.DayNumber - input.Calendar.FirstDay.DayNumber) : charge.UnloadStep / input.Calendar.StepsPerDay;
            var dayMost = charge is null ? day : LateUnloadDay(input, charge);
            half = Math.Max(half, AfterPlaning(input, order.PlanerRuns, day));
            most = Math.Max(most, AfterPlaning(input, order.PlanerRuns, dayMost));
        }

        return (true, half, most);
    }

    /// <summary>First day the crew can unload the charge, not before the plan says, when drying takes its p90 time.</summary>
    private static int LateUnloadDay(PlanInput input, Charge charge)
    {
        var kiln = KilnOf(input, charge);
        var length = WorkSteps(input, charge).Unload.Length;
        var ready = Math.Max(HoursOf(input, charge).DryMost, Hour(input, charge.UnloadStep));
        for (var step = charge.UnloadStep; step + length <= input.Calendar.Steps; step++)
        {
            var work = new StepRange(step, step + length);
            if (Hour(input, step) >= ready - Forgiven && input.Calendar.CrewWindows.Any(window => window.Holds(work)) && !kiln.Outages.Any(work.Touches))
            {
                return step / input.Calendar.StepsPerDay;
            }
        }

        return Math.Max(input.Calendar.Days, (int)Math.Ceiling(ready / 24.0 - Forgiven)); // after the plan every day counts as a working day
    }

    private static int AfterPlaning(PlanInput input, int runs, int day)
    {
        while (runs > 0)
        {
            day++;
            if (day >= input.Calendar.Days || input.Calendar.PlanerDays.Contains(day))
            {
                runs--;
            }
        }

        return day;
    }

    private static long ChargeCents(PlanInput input, Charge charge)
    {
        var kiln = KilnOf(input, charge);
        var hours = HoursOf(input, charge);
        var step = 24.0 / input.Calendar.StepsPerDay;
        var stand = WholeCents(kiln.MoneyPerDay / input.Calendar.StepsPerDay) * (long)Math.Round((hours.Empty - hours.Load) / step);
        var hold = WholeCents(kiln.MoneyPerKwh * (decimal)(kiln.Holding.Average(power => power.Kilowatts) * step)) * (long)Math.Round((hours.Dry - hours.Heat) / step);
        if (charge.Started is not null)
        {
            return stand + hold;
        }

        var times = StacksOf(input, charge).SelectMany(stack => stack.DryingTimes).Where(time => time.KilnKind == kiln.Kind);
        return stand + hold + WholeCents(kiln.MoneyPerKwh * (decimal)kiln.StructureHeat.KilowattHours)
            + times.Sum(time => WholeCents(kiln.MoneyPerKwh * (decimal)(time.WarmUpHeat.KilowattHours + time.DryingHeat.KilowattHours)))
            - StacksOf(input, charge).Sum(stack => WholeCents(stack.GainWhenDry));
    }

    private static long HeatCents(PlanInput input, Plan plan, PlanOutlook claimed, List<PlanFault> found)
    {
        var perTenth = WholeCents(input.Heat.MoneyPerKwhGivenWay * (decimal)(0.1 * input.Heat.PeriodSteps * 24.0 / input.Calendar.StepsPerDay));
        long cents = 0;
        for (var period = 0; period < input.Heat.Shop.Count; period++)
        {
            var demand = plan.Charges.Sum(charge => DrawKw(input, charge, period, exact: false));
            var spare = Math.Floor(SpareKw(input, period) * 10.0 + Forgiven) / 10.0;
            var said = claimed.Heat.ElementAtOrDefault(period);
            Demand(said is not null && Math.Abs(said.Demand.Kilowatts - demand) < 1e-3 && Math.Abs(said.Spare.Kilowatts - spare) < 1e-3, PlanFaultKind.WrongClaim, Words($"heat period {period}: {demand:0.0} of {spare:0.0} kW; said {said?.Demand.Kilowatts:0.0} of {said?.Spare.Kilowatts:0.0}"), found);
            cents += (long)Math.Round(Math.Max(0.0, demand - spare) * 10.0) * perTenth;
        }

        return cents;
    }

    private static long WholeCents(decimal money) => (long)Math.Round(money * 100m, MidpointRounding.AwayFromZero);
}
