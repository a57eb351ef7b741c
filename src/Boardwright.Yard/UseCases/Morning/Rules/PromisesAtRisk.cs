using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Promises whose wood may not be enough once dry, or that the season's plan has late or at risk: each line of an order once.</summary>
internal static class PromisesAtRisk
{
    public static IEnumerable<DayTask> Of(YardState state, SeasonNow season)
    {
        foreach (var order in state.Orders.Values.Where(order => order.IsOpen))
        {
            foreach (var line in order.Lines.Where(line => !line.IsFilled && line.Answer != Answer.No))
            {
                if (One(state, season, order, line) is { } task)
                    yield return task;
            }
        }
    }

    // Wood that falls short says most; then what the plan finds; then the day that stands in the book.
    private static DayTask? One(YardState state, SeasonNow season, Order order, OrderPosition line)
    {
        var asked = line.Asked;
        var near = asked.DueOn.DayNumber - state.Today.DayNumber <= SheetSettings.OrderDays;
        var promise = season.Of(order.Tag, asked.Line);
        var outOn = near ? OutOn(state, asked) : null;
        if (near && Volume(state, order, asked) is { } band && band.Low < band.Sold && !(asked.NeverKiln || asked.CustomerWood))
            return Short(state, season, order, asked, band);
        if (promise is not null)
        {
            // What is past its day is rung about, and a green one is refused: those rules name it.
            return promise.Standing != PromiseStanding.Safe ? asked.DueOn < state.Today || (promise.Standing == PromiseStanding.Cannot && line.Answer is null) ? null : PromisesByPlan.Of(state, season, order, asked, promise)
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
        var why = $"{order.Customer}, {line.Goods}, due {DayWords.Of(line.DueOn, state.Today)}. {Ready(state, season, order, line)}{(cover is not null ? $"The wood may fall short. {cover.Stack}: {cover.Words}" : season.Sheet is not null ? "No other stack of the same wood, sawn alike, is free." : "What could stand behind it is told once the season’s plan is worked out.")}";
        return new(order.Tag, act, why,
            new("Likely net", $"{band.Likely:#,0}", "bf", $"of {band.Sold:#,0} sold; {band.Low:#,0} to {band.High:#,0}")
            {
                Method = "shrinkage",
                Source = "Wood Handbook, FPL-GTR-282, ch. 4; falldown: the mill’s own record",
                Inputs = [.. line.Stacks.Select(tag => (tag, state.Stacks.TryGetValue(tag, out var named) ? $"{named.Footage.Count:#,0} bf net at {LoadedAt(state, named)?.Percent:0.0} %" : "not in the book")), ("dried to", $"{Target(state, line).Percent:0.#} %"), ("falldown", Falldown(state, line) is { } fall ? $"{fall.Low:0.#} / {fall.Likely:0.#} / {fall.High:0.#} %" : "none on record")],
            },
            new(worth?.Money ?? order.LatePerDayMoney, days, worth?.Basis ?? "a day late"), Duties.Office, $"/promises/{order.Tag}", $"Open {order.Tag}")
        { Band = band, Standing = "at risk" };
    }

    private static string Ready(YardState state, SeasonNow season, Order order, OrderLine line) => season.Of(order.Tag, line.Line) is { Likely: { } likely } promise
        ? $"Ready about {likely:d MMM} by the season’s plan{(promise.LateDays > 0 ? $", {PromisesByPlan.Days(promise.LateDays)} late: {promise.Reason}" : "")}. "
        : OutOn(state, line) is { } outOn ? $"Out of the kiln about {outOn:d MMM}. " : "";

    private static DayTask Late(YardState state, Order order, OrderLine line, DateOnly outOn) =>
        new(order.Tag, $"Tell {order.Customer} a later day.", $"{line.Goods}: its charge comes out about {outOn:d MMM}, after the {DayWords.Of(line.DueOn, state.Today)} that was promised.",
            new("Late", $"{outOn.DayNumber - line.DueOn.DayNumber}", "days", $"due {DayWords.Of(line.DueOn, state.Today)}, out about {outOn:d MMM}") { Source = "charges and plan of the book", Method = "kiln-plan", Inputs = [("a day late costs", $"{order.LatePerDayMoney:0}")] },
            new(order.LatePerDayMoney * (outOn.DayNumber - line.DueOn.DayNumber), Math.Max(1, line.DueOn.DayNumber - state.Today.DayNumber), $"{order.LatePerDayMoney:0} a day"), Duties.Office, $"/promises/{order.Tag}", $"Open {order.Tag}")
        { Standing = "at risk" };

    /// <summary>Board feet the named stacks give once dry, shrunk, less falldown, beside what is sold and not yet in packs; null where a figure is missing.</summary>
    internal static SoldBand? Volume(YardState state, Order order, OrderLine line)
    {
        if (WoodWorth.FootageOf(line) - AsOrdered.PackedBf(state, order, line.Line) is not { } sold || line.Stacks.Count == 0 || Falldown(state, line) is not { } fall)
            return null;
        var shrunk = 0.0;
        foreach (var tag in line.Stacks)
        {
            if (!state.Stacks.TryGetValue(tag, out var stack) || stack.Stage is StackStage.KilnDried or StackStage.Dressed or StackStage.Gone || LoadedAt(state, stack) is not { } from
                || NetFootage.At(stack.Species, stack.Grain == Grain.Quarter, stack.Footage, from, Target(state, line)) is not Outcome<BoardFeet>.Done(var net))
                return null;
            shrunk += net.Count;
        }

        return new(line.Goods, "bf", shrunk * (1.0 - fall.High / 100.0), shrunk * (1.0 - fall.Likely / 100.0), shrunk * (1.0 - fall.Low / 100.0), sold);
    }

    // The footage of a stack in a kiln is that of its loading: so is the moisture it is counted from.
    private static MoistureContent? LoadedAt(YardState state, Stack stack)
    {
        if (stack.Charge is not { } tag || !state.Charges.TryGetValue(tag, out var charge))
            return stack.Moisture?.Mean;
        var samples = charge.Samples.Where(sample => sample.Weighings.Count > 0 && (sample.Stack ?? stack.Tag) == stack.Tag).ToList();
        return samples.Count > 0 ? MoistureContent.FromFraction(samples.Average(sample => sample.Weighings[0].Moisture.Fraction))
            : (stack.Readings.LastOrDefault(reading => reading.Mean is not null && reading.At <= charge.LoadedAt.AddDays(1)) ?? stack.Moisture)?.Mean;
    }

    private static MoistureContent Target(YardState state, OrderLine line) =>
        line.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)?.Charge).OfType<string>().Select(tag => state.Charges.GetValueOrDefault(tag)).OfType<Charge>().FirstOrDefault() is { } charge
            ? charge.Target
            : line is { McLowPct: { } low, McHighPct: { } high } ? MoistureContent.FromPercent((low + high) / 2.0) : MoistureContent.FromPercent(7.0);

    private static Band? Falldown(YardState state, OrderLine line) =>
        line.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)).OfType<Stack>().FirstOrDefault() is { } stack && state.Prices.TryGetValue(stack.Species.CommonName, out var priced)
            ? stack.Product is Product.Boards or Product.Blocking ? priced.FalldownBoardsPct : priced.FalldownSlabsPct
            : null;

    /// <summary>The day the last of a line's wood is out of a kiln by charges that run and the owner's loads; null where none has it.</summary>
    internal static DateOnly? OutOn(YardState state, OrderLine line)
    {
        var days = line.Stacks.Select(tag => (state.Charges.Values.LastOrDefault(charge => charge.IsRunning && charge.Stacks.Contains(tag)) is { } running ? ChargeEnd.OutDay(state, running) : null)
            ?? state.PlannedCharges.Values.LastOrDefault(planned => planned.Stacks.Contains(tag) && !state.Charges.ContainsKey(planned.Tag))?.OutOn).OfType<DateOnly>().ToList();
        return days.Count == 0 ? null : days.Max();
    }
}
