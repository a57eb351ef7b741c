namespace Boardwright.Planning;

/// <summary>Plans as people make them without a computer: whenever a kiln is free, the next stacks of a list go in together until it is full.</summary>
/// <remarks>They know every rule of the yard and break none; orders are served from what is dry, the most pressing first. What a computed plan is measured against.</remarks>
public static class RuleOfThumb
{
    /// <summary>The driest wood first: it leaves the kiln soonest.</summary>
    public static Plan FirstDryFirstLoaded(PlanInput input) => InTurn(new PlanTables(input), (tables, stack) => tables.Stacks[stack].Stack.Moisture.Fraction);

    /// <summary>The wood of the order that is due first; wood that no order names comes last, the driest of it first.</summary>
    public static Plan EarliestDueDate(PlanInput input) => InTurn(new PlanTables(input), (tables, stack) =>
        tables.Orders.Where(order => order.Wood.Any(wood => wood.Stack == stack && wood.Kilned)).Select(order => (double)order.DueDay).DefaultIfEmpty(tables.Calendar.Days + tables.Stacks[stack].Stack.Moisture.Percent).Min());

    private static Plan InTurn(PlanTables tables, Func<PlanTables, int, double> rank)
    {
        var keptAsItStands = tables.Orders.SelectMany(order => order.Wood).Where(wood => !wood.Kilned).Select(wood => wood.Stack).ToHashSet();
        return GreedyPlan.InTurn(tables, [.. Enumerable.Range(0, tables.Stacks.Length).Where(stack => !tables.Stacks[stack].Started && !keptAsItStands.Contains(stack)).OrderBy(stack => rank(tables, stack))]);
    }
}
