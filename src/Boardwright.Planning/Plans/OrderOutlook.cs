namespace Boardwright.Planning;

/// <summary>What a plan promises for one order.</summary>
/// <param name="Order">The order's number.</param>
/// <param name="Met">Whether the plan gives it all it asks, late or not.</param>
/// <param name="ReadyHalf">Day on which it is ready, as often as not (p50); null when not met.</param>
/// <param name="ReadyMost">Day on which it is ready, nine times in ten (p90); null when not met.</param>
/// <param name="LateDays">Days late at p50; for an order not met, the days that are counted against the plan.</param>
/// <param name="LateDaysMost">The same at p90.</param>
public sealed record OrderOutlook(string Order, bool Met, DateOnly? ReadyHalf, DateOnly? ReadyMost, int LateDays, int LateDaysMost);
