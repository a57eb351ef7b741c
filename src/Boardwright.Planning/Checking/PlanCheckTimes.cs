namespace Boardwright.Planning;

/// <content>The rules of time: crew, kilns, drying, heat.</content>
public static partial class PlanCheck
{
    /// <summary>When a charge occupies and heats its kiln, in hours since the first midnight, worked out again from the input.</summary>
    private readonly record struct Hours(double Load, double Heat, double Warm, double Dry, double DryMost, double Unload, double Empty);

    private static Hours HoursOf(PlanInput input, Charge charge)
    {
        var kiln = KilnOf(input, charge);
        double load = Hour(input, charge.LoadStep), unload = Hour(input, charge.UnloadStep), empty = LeftStanding(input, charge) ? unload : unload + WholeSteps(input, kiln.Unloading.Hours);
        if (charge.Started is { } id)
        {
            var started = input.Started.First(s => s.Id == id);
            return new(0, 0, 0, WholeSteps(input, started.DryHalf.Hours), WholeSteps(input, started.DryMost.Hours), unload, empty);
        }

        var day = (int)Math.Floor(load / 24.0 + Forgiven);
        var heat = load + WholeSteps(input, kiln.Loading.Hours);
        var warm = heat + WholeSteps(input, kiln.WarmUps[charge.WarmUp].Hours);
        var times = StacksOf(input, charge).SelectMany(stack => stack.DryingTimes).Where(time => time.KilnKind == kiln.Kind).ToList();
        var half = times.Max(time => WholeSteps(input, time.HalfByDay[Math.Min(day, time.HalfByDay.Count - 1)].Hours));
        var most = times.Max(time => WholeSteps(input, time.MostByDay[Math.Min(day, time.MostByDay.Count - 1)].Hours));
        return new(load, heat, warm, warm + half, warm + most, unload, empty);
    }

    /// <summary>Hours rounded up to whole steps: people and kilns are planned by the step.</summary>
    private static double WholeSteps(PlanInput input, double hours)
    {
        var step = 24.0 / input.Calendar.StepsPerDay;
        return Math.Ceiling(hours / step - Forgiven) * step;
    }

    private static void Crew(PlanInput input, Plan plan, List<PlanFault> found)
    {
        var works = new List<(StepRange Steps, string Words)>();
        foreach (var charge in plan.Charges.Where(charge => !LeftStanding(input, charge)))
        {
            var hours = WorkSteps(input, charge);
            works.Add((hours.Unload, $"unloading kiln {charge.Kiln} on {input.Calendar.TimeOf(charge.UnloadStep):yyyy-MM-dd HH:mm}"));
            if (charge.Started is null)
            {
                works.Add((hours.Load, $"loading kiln {charge.Kiln} on {input.Calendar.TimeOf(charge.LoadStep):yyyy-MM-dd HH:mm}"));
            }
        }

        foreach (var (steps, words) in works)
        {
            Demand(input.Calendar.CrewWindows.Any(window => window.Holds(steps)), PlanFaultKind.NoCrew, $"{words}: no crew", found);
            var others = works.Count(other => other.Steps.From <= steps.From && steps.From < other.Steps.To);
            Demand(others <= input.Calendar.KilnsAtOnce, PlanFaultKind.CrewClash, $"{words}: the crew is wanted at {others} kilns", found);
        }
    }

    private static (StepRange Load, StepRange Unload) WorkSteps(PlanInput input, Charge charge)
    {
        var kiln = KilnOf(input, charge);
        var perHour = input.Calendar.StepsPerDay / 24.0;
        var load = (int)Math.Round(WholeSteps(input, kiln.Loading.Hours) * perHour);
        var unload = (int)Math.Round(WholeSteps(input, kiln.Unloading.Hours) * perHour);
        return (new(charge.LoadStep, charge.LoadStep + load), new(charge.UnloadStep, charge.UnloadStep + (LeftStanding(input, charge) ? 0 : unload)));
    }

    private static void KilnTimes(PlanInput input, Plan plan, List<PlanFault> found)
    {
        foreach (var kiln in input.Kilns)
        {
            var charges = plan.Charges.Where(charge => charge.Kiln == kiln.Id).Select(charge => (Charge: charge, Steps: new StepRange(charge.LoadStep, WorkSteps(input, charge).Unload.To))).OrderBy(pair => pair.Steps.From).ThenBy(pair => pair.Steps.To).ToList();
            for (var i = 0; i < charges.Count; i++)
            {
                var (charge, steps) = charges[i];
                var name = $"kiln {kiln.Id} from {input.Calendar.TimeOf(steps.From):yyyy-MM-dd HH:mm}";
                Demand(i == 0 || charges[i - 1].Steps.To <= steps.From, PlanFaultKind.KilnClash, $"{name}: the charge before is still in it", found);
                Demand(steps.From >= 0 && steps.To <= input.Calendar.Steps, PlanFaultKind.Unknown, $"{name}: outside the days of the plan", found);
                var stopped = charge.Started is null ? steps : WorkSteps(input, charge).Unload; // what stood in it when it failed is the clock's affair
                Demand(!kiln.Outages.Any(stopped.Touches), PlanFaultKind.KilnOut, $"{name}: it is out of use", found);
                if (charge.Started is not null || charge.Stacks.Count > 0 && charge.Stacks.All(id => input.Stacks.First(s => s.Id == id).DryingTimes.Any(t => t.KilnKind == kiln.Kind)))
                {
                    var hours = HoursOf(input, charge);
                    Demand(LeftStanding(input, charge) || hours.Unload >= hours.Dry - Forgiven, PlanFaultKind.NotDry, Words($"{name}: unloaded {hours.Dry - hours.Unload:0.0} h before it is dry"), found);
                }
            }
        }
    }
}
