namespace Boardwright.Planning;

/// <summary>How late an order is at least: with no other order, no shortage of heat, the crew at its own hours and each stack in a kiln of its own.</summary>
/// <remarks>A bound that costs nothing: no plan has the order sooner. Charges that stand in a kiln must be out of it first.</remarks>
internal static class AloneInYard
{
    /// <summary>Days late, at least; counts an order that cannot be met as the scores do.</summary>
    public static int DaysLate(PlanTables tables, OrderTable order, bool most) =>
        ReadyDay(tables, order, most) is { } day ? Math.Min(order.UnmetDays, Math.Max(0, day - order.DueDay)) : order.UnmetDays;

    /// <summary>First day it could be ready; null when its wood does not suffice.</summary>
    public static int? ReadyDay(PlanTables tables, OrderTable order, bool most)
    {
        var left = order.QuantityTenths;
        foreach (var (day, yield) in order.Wood.Select(wood => (Day: Ready(tables, order, wood, most), tables.Stacks[wood.Stack].YieldTenths)).Where(wood => wood.Day is not null).OrderBy(wood => wood.Day))
        {
            left -= yield;
            if (left <= 0)
            {
                return day;
            }
        }

        return null;
    }

    private static int? Ready(PlanTables tables, OrderTable order, OrderWoodTable wood, bool most)
    {
        var stack = tables.Stacks[wood.Stack];
        int? day = !wood.Kilned ? stack.Started ? null : stack.AvailableDay
            : stack.Started ? Standing(tables, stack, most)
            : Enumerable.Range(0, tables.Kilns.Length).Where(kiln => stack.Uses[kiln] is not null).Select(kiln => Dried(tables, stack, kiln, most)).Min();
        return day is { } known ? tables.ReadyDay(order.Order.PlanerRuns, known) : null;
    }

    private static int Standing(PlanTables tables, StackTable stack, bool most)
    {
        var kiln = Array.FindIndex(tables.Kilns, k => k.Started?.Stacks.Contains(stack.Stack.Id) == true);
        var k = tables.Kilns[kiln];
        return tables.Calendar.DayOf(tables.UnloadFrom(kiln, most ? k.StartedDryMost : k.StartedDry));
    }

    private static int? Dried(PlanTables tables, StackTable stack, int kiln, bool most)
    {
        var k = tables.Kilns[kiln];
        var use = stack.Uses[kiln]!;
        var free = k.Started is null ? 0 : tables.UnloadFrom(kiln, k.StartedDry) + k.Unloading;
        int? first = null;
        foreach (var load in k.LoadStarts.Where(step => step >= Math.Max(free, stack.AvailableStep)))
        {
            var day = tables.Calendar.DayOf(load);
            var outOn = tables.Calendar.DayOf(tables.UnloadFrom(kiln, load + k.Loading + k.WarmSteps.Min() + (most ? use.Most[day] : use.Half[day])));
            first = first is { } sooner && sooner <= outOn ? sooner : outOn;
        }

        return first;
    }
}
