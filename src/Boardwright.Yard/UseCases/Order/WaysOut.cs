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
    /// <param name="state">The yard.</param>
    /// <param name="made">The worked plan.</param>
    /// <param name="id">The order's line in the plan.</param>
    /// <param name="covers">Wood advised for orders that may fall short: what is advised for one is not offered to another.</param>
    public static IReadOnlyList<WayOut> Of(YardState state, PlanMade made, string id, IReadOnlyDictionary<string, OrderCover> covers)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(covers);
        var index = made.Yard.Lines.ToList().FindIndex(line => line.Id == id);
        return index < 0 ? [] : [.. new[] { Later(made, index), Part(made, index) }.OfType<WayOut>().Concat(Others(state, made, index, [.. covers.Values.Where(cover => cover.Order != id).Select(cover => cover.Stack)])).Take(WaysMost)];
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
            : made.Input.Orders[index].Wood.Count == 0
            ? new("Name no day before there is wood for it.", made.Yard.Lines[index].Unusable is { Count: > 0 } unusable ? $"{string.Join("; ", unusable)}." : "No stack of the mill is as good as what it asks and free.")
            : new("Offer no day yet.", "Its wood is not dry within the plan. Let it dry in the yard and ask again with a reading.");
    }

    // What its own wood, or wood as good, gives by the day.
    private static WayOut? Part(PlanMade made, int index)
    {
        var order = made.Input.Orders[index];
        var ready = order.Wood.Select(wood => WorkedReady.Of(made, index, wood)).Where(InTime).ToList();
        var footage = Math.Min(order.Quantity.Count, ready.Sum(wood => wood.SpareBf));
        return footage < 1.0 || footage >= order.Quantity.Count
            ? null
            : new(string.Create(CultureInfo.InvariantCulture, $"Offer {footage:#,0} bf by {DayWords.Of(order.Due, made.Input.Calendar.FirstDay)}, the rest later."), string.Join(" ", ready.Select(wood => $"{wood.Stack}: {wood.Words}")));
    }

    // Other thickness or other wood of the mill, kept for nobody, that can be ready by the day.
    private static IEnumerable<WayOut> Others(YardState state, PlanMade made, int index, HashSet<string> taken)
    {
        var order = made.Input.Orders[index];
        var asked = made.Yard.Lines[index].Asked;
        return made.Input.Stacks
            .Select(stack => (Planned: stack, Stack: state.Stacks[stack.Id]))
            .Where(one => !taken.Contains(one.Stack.Tag))
            .Where(one => one.Stack is { Owner: "mill", NeverKiln: false } && one.Stack.ReservedFor is null or "stock" && order.Wood.All(wood => wood.Stack != one.Stack.Tag))
            .Where(one => (asked.Unit is OrderUnit.Slabs or OrderUnit.Pieces) == (one.Stack.Product is Product.Slabs or Product.Slab or Product.Boule) && one.Stack.Product != Product.Blocking)
            .Select(one => (one.Stack, Ready: WorkedReady.Of(made, index, new(one.Stack.Tag, one.Stack.Stage is BookState.StackStage.AirDrying or BookState.StackStage.InKiln, 0m))))
            .Where(one => InTime(one.Ready))
            .OrderBy(one => one.Stack.Thickness.Quarters < asked.ThicknessQuarters).ThenByDescending(one => one.Stack.Species.CommonName == asked.Species).ThenByDescending(one => one.Stack.Species.ScheduleGroup is { } group && group == SpeciesGroup(asked)).ThenByDescending(one => one.Stack.Thickness.Quarters == asked.ThicknessQuarters).ThenByDescending(one => Math.Min(one.Ready.SpareBf, order.Quantity.Count)).ThenByDescending(one => one.Ready.InPlan)
            .DistinctBy(one => one.Stack.Species.CommonName)
            .Select(one => new WayOut(
                string.Create(CultureInfo.InvariantCulture, $"Offer {one.Stack.Species.CommonName} {one.Stack.Thickness} from {one.Stack.Tag}."),
                string.Create(CultureInfo.InvariantCulture, $"{one.Ready.SpareBf:#,0} bf are kept for nobody{Thinner(asked, one.Stack)}. {one.Ready.Words}")));
    }

    private static string Thinner(OrderLine asked, BookState.Stack stack) => stack.Thickness.Quarters < asked.ThicknessQuarters ? string.Create(CultureInfo.InvariantCulture, $", thinner than the {asked.ThicknessQuarters}/4 asked: it serves only where the customer can glue up") : "";

    private static string? SpeciesGroup(OrderLine asked) =>
        asked.Species is { } name && Wood.SpeciesTable.Find("species", name) is Outcome<Wood.Species>.Done(var species) ? species.ScheduleGroup : null;

    private static bool InTime(WorkedReady wood) => wood is { On: not null, LateDays: 0, SpareBf: > 1.0 };
}
