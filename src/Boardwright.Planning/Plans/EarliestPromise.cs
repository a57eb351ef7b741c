namespace Boardwright.Planning;

/// <summary>The first day an order could be promised for if it had the yard to itself, as often as not and nine times in ten.</summary>
/// <param name="Half">Ready as often as not; null when its wood does not suffice or is not dry within the plan.</param>
/// <param name="Most">Ready nine times in ten.</param>
/// <method page="docs/methods/kiln-plan.md"/>
public sealed record EarliestPromise(DateOnly? Half, DateOnly? Most)
{
    /// <summary>For an order that need not be in the input.</summary>
    public static EarliestPromise Of(PlanInput input, Order order)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(order);
        var tables = new PlanTables(input with { Orders = [order] });
        DateOnly? Day(bool most) => AloneInYard.ReadyDay(tables, tables.Orders[0], most) is { } day && day < tables.Calendar.Days ? tables.Calendar.DateOf(day) : null;
        return new(Day(false), Day(true));
    }
}
