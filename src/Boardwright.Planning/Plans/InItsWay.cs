namespace Boardwright.Planning;

/// <summary>What of other orders stands in an order's way in a plan: a slower stack in its charge, what its kiln dries before, or who has its wood.</summary>
internal static class InItsWay
{
    /// <summary>In words, without a full stop; null where nothing of another order is seen.</summary>
    public static string? Of(PlanTables tables, Plan plan, int index)
    {
        var order = tables.Orders[index].Order;
        var named = order.Wood.Select(wood => wood.Stack).ToHashSet(StringComparer.Ordinal);
        var serves = plan.Servings.Where(serving => serving.Quantity.Count > 0.0).ToLookup(serving => serving.Stack, StringComparer.Ordinal);
        var own = plan.Servings.Where(serving => serving.Order == order.Id && serving.Quantity.Count > 0.0).Select(serving => serving.Stack).ToHashSet(StringComparer.Ordinal);
        if (own.Count == 0)
        {
            var taken = plan.Servings.Where(serving => named.Contains(serving.Stack) && serving.Quantity.Count > 0.0).Select(serving => $"{serving.Stack} goes to {serving.Order}").Distinct().ToList();
            return taken.Count > 0 ? string.Join(", ", taken) : null;
        }

        return plan.Charges.Where(charge => charge.Started is null && charge.Stacks.Any(own.Contains)).MaxBy(charge => charge.UnloadStep) is { } last
            ? Slower(tables, last, own, serves) ?? Before(plan, last, order.Id, serves)
            : null;
    }

    private static string? Slower(PlanTables tables, Charge charge, HashSet<string> own, ILookup<string, Serving> serves)
    {
        var kiln = Array.FindIndex(tables.Kilns, one => one.Kiln.Id == charge.Kiln);
        var day = Math.Min(tables.Calendar.DayOf(charge.LoadStep), tables.Calendar.Days - 1);
        int Half(string stack) => Array.Find(tables.Stacks, one => one.Stack.Id == stack)!.Uses[kiln]!.Half[day];
        var ownHalf = charge.Stacks.Where(own.Contains).Max(Half);
        return charge.Stacks.Where(stack => !own.Contains(stack)).MaxBy(Half) is { } slow && Half(slow) > ownHalf
            ? FormattableString.Invariant($"in {charge.Kiln} it waits for {slow}{For(serves, [slow])}, which dries {Math.Max(0.1, (Half(slow) - ownHalf) * tables.Calendar.StepHours / 24.0):0.#} days longer")
            : null;
    }

    private static string? Before(Plan plan, Charge charge, string order, ILookup<string, Serving> serves) =>
        plan.Charges.Where(one => one.Kiln == charge.Kiln && one.LoadStep < charge.LoadStep).MaxBy(one => one.LoadStep) is { } before && before.Stacks.SelectMany(stack => serves[stack]).Any(serving => serving.Order != order)
            ? $"{charge.Kiln} dries {string.Join(", ", before.Stacks)}{For(serves, before.Stacks)} before"
            : null;

    private static string For(ILookup<string, Serving> serves, IReadOnlyList<string> stacks) =>
        stacks.SelectMany(stack => serves[stack]).Select(serving => serving.Order).Distinct().ToList() is { Count: > 0 } orders ? $" for {string.Join(", ", orders)}" : " for stock";
}
