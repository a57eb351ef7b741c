using System.Globalization;

using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>Says what is wrong with a plan's input before anything is computed.</summary>
public static class PlanInputCheck
{
    /// <summary>Every fault of the input; none when it can be planned.</summary>
    /// <remarks>Checked: names unique and known, list lengths, ranges, windows in order and inside one day, p90 not below p50.</remarks>
    public static IReadOnlyList<Refusal> Refusals(PlanInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var found = new List<Refusal>();
        Calendar(input.Calendar, found);
        if (found.Count > 0)
        {
            return found; // every other length is measured against the calendar
        }

        Unique("kiln", input.Kilns.Select(k => k.Id), found);
        Unique("stack", input.Stacks.Select(s => s.Id), found);
        Unique("order", input.Orders.Select(o => o.Id), found);
        Unique("boiler", input.Heat.Boilers.Select(b => b.Id), found);
        Unique("started charge", input.Started.Select(c => c.Id), found);
        Unique("kiln of a started charge", input.Started.Select(c => c.Kiln), found);
        Unique("stack of a started charge", input.Started.SelectMany(c => c.Stacks), found);
        Heat(input, found);
        foreach (var kiln in input.Kilns)
        {
            OneKiln(kiln, input, found);
        }

        foreach (var stack in input.Stacks)
        {
            OneStack(stack, found);
        }

        References(input, found);
        return found;
    }

    private static void Calendar(PlanCalendar calendar, List<Refusal> found)
    {
        Demand(calendar.Days is >= 1 and <= 400, "days of the plan", calendar.Days, "1 to 400", found);
        Demand(calendar.StepsPerDay is >= 1 and <= 96, "steps in a day", calendar.StepsPerDay, "1 to 96", found);
        Demand(calendar.KilnsAtOnce is >= 1 and <= 100, "kilns worked at once", calendar.KilnsAtOnce, "1 to 100", found);
        if (found.Count > 0)
        {
            return;
        }

        var last = 0;
        foreach (var window in calendar.CrewWindows)
        {
            var oneDay = window.Length > 0 && calendar.DayOf(window.From) == calendar.DayOf(window.To - 1);
            Demand(window.From >= last && window.To <= calendar.Steps && oneDay, "crew window", $"{window.From} to {window.To}", "in order, inside one day of the plan", found);
            last = Math.Max(last, window.To);
        }

        var days = calendar.PlanerDays;
        Demand(days.Zip(days.Skip(1)).All(pair => pair.First < pair.Second) && days.All(day => day >= 0 && day < calendar.Days), "planer days", string.Join(' ', days), "day numbers of the plan, in order", found);
    }

    private static void Heat(PlanInput input, List<Refusal> found)
    {
        var heat = input.Heat;
        var whole = heat.PeriodSteps >= 1 && input.Calendar.Steps % heat.PeriodSteps == 0;
        Demand(whole, "steps in a heat period", heat.PeriodSteps, $"a divisor of {input.Calendar.Steps}", found);
        if (whole)
        {
            var periods = input.Calendar.Steps / heat.PeriodSteps;
            Demand(heat.Shop.Count == periods, "heat of the shop", $"{heat.Shop.Count} values", $"{periods} values, one for each heat period", found);
            foreach (var kiln in input.Kilns)
            {
                Demand(kiln.Holding.Count == periods, $"holding heat of kiln {kiln.Id}", $"{kiln.Holding.Count} values", $"{periods} values, one for each heat period", found);
            }
        }

        Demand(heat.MoneyPerKwhGivenWay >= 0, "money per kWh given way", heat.MoneyPerKwhGivenWay, "0 or more", found);
        Demand(input.ImportanceMoneyPerDay >= 0, "importance money per day", input.ImportanceMoneyPerDay, "0 or more", found);
        Demand(input.Sharing.ThicknessRatioMost >= 1, "thickness ratio", input.Sharing.ThicknessRatioMost, "1 or more", found);
        Demand(input.Sharing.MoistureGapMostPercent >= 0, "moisture gap", input.Sharing.MoistureGapMostPercent, "0 or more", found);
    }

    private static void OneKiln(Kiln kiln, PlanInput input, List<Refusal> found)
    {
        var step = input.Calendar.StepHours;
        Demand(kiln.Loading.Hours > 0 && kiln.Unloading.Hours > 0, $"loading and unloading of kiln {kiln.Id}", $"{kiln.Loading.Hours} and {kiln.Unloading.Hours} h", "more than 0", found);
        Demand(kiln.WarmUps.Count > 0 && kiln.WarmUps.All(w => w.Hours >= step / 2), $"warm-up times of kiln {kiln.Id}", kiln.WarmUps.Count, $"at least one, none shorter than half a step of {step} h", found);
        Demand(kiln.MoneyPerDay >= 0 && kiln.MoneyPerKwh >= 0, $"prices of kiln {kiln.Id}", $"{kiln.MoneyPerDay} and {kiln.MoneyPerKwh}", "0 or more", found);
    }

    private static void OneStack(Stack stack, List<Refusal> found)
    {
        Unique($"kind of kiln in the drying times of stack {stack.Id}", stack.DryingTimes.Select(t => t.KilnKind), found);
        Demand(stack.GainWhenDry >= 0 && stack.WaitingMoneyPerDay >= 0, $"gain and waiting money of stack {stack.Id}", $"{stack.GainWhenDry} and {stack.WaitingMoneyPerDay}", "0 or more", found);
        Demand(stack.Thickness.Metres > 0, $"thickness of stack {stack.Id}", stack.Thickness.Metres, "more than 0", found);
        foreach (var time in stack.DryingTimes)
        {
            var sound = time.HalfByDay.Count > 0 && time.HalfByDay.Count == time.MostByDay.Count && time.HalfByDay.Zip(time.MostByDay).All(pair => pair.First.Seconds > 0 && pair.First <= pair.Second);
            Demand(sound, $"drying times of stack {stack.Id}, {time.KilnKind}", $"{time.HalfByDay.Count} and {time.MostByDay.Count} days", "as many p50 as p90 values, at least one, none 0, p50 not above p90", found);
        }
    }

    private static void References(PlanInput input, List<Refusal> found)
    {
        var kilns = input.Kilns.Select(k => k.Id).ToHashSet(StringComparer.Ordinal);
        var stacks = input.Stacks.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var charge in input.Started)
        {
            Demand(kilns.Contains(charge.Kiln), $"kiln of started charge {charge.Id}", charge.Kiln, "a kiln of the yard", found);
            Demand(charge.Stacks.All(stacks.Contains), $"stacks of started charge {charge.Id}", string.Join(' ', charge.Stacks), "stacks of the yard", found);
            Demand(charge.DryHalf <= charge.DryMost, $"times of started charge {charge.Id}", $"{charge.DryHalf.Hours} and {charge.DryMost.Hours} h", "p50 not above p90", found);
        }

        foreach (var set in input.Stacks.Where(stack => stack.MatchedSet is not null).GroupBy(stack => stack.MatchedSet))
        {
            var places = set.Select(stack => input.Started.FirstOrDefault(charge => charge.Stacks.Contains(stack.Id))).Distinct().Count();
            Demand(places == 1, $"matched set {set.Key}", string.Join(' ', set.Select(stack => stack.Id)), "all in one started charge or none in any", found);
        }

        foreach (var order in input.Orders)
        {
            Demand(order.Wood.All(w => stacks.Contains(w.Stack)), $"wood of order {order.Id}", string.Join(' ', order.Wood.Select(w => w.Stack)), "stacks of the yard", found);
            Unique($"wood of order {order.Id}", order.Wood.Select(w => w.Stack), found);
            Demand(order.Wood.Count <= 30, $"wood of order {order.Id}", order.Wood.Count, "at most 30 stacks", found);
            Demand(order.Quantity.Count > 0, $"quantity of order {order.Id}", order.Quantity.Count, "more than 0 bf", found);
            Demand(order.PlanerRuns is >= 0 and <= 30, $"planer runs of order {order.Id}", order.PlanerRuns, "0 to 30", found);
            Demand(order.Importance is >= 1 and <= 5, $"importance of order {order.Id}", order.Importance, "1 to 5", found);
            Demand(order.LateMoneyPerDay >= 0, $"late money of order {order.Id}", order.LateMoneyPerDay, "0 or more", found);
        }
    }

    private static void Unique(string what, IEnumerable<string> names, List<Refusal> found)
    {
        foreach (var twice in names.GroupBy(name => name, StringComparer.Ordinal).Where(group => group.Count() > 1))
        {
            found.Add(new(what, twice.Key, "each name once"));
        }
    }

    private static void Demand(bool sound, string what, object given, string accepted, List<Refusal> found)
    {
        if (!sound)
        {
            found.Add(new(what, Convert.ToString(given, CultureInfo.InvariantCulture) ?? "", accepted));
        }
    }
}
