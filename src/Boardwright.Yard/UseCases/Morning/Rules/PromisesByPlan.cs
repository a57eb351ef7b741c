using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What the season's plan finds of a line of an order: late, at risk or not to be met, with the reason that binds and the first way out.</summary>
internal static class PromisesByPlan
{
    private const decimal GoodWillShare = 0.1m;

    public static DayTask Of(YardState state, SeasonNow season, Order order, OrderLine line, SeasonPromise promise)
    {
        var way = season.Ways.GetValueOrDefault(promise.Line.Id);
        var (act, found, much) = promise.Standing switch
        {
            PromiseStanding.Late => ($"Tell {order.Customer} a later day.", $"the season’s plan has it ready about {DayWords.Of(promise.Likely, state.Today)}, {Days(promise.LateDays)} late", new Traced("Late", $"{promise.LateDays}", promise.LateDays == 1 ? "day" : "days", $"likely {DayWords.Of(promise.Likely, state.Today)}, due {DayWords.Of(line.DueOn, state.Today)}")),
            PromiseStanding.AtRisk => ($"Watch {order.Tag}: it may not be ready in time, or not enough.", $"the season’s plan has it ready and enough on its day {promise.ChanceOfTen} times in 10", new Traced("Ready and enough", $"{promise.ChanceOfTen}", "of 10", $"likely {DayWords.Of(promise.Likely, state.Today)}, due {DayWords.Of(line.DueOn, state.Today)}")),
            _ => ($"Tell {order.Customer} that it cannot be met.", "the season’s plan does not meet it", new Traced("Ready", "not in the plan", "", $"due {DayWords.Of(line.DueOn, state.Today)}")),
        };
        return new(order.Tag, act, $"{line.Goods}, due {DayWords.Of(line.DueOn, state.Today)}: {found}{(promise.Reason is { } reason ? $": {reason}" : "")}.{(season.Beside?.Trade(promise.Line.Id) is { } trade ? $" {trade}" : "")}{(way is null ? "" : $" Way out: {Lower(way)}")}",
            much with
            {
                Method = "kiln-plan",
                Source = "the season’s plan",
                Inputs = [("due", $"{DayWords.Of(line.DueOn, state.Today)}"), ("early, one in ten sooner", Day(promise.Early, state.Today)), ("likely", Day(promise.Likely, state.Today)), ("late, one in ten later", Day(promise.Late, state.Today)), ("why", promise.Reason ?? "no reason was looked for"), ("way out", way ?? "none found"), ("a day late costs", $"{order.LatePerDayMoney:0}")],
            },
            At(state, order, line, promise), Duties.Office, $"/promises/{order.Tag}", $"Open {order.Tag}")
        { Standing = promise.Standing switch { PromiseStanding.Late => "late", PromiseStanding.AtRisk => "at risk", _ => "cannot" } };
    }

    /// <summary>The owner's own load of a line's wood that is not in its kiln yet; null where there is none.</summary>
    public static PlannedCharge? OwnLoadOf(YardState state, OrderLine line) =>
        state.PlannedCharges.Values.Where(planned => planned.Stacks.Any(line.Stacks.Contains) && !state.Charges.ContainsKey(planned.Tag)).MaxBy(planned => planned.OutOn);

    /// <summary>The owner's own load comes out after the day, the worked plan is in time.</summary>
    public static DayTask LateByHand(YardState state, SeasonNow season, Order order, OrderLine line, SeasonPromise promise, PlannedCharge load) =>
        new(order.Tag, $"Plan the wood of {order.Tag} again: by your own plan it is late.", $"{line.Goods}, due {DayWords.Of(line.DueOn, state.Today)}: {load.Tag} comes out about {DayWords.Of(load.OutOn, state.Today)}. The season’s plan has it ready about {DayWords.Of(promise.Likely, state.Today)}, in time.",
            new("Late by your plan", $"{load.OutOn.DayNumber - line.DueOn.DayNumber}", "days", $"due {DayWords.Of(line.DueOn, state.Today)}, out about {DayWords.Of(load.OutOn, state.Today)}") { Method = "kiln-plan", Source = $"your plan of {load.Tag}, entry {load.Entry}", Inputs = [("ready by the season’s plan", Day(promise.Likely, state.Today)), ("a day late costs", $"{order.LatePerDayMoney:0}")] },
            new(order.LatePerDayMoney * (load.OutOn.DayNumber - line.DueOn.DayNumber), Left(state, line), $"{order.LatePerDayMoney:0} a day"), Duties.Office, $"/promises/{order.Tag}", $"Open {order.Tag}")
        { Standing = "at risk", Beside = OwnLoad.Beside(state, load, season) };

    public static string Days(int count) => count == 1 ? "1 day" : $"{count} days";

    // Late: its days at their price. At risk: those of slow drying, else the order itself. Not met: the good will of somebody told late.
    private static Stake At(YardState state, Order order, OrderLine line, SeasonPromise promise)
    {
        var worth = WoodWorth.Of(state, line);
        return promise switch
        {
            { Standing: PromiseStanding.Late } => new(order.LatePerDayMoney * promise.LateDays, Left(state, line), $"{Days(promise.LateDays)} late at {order.LatePerDayMoney:0} a day"),
            { Standing: PromiseStanding.AtRisk, LateDaysMost: > 0 } => new(order.LatePerDayMoney * promise.LateDaysMost, Left(state, line), $"{Days(promise.LateDaysMost)} late if drying goes slowly, at {order.LatePerDayMoney:0} a day"),
            { Standing: PromiseStanding.AtRisk } => new(worth?.Money ?? order.LatePerDayMoney, Left(state, line), worth?.Basis ?? "a day late"),
            _ => new((worth?.Money ?? order.LatePerDayMoney) * GoodWillShare, Left(state, line), $"a tenth of {worth?.Basis ?? "a day late"}, the good will of somebody told late: common practice"),
        };
    }

    private static int Left(YardState state, OrderLine line) => Math.Max(1, line.DueOn.DayNumber - state.Today.DayNumber);

    private static string Day(DateOnly? day, DateOnly today) => day is { } known ? DayWords.Of(known, today) : "not in the plan";

    private static string Lower(string words) => char.ToLowerInvariant(words[0]) + words[1..];
}
