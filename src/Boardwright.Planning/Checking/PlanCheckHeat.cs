namespace Boardwright.Planning;

/// <content>The rules of heat.</content>
public static partial class PlanCheck
{
    private static void Heat(PlanInput input, Plan plan, List<PlanFault> found)
    {
        foreach (var charge in plan.Charges.Where(charge => charge.Started is null && charge.Stacks.Count > 0))
        {
            var kiln = KilnOf(input, charge);
            var (warm, run) = Draws(input, charge, exact: true);
            var most = kiln.Holding.Max(power => power.Kilowatts) + Math.Max(warm, run);
            Demand(kiln.Coil is not { } coil || most <= coil.Kilowatts + Forgiven, PlanFaultKind.CoilTooSmall, Words($"kiln {kiln.Id} on {input.Calendar.TimeOf(charge.LoadStep):yyyy-MM-dd}: {most:0.0} kW wanted, its coil gives {kiln.Coil?.Kilowatts:0.0}"), found);
        }

        for (var period = 0; period < input.Heat.Shop.Count; period++)
        {
            var spare = SpareKw(input, period);
            var demand = plan.Charges.Sum(charge => DrawKw(input, charge, period, exact: true));
            var started = plan.Charges.Where(charge => charge.Started is not null).Sum(charge => DrawKw(input, charge, period, exact: true));
            var most = Math.Max(spare + Math.Min(input.Heat.ShopGivesWay.Kilowatts, input.Heat.Shop[period].Kilowatts), started);
            var time = input.Calendar.TimeOf(period * input.Heat.PeriodSteps);
            Demand(demand <= most + Forgiven, PlanFaultKind.HeatShort, Words($"from {time:yyyy-MM-dd HH:mm}: the kilns draw {demand:0.0} kW, at most {most:0.0} can be had"), found);
        }
    }

    private static double SpareKw(PlanInput input, int period)
    {
        var steps = new StepRange(period * input.Heat.PeriodSteps, (period + 1) * input.Heat.PeriodSteps);
        var boilers = input.Heat.Boilers.Where(boiler => boiler.Outages.All(outage => outage.To <= steps.From || steps.To <= outage.From));
        return Math.Max(0.0, boilers.Sum(boiler => boiler.Output.Kilowatts) - input.Heat.Shop[period].Kilowatts);
    }

    /// <summary>The most a charge draws in a period. Exact, or with each part rounded up to a tenth of a kilowatt as plans count.</summary>
    private static double DrawKw(PlanInput input, Charge charge, int period, bool exact)
    {
        var kiln = KilnOf(input, charge);
        var hours = HoursOf(input, charge);
        double from = Hour(input, period * input.Heat.PeriodSteps), to = Hour(input, (period + 1) * input.Heat.PeriodSteps);
        bool Overlaps(double start, double end) => start < end - Forgiven && start < to - Forgiven && from < end - Forgiven;
        if (kiln.Coil is null || !Overlaps(hours.Heat, hours.Dry))
        {
            return 0.0;
        }

        var (warm, run) = Draws(input, charge, exact);
        var above = Math.Max(Overlaps(hours.Heat, hours.Warm) ? warm : 0.0, Overlaps(hours.Warm, hours.Dry) ? run : 0.0);
        return Rounded(kiln.Holding[period].Kilowatts, exact) + above;
    }

    private static (double Warm, double Run) Draws(PlanInput input, Charge charge, bool exact)
    {
        var kiln = KilnOf(input, charge);
        if (charge.Started is { } id)
        {
            return (0.0, Rounded(input.Started.First(s => s.Id == id).Running.Kilowatts, exact));
        }

        var times = StacksOf(input, charge).SelectMany(stack => stack.DryingTimes).Where(time => time.KilnKind == kiln.Kind).ToList();
        var hours = kiln.WarmUps[charge.WarmUp].Hours;
        var warm = Rounded(kiln.StructureHeat.KilowattHours / hours, exact) + times.Sum(time => Rounded(time.WarmUpHeat.KilowattHours / hours, exact));
        return (warm, times.Sum(time => Rounded(time.Running.Kilowatts, exact)));
    }

    private static double Rounded(double kilowatts, bool exact) => exact ? kilowatts : Math.Ceiling(kilowatts * 10.0 - Forgiven) / 10.0;
}
