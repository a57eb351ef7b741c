using System.Globalization;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using BookState = Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A way out of an order that cannot be on time.</summary>
/// <param name="Do">What to offer, a sentence that begins with a verb.</param>
/// <param name="Why">What makes it hold.</param>
public sealed record WayOut(string Do, string Why);

/// <summary>What can be offered where an order cannot be met in time: a later day, a part by the day, other wood.</summary>
public static class WaysOut
{
    private const int WaysMost = 3;

    /// <summary>The ways out that there are for an order of a plan; the best of each kind.</summary>
    public static IReadOnlyList<WayOut> Of(YardState state, PlanMade made, string id)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        var index = made.Yard.Lines.ToList().FindIndex(line => line.Id == id);
        return index < 0 ? [] : [.. new[] { Later(made, index), Part(made, index) }.OfType<WayOut>().Concat(Others(state, made, index)).Take(WaysMost)];
    }

    private static WayOut? Later(PlanMade made, int index)
    {
        var today = made.Input.Calendar.FirstDay;
        var planned = made.Answer.Outlook.Orders[index];
        if (planned is { Met: true, ReadyHalf: { } half, ReadyMost: { } most })
        {
            return new($"Offer {DayWords.Of(most, today)}.", $"The plan has it ready on {DayWords.Of(half, today)} as often as not, and by {DayWords.Of(most, today)} nine times in ten.");
        }

        var alone = EarliestPromise.Of(made.Input, made.Input.Orders[index]);
        return alone.Half is { } first
            ? new(
                alone.Most is { } late ? $"Offer {DayWords.Of(late, today)} at the earliest." : $"Name no day before {DayWords.Of(first, today)}.",
                alone.Most is null
                    ? $"With the yard to itself it is ready on {DayWords.Of(first, today)} as often as not; nine times in ten lies beyond the plan. Ask again when its wood has been read."
                    : $"With the yard to itself it is ready on {DayWords.Of(first, today)} as often as not. Other orders move for it.")
            : new("Offer no day yet.", "Its wood is not dry within the plan. Let it dry in the yard and ask again with a reading.");
    }

    // What its own wood, or wood as good, gives by the day.
    private static WayOut? Part(PlanMade made, int index)
    {
        var order = made.Input.Orders[index];
        var ready = order.Wood.Where(wood => EarliestPromise.Of(made.Input, order with { Wood = [wood], Quantity = BoardFeet.From(1.0) }).Half is { } day && day <= order.Due).ToList();
        var footage = Math.Min(order.Quantity.Count, ready.Sum(wood => Spare(made, wood.Stack, order.Id)));
        return footage < 1.0 || footage >= order.Quantity.Count
            ? null
            : new(string.Create(CultureInfo.InvariantCulture, $"Offer {footage:#,0} bf by {order.Due:d MMM}, the rest later."), $"{string.Join(", ", ready.Select(wood => wood.Stack))} can be ready by then.");
    }

    // Other thickness or other wood of the mill, kept for nobody, that can be ready by the day.
    private static IEnumerable<WayOut> Others(YardState state, PlanMade made, int index)
    {
        var order = made.Input.Orders[index];
        var asked = made.Yard.Lines[index].Asked;
        return made.Input.Stacks
            .Select(stack => (Planned: stack, Stack: state.Stacks[stack.Id]))
            .Where(one => one.Stack is { Owner: "mill", NeverKiln: false } && one.Stack.ReservedFor is null or "stock" && order.Wood.All(wood => wood.Stack != one.Stack.Tag))
            .Where(one => (asked.Unit is OrderUnit.Slabs or OrderUnit.Pieces) == (one.Stack.Product is Product.Slabs or Product.Slab or Product.Boule) && one.Stack.Product != Product.Blocking)
            .Select(one => (one.Stack, Spare: Spare(made, one.Stack.Tag, order.Id), Ready: EarliestPromise.Of(made.Input, order with { Wood = [new(one.Stack.Tag, one.Stack.Stage is BookState.StackStage.AirDrying or BookState.StackStage.InKiln, 0m)], Quantity = BoardFeet.From(1.0) }).Half))
            .Where(one => one.Spare > 1.0 && one.Ready is { } day && day <= order.Due)
            .OrderByDescending(one => one.Stack.Species.CommonName == asked.Species).ThenByDescending(one => one.Stack.Species.ScheduleGroup is { } group && group == SpeciesGroup(asked)).ThenByDescending(one => one.Stack.Thickness.Quarters == asked.ThicknessQuarters).ThenByDescending(one => Math.Min(one.Spare, order.Quantity.Count))
            .DistinctBy(one => one.Stack.Species.CommonName)
            .Select(one => new WayOut(
                string.Create(CultureInfo.InvariantCulture, $"Offer {one.Stack.Species.CommonName} {one.Stack.Thickness} from {one.Stack.Tag}."),
                string.Create(CultureInfo.InvariantCulture, $"{one.Spare:#,0} bf are kept for nobody and can be ready by {order.Due:d MMM}.")));
    }

    private static string? SpeciesGroup(OrderLine asked) =>
        asked.Species is { } name && Wood.SpeciesTable.Find("species", name) is Outcome<Wood.Species>.Done(var species) ? species.ScheduleGroup : null;

    // What a stack yields beyond what the plan keeps for other orders.
    private static double Spare(PlanMade made, string stack, string order) => Math.Max(0.0,
        made.Yard.Yields[stack].Likely - made.Answer.Plan.Servings.Where(serving => serving.Stack == stack && serving.Order != order).Sum(serving => serving.Quantity.Count));
}
