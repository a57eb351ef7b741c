namespace Boardwright.Planning;

/// <summary>What an order may be told: an early, a likely and a late day, and how sure the due day is as far as drying decides.</summary>
/// <remarks>The likely day is the plan's. Early, late and the chance come from playing the plan through many times (<see cref="PlanTrials"/>): a charge that dries slowly makes the next one in its kiln late too.</remarks>
/// <param name="Order">The order.</param>
/// <param name="Early">Ready one time in ten; null when the plan does not meet the order.</param>
/// <param name="Likely">Ready as often as not.</param>
/// <param name="Late">Ready nine times in ten; not before the plan's own late day.</param>
/// <param name="OnTime">Chance of being ready on the due day, 0 to 1.</param>
/// <method page="docs/methods/kiln-plan.md"/>
public sealed record Promise(string Order, DateOnly? Early, DateOnly? Likely, DateOnly? Late, double OnTime)
{
    private const double EarlyShare = 0.1;
    private const double LateShare = 0.9;

    /// <summary>A promise for each order, in the input's order.</summary>
    public static IReadOnlyList<Promise> Of(PlanInput input, Plan plan)
    {
        var tables = new PlanTables(input);
        var outlook = PlanOutlook.Of(tables, plan);
        var ready = PlanTrials.ReadyDays(tables, plan);
        return [.. tables.Orders.Select((order, index) => One(tables, order, outlook.Orders[index], ready[index]))];
    }

    private static Promise One(PlanTables tables, OrderTable order, OrderOutlook outlook, int[] ready)
    {
        if (outlook is not { Met: true, ReadyHalf: { } likely, ReadyMost: { } late })
        {
            return new(order.Order.Id, null, null, null, 0.0);
        }

        var days = ready.Order().ToArray();
        DateOnly At(double share) => tables.Calendar.DateOf(days[(int)Math.Ceiling(share * days.Length) - 1]);
        return new(order.Order.Id, Min(At(EarlyShare), likely), likely, Max(At(LateShare), late), (double)ready.Count(day => day <= order.DueDay) / ready.Length);
    }

    private static DateOnly Min(DateOnly a, DateOnly b) => a < b ? a : b;

    private static DateOnly Max(DateOnly a, DateOnly b) => a > b ? a : b;
}
