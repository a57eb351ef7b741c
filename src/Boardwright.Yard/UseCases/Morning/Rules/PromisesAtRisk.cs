using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Promises whose wood may not be enough once dry, or that the season's plan has late or at risk: each line of an order once.</summary>
internal static class PromisesAtRisk
{
    public static IEnumerable<DayTask> Of(YardState state, SeasonNow season)
    {
        var refused = new Lazy<HashSet<string>>(() => [.. PromisesToRefuse.Of(state, season).Select(task => task.At)]);
        foreach (var order in state.Orders.Values.Where(order => order.IsOpen))
        {
            foreach (var line in order.Lines.Where(line => !line.IsFilled && line.Answer != Answer.No))
            {
                if (One(state, season, order, line, refused) is { } task)
                    yield return task;
            }
        }
    }

    // Wood that falls short says most; then what the plan finds; then the day that stands in the book.
    private static DayTask? One(YardState state, SeasonNow season, Order order, OrderPosition line, Lazy<HashSet<string>> refused)
    {
        var asked = line.Asked;
        var near = asked.DueOn.DayNumber - state.Today.DayNumber <= SheetSettings.OrderDays;
        var promise = season.Of(order.Tag, asked.Line);
        var outOn = near ? OutOn(state, asked) : null;
        if (near && Volume(state, order, asked) is { } band && band.Low < band.Sold && !(asked.NeverKiln || asked.CustomerWood))
            return Short(state, season, order, asked, band);
        if (promise is not null)
        {
            // What is past its day is rung about, and green wood is refused: those rules name it.
            return promise.Standing != PromiseStanding.Safe ? asked.DueOn < state.Today || (promise.Standing == PromiseStanding.Cannot && line.Answer is null && refused.Value.Contains(order.Tag)) ? null : PromisesByPlan.Of(state, season, order, asked, promise)
                : outOn is { } own && own > asked.DueOn && PromisesByPlan.OwnLoadOf(state, asked) is { } load ? PromisesByPlan.LateByHand(state, season, order, asked, promise, load) : null;
        }

        return outOn is { } day && day > asked.DueOn ? Late(state, order, asked, day) : null;
    }

    private static DayTask Short(YardState state, SeasonNow season, Order order, OrderLine line, SoldBand band)
    {
        var cover = season.Of(order.Tag, line.Line) is { } planned ? season.Covers.GetValueOrDefault(planned.Line.Id) : null;
        var days = line.DueOn.DayNumber - state.Today.DayNumber;
        var worth = WoodWorth.Of(state, line);
        var act = cover?.Do ?? OrderCover.Watch(order.Tag);
        var why = $"{order.Customer}, {line.Goods}, due {DayWords.Of(line.DueOn, state.Today)}. {Ready(state, season, order, line)}{Unproven(state, line)}{(cover is not null ? $"The wood may fall short. {cover.Stack}: {cover.Words}" : season.Sheet is not null ? "No other stack of the same wood, sawn alike, is free." : "What could stand behind it is told once the season’s plan is worked out.")}";
        return new(order.Tag, act, why,
            new("Likely net", $"{band.Likely:#,0}", "bf", $"of {band.Sold:#,0} {(Dressing(state, order, line) is { } lost ? $"wanted rough, {lost:#,0} of it lost in dressing" : "sold")}; {band.Low:#,0} to {band.High:#,0}")
            {
                Method = "shrinkage",
                Source = "Wood Handbook, FPL-GTR-282, ch. 4; falldown: the mill’s own record",
                Inputs = [.. line.Stacks.Select(tag => (tag, state.Stacks.TryGetValue(tag, out var named) ? !named.Proven ? "unproven: not counted" : $"{named.Footage.Count:#,0} bf net at {StackYield.Of(state, named)?.From.Percent:0.0} %, dried to {StackYield.Of(state, named)?.To.Percent:0.#} %" : "not in the book")), ("falldown", line.Stacks.Select(state.Stacks.GetValueOrDefault).OfType<Stack>().Select(stack => StackYield.Of(state, stack)?.Falldown).FirstOrDefault() is { } fall ? $"{fall.Low:0.#} / {fall.Likely:0.#} / {fall.High:0.#} %" : "none on record")],
            },
            new(worth?.Money ?? order.LatePerDayMoney, days, worth?.Basis ?? "a day late"), Duties.Office, $"/promises/{order.Tag}", $"Open {order.Tag}")
        { Band = band, Standing = "at risk" };
    }

    private static double? Dressing(YardState state, Order order, OrderLine line) => LineFootage.Of(state, order, order.Lines.First(one => one.Asked.Line == line.Line)) is { Dressing: > 0.5 and var lost } ? lost : null;

    private static string Unproven(YardState state, OrderLine line) => line.Stacks.Where(tag => state.Stacks.GetValueOrDefault(tag) is { Proven: false }).ToList() is [_, ..] lost
        ? $"{string.Join(" and ", lost)} lost its tag and counts for nothing until it is proven. " : "";

    private static string Ready(YardState state, SeasonNow season, Order order, OrderLine line) => season.Of(order.Tag, line.Line) is { Likely: { } likely } promise
        ? $"Ready about {DayWords.Of(likely, state.Today)} by the season’s plan{(promise.LateDays > 0 ? $", {PromisesByPlan.Days(promise.LateDays)} late: {promise.Reason}" : "")}. "
        : OutOn(state, line) is { } outOn ? $"Out of the kiln about {DayWords.Of(outOn, state.Today)}. " : "";

    private static DayTask Late(YardState state, Order order, OrderLine line, DateOnly outOn) =>
        new(order.Tag, $"Tell {order.Customer} a later day.", $"{line.Goods}: its charge comes out about {DayWords.Of(outOn, state.Today)}, after the {DayWords.Of(line.DueOn, state.Today)} that was promised.",
            new("Late", $"{outOn.DayNumber - line.DueOn.DayNumber}", "days", $"due {DayWords.Of(line.DueOn, state.Today)}, out about {DayWords.Of(outOn, state.Today)}") { Source = "charges and plan of the book", Method = "kiln-plan", Inputs = [("a day late costs", $"{order.LatePerDayMoney:0}")] },
            new(order.LatePerDayMoney * (outOn.DayNumber - line.DueOn.DayNumber), Math.Max(1, line.DueOn.DayNumber - state.Today.DayNumber), $"{order.LatePerDayMoney:0} a day"), Duties.Office, $"/promises/{order.Tag}", $"Open {order.Tag}")
        { Standing = "at risk" };

    /// <summary>Board feet the named stacks give once dry, shrunk, less falldown, beside what is sold and not yet in packs; unproven wood gives none until it is proven. Null where a figure is missing.</summary>
    internal static SoldBand? Volume(YardState state, Order order, OrderLine line)
    {
        var position = order.Lines.First(one => one.Asked.Line == line.Line);
        if (LineFootage.Of(state, order, position) is not { } wanted || line.Stacks.Count == 0)
            return null;
        var named = line.Stacks.Select(state.Stacks.GetValueOrDefault).ToList();
        if (!named.TrueForAll(stack => stack?.Stage is StackStage.AirDrying or StackStage.InKiln))
            return null;
        var yields = named.Where(stack => stack!.Proven).Select(stack => StackYield.Of(state, stack!)).ToList();
        return yields.TrueForAll(one => one?.Falldown is not null) ? new(line.Goods, "bf", yields.Sum(one => one!.Low), yields.Sum(one => one!.Likely), yields.Sum(one => one!.High), wanted.Rough) : null;
    }

    /// <summary>The day the last of a line's wood is out of a kiln by charges that run and the owner's loads; null where none has it.</summary>
    internal static DateOnly? OutOn(YardState state, OrderLine line)
    {
        var days = line.Stacks.Select(tag => (state.Charges.Values.LastOrDefault(charge => charge.IsRunning && charge.Stacks.Contains(tag)) is { } running ? ChargeEnd.OutDay(state, running) : null)
            ?? state.PlannedCharges.Values.LastOrDefault(planned => planned.Stacks.Contains(tag) && !state.Charges.ContainsKey(planned.Tag))?.OutOn).OfType<DateOnly>().ToList();
        return days.Count == 0 ? null : days.Max();
    }
}
