namespace Boardwright.Planning;

/// <summary>The first day an order could be ready if kilns, people and heat were without limit: drying itself decides.</summary>
internal static class EarliestReady
{
    /// <summary>That day; null when its wood does not suffice.</summary>
    public static int? Day(PlanTables tables, OrderTable order)
    {
        var left = order.QuantityTenths;
        foreach (var (day, yield) in order.Wood.Select(wood => (Day: Day(tables, order, wood), tables.Stacks[wood.Stack].YieldTenths)).OrderBy(wood => wood.Day))
        {
            left -= day is null ? 0 : yield;
            if (left <= 0)
            {
                return day;
            }
        }

        return null;
    }

    private static int? Day(PlanTables tables, OrderTable order, OrderWoodTable wood)
    {
        var stack = tables.Stacks[wood.Stack];
        int? day = !wood.Kilned ? stack.Started ? null : stack.AvailableDay
            : stack.Started ? Standing(tables, stack)
            : Enumerable.Range(0, tables.Kilns.Length).Where(k => stack.Uses[k] is not null).Select(k => (int?)Dried(tables, stack, k)).Min();
        return day is { } known ? tables.ReadyDay(order.Order.PlanerRuns, known) : null;
    }

    private static int Standing(PlanTables tables, StackTable stack)
    {
        var kiln = tables.Kilns.First(k => k.Started?.Stacks.Contains(stack.Stack.Id) == true);
        return tables.Calendar.DayOf(kiln.StartedDry);
    }

    private static int Dried(PlanTables tables, StackTable stack, int kiln)
    {
        var k = tables.Kilns[kiln];
        return Enumerable.Range(stack.AvailableDay, Math.Max(0, tables.Calendar.Days - stack.AvailableDay))
            .Select(day => tables.Calendar.DayOf(day * tables.Calendar.StepsPerDay + k.Loading + k.WarmSteps.Min() + stack.Uses[kiln]!.Half[day]))
            .DefaultIfEmpty(tables.Calendar.Days + 1).Min();
    }
}
