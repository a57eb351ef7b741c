using Boardwright.Numerics;

namespace Boardwright.Planning;

/// <summary>What an order may be told: an early, a likely and a late day, and how sure the due day is as far as drying decides.</summary>
/// <remarks>
/// Drying time is taken as log-normal through its p50 and p90; the early day is its p10. On time means: every charge of the order's wood is dry at the last
/// step at which it could be unloaded and still be ready on the due day. Charges are taken as independent; the crew is taken to have nothing else to do.
/// </remarks>
/// <param name="Order">The order.</param>
/// <param name="Early">Ready one time in ten; null when the plan does not meet the order.</param>
/// <param name="Likely">Ready as often as not.</param>
/// <param name="Late">Ready nine times in ten.</param>
/// <param name="OnTime">Chance of being ready on the due day, 0 to 1.</param>
/// <method page="docs/methods/kiln-plan.md"/>
public sealed record Promise(string Order, DateOnly? Early, DateOnly? Likely, DateOnly? Late, double OnTime)
{
    private const double TenPercentQuantile = 1.2815515655446004;

    /// <summary>A promise for each order, in the input's order.</summary>
    public static IReadOnlyList<Promise> Of(PlanInput input, Plan plan)
    {
        var tables = new PlanTables(input);
        var outlook = PlanOutlook.Of(tables, plan);
        var charges = plan.Charges.Select(charge => PlanOutlook.Timed(tables, charge)).ToList();
        var chargeOfStack = Scoring.ChargeOfStack(tables, charges);
        return [.. tables.Orders.Select((order, index) => One(tables, order, outlook.Orders[index], plan, chargeOfStack))];
    }

    private static Promise One(PlanTables tables, OrderTable order, OrderOutlook outlook, Plan plan, TimedCharge?[] chargeOfStack)
    {
        if (!outlook.Met)
        {
            return new(order.Order.Id, null, null, null, 0.0);
        }

        var served = plan.Servings.Where(serving => serving.Order == order.Order.Id && serving.Quantity.Count > 0).Select(serving => serving.Stack).ToHashSet();
        var wood = order.Wood.Where(one => served.Contains(tables.Stacks[one.Stack].Stack.Id)).ToList();
        var charges = wood.Select(one => chargeOfStack[one.Stack]).OfType<TimedCharge>().Distinct().ToList();
        var early = charges.Select(charge => tables.ReadyDay(order.Order.PlanerRuns, tables.Calendar.DayOf(Math.Max(charge.LoadEnd, EarlyStep(tables, charge)))))
            .Concat(wood.Where(one => chargeOfStack[one.Stack] is null).Select(one => tables.ReadyDay(order.Order.PlanerRuns, tables.Stacks[one.Stack].AvailableDay)))
            .Max();
        var standing = wood.Where(one => chargeOfStack[one.Stack] is null).All(one => tables.ReadyDay(order.Order.PlanerRuns, tables.Stacks[one.Stack].AvailableDay) <= order.DueDay);
        var chance = charges.Aggregate(standing ? 1.0 : 0.0, (product, charge) => product * DryInTime(tables, order, charge));
        return new(order.Order.Id, Sooner(tables.Calendar.DateOf(early), outlook.ReadyHalf), outlook.ReadyHalf, outlook.ReadyMost, chance);
    }

    private static DateOnly? Sooner(DateOnly early, DateOnly? likely) => likely is { } day && day < early ? day : early;

    // First unloading after the p10 of drying: as far below p50 as p90 is above, by ratio.
    private static int EarlyStep(PlanTables tables, TimedCharge charge)
    {
        var half = charge.Dry - charge.WarmEnd;
        var most = charge.DryMost - charge.WarmEnd;
        return tables.UnloadFrom(charge.Kiln, charge.WarmEnd + (int)Math.Ceiling((double)half * half / Math.Max(1, most)));
    }

    private static double DryInTime(PlanTables tables, OrderTable order, TimedCharge charge)
    {
        var last = tables.Kilns[charge.Kiln].UnloadStarts.LastOrDefault(step => tables.ReadyDay(order.Order.PlanerRuns, tables.Calendar.DayOf(step)) <= order.DueDay, -1);
        var (half, most, there) = (charge.Dry - charge.WarmEnd, charge.DryMost - charge.WarmEnd, last - charge.WarmEnd);
        return there <= 0 ? 0.0
            : half <= 0 || most <= half ? (there >= half ? 1.0 : 0.0)
            : Distributions.NormalProbability(Math.Log((double)there / half) / (Math.Log((double)most / half) / TenPercentQuantile));
    }
}
