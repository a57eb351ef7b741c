using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Wood that could stand behind an order whose own wood may yield too little.</summary>
/// <param name="Stack">A stack of the mill, as good as what the order names and kept for nobody.</param>
/// <param name="Words">What it is and what it covers.</param>
public sealed record OrderCover(string Stack, string Words)
{
    private const double SureEnough = 0.85;

    /// <summary>The largest such stack; null when the order's wood is enough or none is as good.</summary>
    public static OrderCover? Of(YardState state, PlanMade made, SeasonPromise promise)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(promise);
        var index = made.Input.Orders.ToList().FindIndex(order => order.Id == promise.Line.Id);
        var wood = made.Input.Orders[index].Wood.Where(one => one.ExtraMoney > 0m && !promise.Stacks.Contains(one.Stack) && state.Stacks[one.Stack].ReservedFor is null)
            .OrderByDescending(one => made.Yard.Yields[one.Stack].Likely).FirstOrDefault();
        return wood is null || made.Enough[index] >= SureEnough ? null : new(
            wood.Stack, string.Create(CultureInfo.InvariantCulture, $"{made.Yard.Yields[wood.Stack].Likely:#,0} bf of {state.Stacks[wood.Stack].Species.CommonName} {state.Stacks[wood.Stack].Thickness}, kept for nobody. It covers the volume, not the day."));
    }

    /// <summary>Keeps a stack for an order.</summary>
    public static Outcome<IReadOnlyList<Entry>> Keep(YardBook book, string stack, string order, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        return string.IsNullOrWhiteSpace(by)
            ? new Refusal("who", "nobody", "the name of whoever says so")
            : key.Write(book, by, new StackReserved(stack, order, book.State.Stacks.TryGetValue(stack, out var known) && known.NeverKiln));
    }
}
