using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Orders whose wood is as asked already: air-dried wood that must never see a kiln only gets wetter in autumn.</summary>
internal static class ReadyToShip
{
    public static IEnumerable<DayTask> Of(YardState state)
    {
        var outdoor = StackSheet.OutdoorMoisture(state)?.Moisture;
        foreach (var order in state.Orders.Values.Where(order => order.IsOpen))
        {
            foreach (var line in order.Lines.Where(line => !line.IsFilled).Select(line => line.Asked))
            {
                var stacks = line.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)).OfType<Stack>().ToList();
                if (stacks.Count == 0 || line.DueOn.DayNumber - state.Today.DayNumber > SheetSettings.OrderDays || !stacks.All(stack => IsAsAsked(stack, line)))
                    continue;
                var stack = stacks[0];
                var wetter = stack.Stage == StackStage.AirDrying && outdoor is { } air && air > stack.Moisture!.Mean!.Value;
                var why = $"{stack.Tag} reads {stack.Moisture!.Mean!.Value.Percent:0.0} %, as asked.{(wetter ? $" The air holds wood at {outdoor!.Value.Percent:0.0}: it only gets wetter." : " It waits for nothing but a band and a truck.")}";
                var unsure = MayFallShort(state, order, line, stacks);
                if (unsure is var (low, high, wanted))
                    why = $"{stack.Tag} reads {stack.Moisture!.Mean!.Value.Percent:0.0} %, as asked. {stacks.Sum(one => one.Footage.Count):#,0} bf lie there, {low:#,0} to {high:#,0} once sorted and trimmed, for {wanted:#,0}: count it before anybody is asked to come.";
                var worth = WoodWorth.Of(state, line);
                var much = new Traced("Asked", $"{line.Quantity:#,0.#}", WoodWorth.UnitWords(line.Unit), $"due {DayWords.Of(line.DueOn, state.Today)}{(line.McHighPct is { } most ? $"; {most:0.#} % at most" : "")}")
                {
                    Method = wetter ? "emc" : "moisture-meter",
                    Source = $"read {stack.Moisture.At:d MMM yyyy}",
                    Inputs = [("moisture", $"{stack.Moisture.Mean.Value.Percent:0.0} %"), ("air of the month holds", outdoor is { } known ? $"{known.Percent:0.0} %" : "not known"), ("asked", $"{line.McLowPct:0.#} to {line.McHighPct:0.#} %"), ("on the stack", $"{stack.Footage.Count:#,0} bf")],
                };
                var stake = new Stake(worth?.Money ?? order.LatePerDayMoney, Math.Max(1, line.DueOn.DayNumber - state.Today.DayNumber), worth?.Basis ?? "a day late");
                yield return new(stack.Tag, $"{(unsure is null ? "Band" : "Sort and count")} {line.Goods} for {order.Customer}.", why, much, stake, Duties.Hands | Duties.Kilns, $"/stacks/{stack.Tag}", $"See {stack.Tag}");
                if (unsure is null)
                    yield return new(order.Tag, $"Ask {order.Customer} to come early.", why, much, stake, Duties.Office, $"/promises/{order.Tag}", $"Open {order.Tag}");
            }
        }
    }

    // Out of the kiln its footage is counted, but not yet what falls down in sorting.
    private static (double Low, double High, double Wanted)? MayFallShort(YardState state, Order order, OrderLine line, List<Stack> stacks)
    {
        if (LineFootage.Of(state, order, order.Lines.First(one => one.Asked == line)) is not { } wanted)
            return null;
        var yields = stacks.Select(stack => StackYield.Of(state, stack)).ToList();
        return yields.TrueForAll(one => one is not null) && yields.Sum(one => one!.Low) < wanted.Rough ? (yields.Sum(one => one!.Low), yields.Sum(one => one!.High), wanted.Rough) : null;
    }

    private static bool IsAsAsked(Stack stack, OrderLine line) =>
        stack.IsHere && stack.Proven && stack.Moisture is { Mean: { } mean, SpeciesUnknown: false }
        && (line.NeverKiln ? stack.Stage == StackStage.AirDrying : stack.Stage is StackStage.KilnDried or StackStage.Dressed)
        && (line.DressedMm is null || stack.Stage == StackStage.Dressed)
        && mean.Percent >= (line.McLowPct ?? 0.0) - 0.5 && mean.Percent <= (line.McHighPct ?? 100.0);
}
