using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>The input as it would be if something were done: wood bought, more days worked, another order taken.</summary>
public static class Supposing
{
    /// <summary>People load and unload on these days too.</summary>
    /// <param name="input">The yard.</param>
    /// <param name="works">True for a day that is to be worked.</param>
    /// <param name="from">Hour of the day at which they begin.</param>
    /// <param name="to">Hour of the day at which they end.</param>
    public static PlanInput WorkToo(PlanInput input, Func<DateOnly, bool> works, TimeOnly from, TimeOnly to)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(works);
        var calendar = input.Calendar;
        var worked = calendar.CrewWindows.Select(window => calendar.DayOf(window.From)).ToHashSet();
        var more = PlanCalendar.For(calendar.FirstDay, calendar.Days, calendar.StepsPerDay, day => works(day) && !worked.Contains(calendar.DayNumber(day)) ? (from, to) : null, _ => false);
        return input with { Calendar = calendar with { CrewWindows = [.. calendar.CrewWindows.Concat(more.CrewWindows).OrderBy(window => window.From)] } };
    }

    /// <summary>Dry wood is bought for an order, all it asks.</summary>
    /// <param name="input">The yard.</param>
    /// <param name="order">The order's number.</param>
    /// <param name="here">Day on which it is there.</param>
    /// <param name="money">What it costs.</param>
    /// <exception cref="InvalidOperationException">The yard has no such order.</exception>
    public static PlanInput Buy(PlanInput input, string order, DateOnly here, decimal money)
    {
        ArgumentNullException.ThrowIfNull(input);
        var asked = input.Orders.First(one => one.Id == order);
        var id = $"bought for {order}";
        var bought = new Stack(
            id, "bought", Length.FromInches(1.0), Length.FromFeet(1.0), asked.Quantity, asked.Quantity, asked.Quantity, MoistureContent.FromPercent(7.0), new(1, 1), "mill", true, true, null, here, null, [], 0m, 0m);
        return input with
        {
            Stacks = [.. input.Stacks, bought],
            Orders = [.. input.Orders.Select(one => one.Id == order ? one with { Wood = [.. one.Wood, new(id, false, money)] } : one)],
        };
    }

    /// <summary>One more order is taken.</summary>
    public static PlanInput Take(PlanInput input, Order order)
    {
        ArgumentNullException.ThrowIfNull(input);
        return input with { Orders = [.. input.Orders, order] };
    }
}
