using System.Globalization;

namespace Boardwright.Planning;

/// <summary>Checks a plan against every rule, straight from the input's own quantities.</summary>
/// <remarks>
/// Shares no arithmetic with the scores, the search or the solver: it reads the input, works in hours, kilowatts and board feet, and says
/// in words what is wrong. A plan from anywhere, a person's own included, can be checked.
/// </remarks>
public static partial class PlanCheck
{
    private const double Forgiven = 1e-6;

    /// <summary>Every fault of the plan; none for a sound one.</summary>
    /// <param name="input">The input the plan was made for.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="claimed">What was said to follow from it; checked too when given.</param>
    public static IReadOnlyList<PlanFault> Faults(PlanInput input, Plan plan, PlanOutlook? claimed = null)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(plan);
        var found = new List<PlanFault>();
        Names(input, plan, found);
        if (found.Count > 0)
        {
            return found; // the other rules cannot be read with unknown names
        }

        Started(input, plan, found);
        Places(input, plan, found);
        foreach (var charge in plan.Charges)
        {
            OneCharge(input, charge, found);
        }

        Crew(input, plan, found);
        KilnTimes(input, plan, found);
        Servings(input, plan, found);
        if (found.All(fault => fault.Kind is not (PlanFaultKind.WrongKind or PlanFaultKind.EmptyCharge)))
        {
            Heat(input, plan, found);
            if (claimed is not null)
            {
                Claims(input, plan, claimed, found);
            }
        }

        return found;
    }

    private static void Names(PlanInput input, Plan plan, List<PlanFault> found)
    {
        foreach (var charge in plan.Charges)
        {
            var kiln = input.Kilns.FirstOrDefault(k => k.Id == charge.Kiln);
            Demand(kiln is not null, PlanFaultKind.Unknown, $"no kiln {charge.Kiln}", found);
            Demand(kiln is null || (charge.WarmUp >= 0 && charge.WarmUp < kiln.WarmUps.Count), PlanFaultKind.Unknown, $"kiln {charge.Kiln} has no warm-up {charge.WarmUp}", found);
            Demand(charge.Started is null || input.Started.Any(s => s.Id == charge.Started), PlanFaultKind.Unknown, $"no started charge {charge.Started}", found);
            foreach (var stack in charge.Stacks)
            {
                Demand(input.Stacks.Any(s => s.Id == stack), PlanFaultKind.Unknown, $"no stack {stack}", found);
            }
        }

        foreach (var serving in plan.Servings)
        {
            Demand(input.Orders.Any(o => o.Id == serving.Order), PlanFaultKind.Unknown, $"no order {serving.Order}", found);
            Demand(input.Stacks.Any(s => s.Id == serving.Stack), PlanFaultKind.Unknown, $"no stack {serving.Stack}", found);
        }
    }

    private static void Started(PlanInput input, Plan plan, List<PlanFault> found)
    {
        foreach (var started in input.Started)
        {
            var kept = plan.Charges.Where(charge => charge.Started == started.Id).ToList();
            Demand(kept.Count <= 1, PlanFaultKind.Twice, $"started charge {started.Id} stands {kept.Count} times", found);
            var same = kept.Count > 0 && kept[0].Kiln == started.Kiln && kept[0].LoadStep == 0 && kept[0].Stacks.Order(StringComparer.Ordinal).SequenceEqual(started.Stacks.Order(StringComparer.Ordinal));
            Demand(same, PlanFaultKind.StartedChanged, $"started charge {started.Id} must stay in kiln {started.Kiln} with {string.Join(", ", started.Stacks)}", found);
        }
    }

    private static void Places(PlanInput input, Plan plan, List<PlanFault> found)
    {
        foreach (var twice in plan.Charges.SelectMany(charge => charge.Stacks).GroupBy(stack => stack).Where(group => group.Count() > 1))
        {
            Demand(false, PlanFaultKind.Twice, $"{twice.Key} is in {twice.Count()} charges", found);
        }

        foreach (var set in input.Stacks.Where(stack => stack.MatchedSet is not null).GroupBy(stack => stack.MatchedSet))
        {
            var charges = set.Select(stack => plan.Charges.FirstOrDefault(charge => charge.Stacks.Contains(stack.Id))).Distinct().Count();
            Demand(charges == 1, PlanFaultKind.SetTorn, $"the matched set {set.Key} is not in one place", found);
        }
    }

    private static void OneCharge(PlanInput input, Charge charge, List<PlanFault> found)
    {
        var kiln = KilnOf(input, charge);
        var stacks = StacksOf(input, charge).ToList();
        Demand(stacks.Count > 0, PlanFaultKind.EmptyCharge, $"a charge in kiln {kiln.Id} has no stacks", found);
        if (charge.Started is not null)
        {
            return; // loaded before this plan: nothing about it can be chosen any more
        }

        foreach (var stack in stacks)
        {
            Demand(!stack.NeverKiln, PlanFaultKind.NeverKiln, $"{stack.Id} must stay out of every kiln", found);
            Demand(stack.DryingTimes.Any(t => t.KilnKind == kiln.Kind), PlanFaultKind.WrongKind, $"{stack.Id} is not dried in a {kiln.Kind} kiln ({kiln.Id})", found);
            Demand(stack.LongestPiece.Metres <= kiln.LongestPiece.Metres, PlanFaultKind.TooLong, Words($"{stack.Id} is {stack.LongestPiece.Feet:0.0} ft long, kiln {kiln.Id} takes {kiln.LongestPiece.Feet:0.0}"), found);
            Demand(stack.HeatedTo is not { } wish || wish.Kelvins <= kiln.Hottest.Kelvins, PlanFaultKind.TooCool, Words($"{stack.Id} must be heated to {stack.HeatedTo?.Celsius:0.0} C, kiln {kiln.Id} reaches {kiln.Hottest.Celsius:0.0}"), found);
            var available = (stack.AvailableFrom.DayNumber - input.Calendar.FirstDay.DayNumber) * 24.0;
            Demand(Hour(input, charge.LoadStep) >= available, PlanFaultKind.TooEarly, Words($"{stack.Id} can be had from {stack.AvailableFrom:yyyy-MM-dd}, loaded {input.Calendar.TimeOf(charge.LoadStep):yyyy-MM-dd HH:mm}"), found);
        }

        var load = stacks.Sum(stack => stack.Load.Count);
        Demand(load <= kiln.Capacity.Count + Forgiven, PlanFaultKind.TooFull, Words($"{load:0} bf of 4/4 in kiln {kiln.Id}, which holds {kiln.Capacity.Count:0}"), found);
        var weight = stacks.Sum(stack => stack.Weight.Kilograms);
        Demand(kiln.MostWeight is not { } most || weight <= most.Kilograms + Forgiven, PlanFaultKind.TooHeavy, Words($"{weight:0} kg in kiln {kiln.Id}, which carries {kiln.MostWeight?.Kilograms:0}"), found);
        for (var a = 0; a < stacks.Count; a++)
        {
            for (var b = a + 1; b < stacks.Count; b++)
            {
                SharePair(input.Sharing, stacks[a], stacks[b], found);
            }
        }
    }

    private static void SharePair(SharingRules rules, Stack a, Stack b, List<PlanFault> found)
    {
        var pair = $"{a.Id} and {b.Id}";
        Demand(a.Family == b.Family, PlanFaultKind.Sharing, $"{pair} are of different families", found);
        var (thin, thick) = a.Thickness.Metres < b.Thickness.Metres ? (a, b) : (b, a);
        Demand(thick.Thickness.Metres <= rules.ThicknessRatioMost * thin.Thickness.Metres + Forgiven * thin.Thickness.Metres, PlanFaultKind.Sharing, $"{pair} differ too much in thickness", found);
        Demand(Math.Abs(a.Moisture.Percent - b.Moisture.Percent) <= rules.MoistureGapMostPercent + Forgiven, PlanFaultKind.Sharing, $"{pair} differ too much in moisture", found);
        Demand(a.Owner == b.Owner || (a.OwnerShares && b.OwnerShares), PlanFaultKind.Sharing, $"the owners of {pair} do not agree", found);
    }

    private static void Servings(PlanInput input, Plan plan, List<PlanFault> found)
    {
        foreach (var stack in input.Stacks)
        {
            var kept = plan.Servings.Where(serving => serving.Stack == stack.Id).Sum(serving => serving.Quantity.Count);
            Demand(kept <= stack.Yield.Count + Forgiven, PlanFaultKind.Oversold, Words($"{kept:0} bf of {stack.Id} are kept for orders, it yields {stack.Yield.Count:0}"), found);
        }

        foreach (var serving in plan.Servings.Where(serving => serving.Quantity.Count > 0))
        {
            var wood = input.Orders.First(o => o.Id == serving.Order).Wood.FirstOrDefault(w => w.Stack == serving.Stack);
            Demand(wood is not null, PlanFaultKind.WrongWood, $"{serving.Order} may not be served from {serving.Stack}", found);
            var charge = plan.Charges.FirstOrDefault(charge => charge.Stacks.Contains(serving.Stack));
            var kilned = charge is not null;
            Demand(charge is null || !LeftStanding(input, charge), PlanFaultKind.WrongWood, $"{serving.Order} is served from {serving.Stack}, which stays in its kiln", found);
            Demand(wood is null || wood.Kilned == kilned, PlanFaultKind.WrongWood, $"{serving.Order} asks {serving.Stack} {(kilned ? "never kilned" : "kiln dried")}, the plan has it otherwise", found);
        }
    }

    /// <summary>A started charge that the plan leaves in its kiln at the end.</summary>
    private static bool LeftStanding(PlanInput input, Charge charge) => charge.Started is not null && charge.UnloadStep == input.Calendar.Days * input.Calendar.StepsPerDay;

    private static Kiln KilnOf(PlanInput input, Charge charge) => input.Kilns.First(kiln => kiln.Id == charge.Kiln);

    private static IEnumerable<Stack> StacksOf(PlanInput input, Charge charge) => charge.Stacks.Select(id => input.Stacks.First(stack => stack.Id == id));

    private static double Hour(PlanInput input, int step) => step * 24.0 / input.Calendar.StepsPerDay;

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static void Demand(bool sound, PlanFaultKind kind, string words, List<PlanFault> found)
    {
        if (!sound)
        {
            found.Add(new(kind, words));
        }
    }
}
