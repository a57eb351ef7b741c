using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Things of the book as rows of the find page.</summary>
internal static class FindRows
{
    public static Found Of(YardState state, Stack stack)
    {
        var moisture = stack.Moisture is { Mean: { } mean } read ? $"{mean.Percent:0.0} % on {DayWords.Of(read.At, state.Today)}" : "never read";
        return new(stack.Tag, $"{(stack.Proven ? stack.Species.CommonName : "unproven species")} {stack.Thickness} {stack.Product.ToString().ToLowerInvariant()}",
            $"{(stack.IsHere ? stack.Stage == StackStage.InKiln ? $"in {state.Charges.GetValueOrDefault(stack.Charge ?? "")?.Kiln ?? "a kiln"}, charge {stack.Charge}" : stack.Place : "gone")}, {(stack.Owner == "mill" ? "the mill’s own" : $"wood of {stack.Owner}")}{(stack.ReservedFor is { } order ? $", reserved for {order}" : stack.IsHere ? ", free" : "")}",
            new("On the stack", $"{stack.Footage.Count:#,0}", "bf", moisture) { Method = "moisture-meter", Source = "stack card of the book", Inputs = [("sawn", $"{stack.SawnOn:d MMM yyyy}"), ("pieces", stack.Pieces is { } pieces ? $"{pieces}" : "not counted"), ("footage", stack.FootageSure ? "as counted" : "about: some left without a count")] },
            $"/stacks/{stack.Tag}", "stack");
    }

    public static Found Of(YardState state, Log log) => new(log.Tag, $"log, {(log.Proven ? log.Species.CommonName : "unproven species")}",
        log.IsSawn ? $"sawn {log.SawnAt:d MMM yyyy} into {string.Join(", ", log.Into.Select(into => into.Stack))}, from {log.Source}" : $"waiting since {DayWords.Of(log.ReceivedAt, state.Today)}, from {log.Source}, {(log.Owner == "mill" ? "the mill’s own" : $"wood of {log.Owner}")}{(log.PlannedFor is { } plan ? $", for {plan}" : "")}",
        new("Small end", $"{log.ScalingDiameter.Inches:0.#}", "in", $"{log.ScaleLength.Feet:0.#} ft long") { Source = $"measured {log.ReceivedAt:d MMM yyyy}", Inputs = [("at right angles", $"{log.SmallEndA.Inches:0.#} and {log.SmallEndB.Inches:0.#} in"), ("large end", $"{log.LargeEnd.Inches:0.#} in")] },
        Paths.Log(log.Tag), "log");

    public static Found Of(YardState state, Pack pack) => new(pack.Tag, $"pack, {(pack.Proven ? pack.Species.CommonName : "unproven species")} {pack.Thickness}, from {pack.Stack}",
        $"{(pack.Shipment is { } gone ? $"left with {gone}" : pack.IsDisputed ? "two tallies differ" : pack.LabelledAt is { } at ? $"tagged {DayWords.Of(at, state.Today)}" : "not tagged")}{(pack.Order is { } order ? $", for {order}" : "")}",
        pack.Agreed is { } tally ? new("Net tally", $"{tally.Footage.Count:#,0}", "bf", $"by {tally.By}, {DayWords.Of(tally.At, state.Today)}") { Method = "pack-tally", Source = $"entry {tally.Entry}", Inputs = [("boards", $"{tally.Boards.Count}")] } : null,
        $"/tally/{pack.Tag}", "pack");

    public static Found Of(YardState state, Charge charge) => new(charge.Tag, $"charge in {charge.Kiln}: {string.Join(", ", charge.Stacks)}",
        charge.IsRunning ? $"running since {DayWords.Of(charge.LoadedAt, state.Today)}{(ChargeEnd.OutDay(state, charge) is { } day ? $", out from about {DayWords.Of(day, state.Today)}" : "")}" : $"out since {charge.UnloadedAt:d MMM yyyy}",
        new("Went in", $"{charge.FootageIn.Count:#,0}", "bf", $"{charge.Target.Percent:0.#} % wanted") { Source = $"loaded {charge.LoadedAt:d MMM yyyy}", Inputs = [.. charge.Stacks.Select(tag => (tag, state.Stacks.GetValueOrDefault(tag)?.Species.CommonName ?? "-"))] },
        $"/charges/{charge.Tag}", "charge");

    public static Found Of(YardState state, Pour pour) => new(pour.Tag, $"pour, {string.Join(", ", pour.Plan.Pieces.Select(piece => piece.Species).Distinct())}",
        pour.DemouldedAt is { } outAt ? $"out of its mould {DayWords.Of(outAt, state.Today)}: {pour.Seen}" : pour.PouredAt is { } at ? $"in its mould since {DayWords.Of(at, state.Today)}" : $"pours {DayWords.Of(pour.PourOn, state.Today)}",
        new("Depth", $"{pour.Plan.DepthMm:0.#}", "mm", pour.Plan.Resin) { Source = "the plan of the pour" }, $"/pours/{pour.Tag}", "pour");

    // "Is mine done?": one look at where the customer's wood is, how wet, and when it comes out.
    public static Found Of(YardState state, Order order)
    {
        var line = order.Lines.FirstOrDefault(line => !line.IsFilled) ?? order.Lines[^1];
        var wood = line.Asked.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)).OfType<Stack>().Select(stack => $"{stack.Tag} {(stack.Stage == StackStage.InKiln ? $"in charge {stack.Charge}" : stack.IsHere ? $"at {stack.Place}" : "gone")}{(stack.Moisture?.Mean is { } mean ? $", {mean.Percent:0.0} %" : "")}{Out(state, stack)}");
        return new(order.Tag, $"order of {Customers.Named(state, order.Customer)}: {string.Join("; ", order.Lines.Select(one => one.Asked.Goods).Distinct())}",
            order.IsOpen ? $"{string.Join("; ", wood)}{(line.Asked.Stacks.Count > 0 ? ". " : "")}Due {DayWords.Of(order.DueOn, state.Today)}, answered {line.Answer?.ToString().ToLowerInvariant() ?? "not yet"}" : order.WithdrawnWhy is { } why ? $"withdrawn: {why}" : "filled",
            new("Asked", $"{line.Asked.Quantity:#,0.#}", WoodWorth.UnitWords(line.Asked.Unit), $"due {DayWords.Of(line.Asked.DueOn, state.Today)}") { Source = $"order taken {order.TakenAt:d MMM yyyy}", Inputs = [("specification", line.Asked.Specification), ("shipped", $"{line.Shipped:#,0.#}")] },
            $"/promises/{order.Tag}", "order");
    }

    private static string Out(YardState state, Stack stack) =>
        stack.Charge is { } tag && state.Charges.GetValueOrDefault(tag) is { IsRunning: true } charge && ChargeEnd.OutDay(state, charge) is { } day ? $", out from about {DayWords.Of(day, state.Today)}"
        : state.PlannedCharges.Values.LastOrDefault(planned => planned.Stacks.Contains(stack.Tag) && !state.Charges.ContainsKey(planned.Tag)) is { } planned ? $", planned for {planned.Kiln} from {DayWords.Of(planned.InOn, state.Today)} to {DayWords.Of(planned.OutOn, state.Today)}"
        : "";
}
