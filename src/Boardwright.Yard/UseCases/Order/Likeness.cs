using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>An order on record that a new one may be, or a customer who may be the same under another name.</summary>
public sealed record LikeOrder(string Order, string Customer, bool SameGoods, string Words);

/// <summary>Finds an order typed twice and a customer under two names: asked before it is written, never decided.</summary>
/// <remarks>Names agree when their letters do, however they are spaced and cased, or differ by at most one letter in six; goods agree with quantity within 2 % and day within a week.</remarks>
public static class OrderLikeness
{
    private const double QuantityShare = 0.02;
    private const int DaysApart = 7;
    private const int LettersPerSlip = 6;

    public static IReadOnlyList<LikeOrder> Of(YardState state, string customer, string goods, double quantity, DateOnly dueOn)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.Orders.Values.Select(order => Alike(state, order, customer, goods, quantity, dueOn)).OfType<LikeOrder>()];
    }

    private static LikeOrder? Alike(YardState state, Order order, string customer, string goods, double quantity, DateOnly dueOn)
    {
        var joined = state.Customers.AreOne(order.Customer, customer);
        if (!joined && !SameName(order.Customer, customer))
            return null;
        var same = order.IsOpen && order.Lines.Any(line => SameName(line.Asked.Goods, goods) && Math.Abs(line.Asked.Quantity - quantity) <= QuantityShare * quantity && Math.Abs(line.Asked.DueOn.DayNumber - dueOn.DayNumber) <= DaysApart);
        var other = !joined && !string.Equals(order.Customer, customer, StringComparison.Ordinal);
        return same ? new(order.Tag, order.Customer, true, $"{order.Tag} of {order.Customer} asks for the same by {DayWords.Of(order.DueOn, state.Today)}. Was it typed twice?")
            : other ? new(order.Tag, order.Customer, false, $"{order.Tag} is of {order.Customer}. Is it the same customer under another name?")
            : null;
    }

    /// <summary>Whether two names are likely one.</summary>
    public static bool SameName(string left, string right)
    {
        var (a, b) = (Letters(left), Letters(right));
        return a.Length > 0 && b.Length > 0 && (a == b || Distance(a, b) <= Math.Max(a.Length, b.Length) / LettersPerSlip);
    }

    private static string Letters(string name) => string.Concat(name.Where(char.IsLetterOrDigit).Select(char.ToUpperInvariant));

    // Edit distance: letters added, left out or changed.
    private static int Distance(string left, string right)
    {
        var before = Enumerable.Range(0, right.Length + 1).ToArray();
        for (var i = 1; i <= left.Length; i++)
        {
            var now = new int[right.Length + 1];
            now[0] = i;
            for (var j = 1; j <= right.Length; j++)
                now[j] = Math.Min(Math.Min(now[j - 1], before[j]) + 1, before[j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1));
            before = now;
        }

        return before[right.Length];
    }
}
