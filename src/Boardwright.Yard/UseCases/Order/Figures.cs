using System.Globalization;

namespace Boardwright.Yard.UseCases;

/// <summary>The figures of a promise, each with what it rests on.</summary>
public static class PromiseFigures
{
    public static IReadOnlyList<Traced> Of(PlanMade made, SeasonPromise promise, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(promise);
        var asked = made.Input.Orders.First(order => order.Id == promise.Line.Id).Quantity.Count;
        return [Ready(promise, today), .. promise.SpareBf is { } spare ? [Spare(made, promise, asked, spare), Short(made, promise, asked)] : Array.Empty<Traced>()];
    }

    private static Traced Ready(SeasonPromise promise, DateOnly today) => new(
        "Ready", promise.Likely is { } likely ? DayWords.Of(likely, today) : "not in the plan", "", promise.Likely is null ? "the plan does not meet it" : $"{DayWords.Band(promise.Early, promise.Late, today)}, 8 times in 10")
    {
        Method = "kiln-plan",
        Source = "forecasts of air and kiln by this stack’s moisture; the plan of the kilns",
        Inputs = [("due", promise.Due.ToString("d MMM yyyy", CultureInfo.InvariantCulture)), ("wood", promise.Stacks.Count > 0 ? string.Join(", ", promise.Stacks) : "none"), ("days late, likely", Words($"{promise.LateDays}"))],
    };

    private static Traced Spare(PlanMade made, SeasonPromise promise, double asked, double spare) => new(
        spare < 0.0 ? "Missing" : "To spare", Words($"{Math.Abs(spare):#,0}"), "bf", Words($"{asked + spare:#,0} bf likely for {asked:#,0} bf asked"))
    {
        Method = "shrinkage",
        Source = "Wood Handbook, FPL-GTR-282, table 4-3; falldown: the mill’s own record",
        Inputs = [.. promise.Stacks.Select(stack => (stack, Words($"{made.Yard.Yields[stack].Low:#,0} to {made.Yard.Yields[stack].High:#,0} bf dry, likely {made.Yard.Yields[stack].Likely:#,0}")))],
    };

    // Of the wood alone: whether it is ready in time stands in the dots.
    private static Traced Short(PlanMade made, SeasonPromise promise, double asked)
    {
        var index = made.Input.Orders.ToList().FindIndex(order => order.Id == promise.Line.Id);
        var percent = 100.0 * (1.0 - made.Enough[index]);
        return new("Chance of too little wood", percent switch { < 1.0 => "under 1", > 99.0 => "over 99", _ => Words($"{percent:0}") }, "%", percent < 0.5 ? "by yield alone" : Words($"by yield alone: about {percent:0} times in 100 less than {asked:#,0} bf"))
        {
            Method = "shrinkage",
            Source = "yields low (1 in 10), likely and high (9 in 10): shrinkage and the mill’s own falldown, split normal",
            Inputs = [.. promise.Stacks.Select(stack => (stack, Words($"{made.Yard.Yields[stack].Low:#,0}, {made.Yard.Yields[stack].Likely:#,0}, {made.Yard.Yields[stack].High:#,0} bf"))), ("asked", Words($"{asked:#,0} bf"))],
        };
    }

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
