using System.Globalization;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using BookState = Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One line of an order as the plan has it.</summary>
/// <param name="Id">The order's number, with the line where several are open.</param>
/// <param name="Order">The order.</param>
/// <param name="Asked">The line.</param>
/// <param name="Planned">As the planner sees it.</param>
/// <param name="Unusable">Why wood named in it cannot serve it, in words.</param>
/// <param name="Kept">Stacks of its wood that are kept for it: they stand behind it whether the plan takes of them or not.</param>
public sealed record PlannedLine(string Id, BookState.Order Order, OrderLine Asked, Order Planned, IReadOnlyList<string> Unusable, IReadOnlyList<string> Kept);

/// <summary>Something asked for that no kiln plan can answer.</summary>
/// <param name="Order">The order's number.</param>
/// <param name="Due">Its day.</param>
/// <param name="Why">Why it is left out.</param>
public sealed record NotPlanned(string Order, DateOnly Due, string Why);

/// <summary>Open orders as the planner sees them.</summary>
internal sealed class PlanOrders(YardState state, PlanFigures figures, PlanStacks stacks, PlanTargets targets, IReadOnlySet<string> planned)
{
    private const int QuartersInch = 4;

    /// <summary>Lines that kilns can serve, and what is left out with the reason.</summary>
    public (IReadOnlyList<PlannedLine> Lines, IReadOnlyList<NotPlanned> Left) All()
    {
        var (lines, left) = (new List<PlannedLine>(), new List<NotPlanned>());
        foreach (var order in state.Orders.Values.Where(order => order.IsOpen))
        {
            var open = order.Lines.Where(line => !line.IsFilled).ToList();
            foreach (var line in open)
            {
                var id = open.Count > 1 ? $"{order.Tag}/{line.Asked.Line}" : order.Tag;
                if (line.Asked.Unit == OrderUnit.M3Loose)
                {
                    left.Add(new(id, line.Asked.DueOn, "shavings come from the planer, not from a kiln"));
                }
                else if (LineFootage.Of(state, order, line) is { } footage ? footage.Open < 0.5 : line.Asked.Quantity - line.Shipped < 0.5)
                {
                    left.Add(new(id, line.Asked.DueOn, "all of it is tallied in packs: nothing more has to be dried"));
                }
                else
                {
                    lines.Add(Line(id, order, line));
                }
            }
        }

        return (lines, left);
    }

    private PlannedLine Line(string id, BookState.Order order, BookState.OrderPosition line)
    {
        var unusable = new List<string>();
        var wood = Named(line.Asked, unusable).Concat(Others(order.Tag, line.Asked)).DistinctBy(one => one.Stack).Take(30).ToList();
        var quantity = BoardFeet.From(Math.Max(1.0, Quantity(order, line, wood)));
        var planed = line.Asked.DressedMm is not null ? Math.Max(1, (int)Math.Ceiling(quantity.Count / PlanerRun())) : 0;
        return new(id, order, line.Asked, new(id, line.Asked.DueOn, quantity, wood, planed, Math.Clamp(order.Importance, 1, 5), order.LatePerDayMoney), unusable, [.. wood.Select(one => one.Stack).Where(tag => state.Stacks[tag].ReservedFor == order.Tag)]);
    }

    private double PlanerRun() => (state.Setting("planer_output") ?? 350.0) * 8.0;

    private IEnumerable<OrderWood> Named(OrderLine asked, List<string> unusable)
    {
        foreach (var tag in asked.Stacks)
        {
            var fault = !state.Stacks.TryGetValue(tag, out var stack) || !stack.IsHere ? $"{tag} is not here"
                : !stack.Proven ? $"{tag} is unproven, its tag was lost: it covers nothing until it is proven"
                : !planned.Contains(tag) ? $"{tag} cannot be planned: its species or moisture is not known"
                : Fault(asked, stack);
            if (fault is null)
            {
                yield return new(tag, Kilned(asked, stack!), 0m);
            }
            else
            {
                unusable.Add(fault);
            }
        }
    }

    // Other wood of the mill that is as good as what the order names and is kept for nobody, or for this order.
    private IEnumerable<OrderWood> Others(string order, OrderLine asked) => asked.Unit != OrderUnit.Bf || asked.CustomerWood || asked.NeverKiln || asked.Species is null || asked.ThicknessQuarters is null
        ? []
        : state.Stacks.Values
            .Where(stack => stack.IsHere && planned.Contains(stack.Tag) && stack is { Owner: "mill", NeverKiln: false, Product: Product.Boards } && (stack.ReservedFor is null or "stock" || stack.ReservedFor == order))
            .Where(stack => !asked.Stacks.Contains(stack.Tag) && stack.Species.CommonName == asked.Species && stack.Thickness.Quarters == asked.ThicknessQuarters)
            .Where(stack => (asked.Grain ?? stack.Grain) == stack.Grain && Fault(asked, stack) is null)
            .Select(stack => new OrderWood(stack.Tag, Kilned(asked, stack), figures.OtherWoodMoney));

    private static bool Kilned(OrderLine asked, BookState.Stack stack) => !asked.NeverKiln && stack.Stage is BookState.StackStage.AirDrying or BookState.StackStage.InKiln;

    private string? Fault(OrderLine asked, BookState.Stack stack) =>
        asked.NeverKiln ? AirDriedFault(asked, stack)
        : stack.NeverKiln ? $"{stack.Tag} must stay out of every kiln"
        : asked.PieceLengthMinM is { } least && stack.LongestPiece is { } longest && longest.Metres < least - 0.01 ? Words($"{stack.Tag} is at most {longest.Metres:0.0} m long, {least:0.0} m is asked")
        : asked.ThicknessMinMm is { } min && Thickness(stack) is { } dry && dry.Millimetres < min ? Words($"{stack.Tag} will be {dry.Millimetres:0.0} mm thick dry, {min:0.0} mm is asked")
        : null;

    private static string? AirDriedFault(OrderLine asked, BookState.Stack stack) =>
        stack.Stage != BookState.StackStage.AirDrying ? $"{stack.Tag} has been in a kiln"
        : stack.Moisture?.Mean is not { } mean ? $"{stack.Tag} has no reading"
        : mean.Percent < (asked.McLowPct ?? 0.0) || mean.Percent > (asked.McHighPct ?? 500.0) ? Words($"{stack.Tag} is at {mean.Percent:0.0} %, {asked.McLowPct:0.#} to {asked.McHighPct:0.#} % is asked")
        : null;

    private Length? Thickness(BookState.Stack stack) => stack.SawnThickness is { } sawn ? DryThickness.Of(stack.Species, sawn, stack.Grain, targets.Of(stack)) : null;

    private double Quantity(BookState.Order order, BookState.OrderPosition line, List<OrderWood> wood)
    {
        return line.Asked.Unit switch
        {
            _ when line.Asked.CustomerWood && wood.Count > 0 => wood.Sum(one => stacks.Yield(state.Stacks[one.Stack]).Likely) - 0.1 * wood.Count, // all there is of it
            OrderUnit.Slabs or OrderUnit.Pieces when wood.Count > 0 => Pieces(line.Asked.Quantity - line.Shipped, state.Stacks[wood[0].Stack]),
            _ => LineFootage.Of(state, order, line)?.Rough ?? line.Asked.Quantity - line.Shipped,
        };
    }

    // Whole pieces of a stack, as a share of what it yields; a hair under, for the rounding of tenths.
    private double Pieces(double count, BookState.Stack stack) => Math.Max(0.2, count / Math.Max(1, stack.Pieces ?? (int)count) * stacks.Yield(stack).Likely - 0.1);

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
