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
        return [Ready(promise, today), .. promise.SpareBf is { } spare ? [Spare(made, promise, asked, spare)] : Array.Empty<Traced>()];
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

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
