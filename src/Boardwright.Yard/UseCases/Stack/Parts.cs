using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What a stack's footage becomes once dry: what an order takes, what is spare, what falls down and what shrinks. Board feet.</summary>
/// <param name="Order">The order.</param>
/// <param name="Sold">Footage the order takes of it, at most what there is.</param>
/// <param name="Spare">Left over; nothing when it falls short.</param>
/// <param name="Missing">Missing for the order.</param>
/// <param name="Falldown">Lost to drying defects and trimming, likely.</param>
/// <param name="Shrunk">Lost to shrinking.</param>
public sealed record StackParts(string Order, double Sold, double Spare, double Missing, double Falldown, double Shrunk)
{
    public static StackParts? Of(YardState state, Stack stack)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(stack);
        if (stack.ReservedFor is not { } tag || !state.Orders.TryGetValue(tag, out var order) || stack.NeverKiln || stack.Moisture?.Mean is not { } mean
            || order.Lines.FirstOrDefault(line => line.Asked.Stacks is [var only] && only == stack.Tag && line.Asked.Unit == OrderUnit.Bf) is not { } position
            || StackFigures.Shrunk(stack, mean) is not { } shrunk)
        {
            return null;
        }

        var net = shrunk.Count * (1.0 - (StackFigures.Falldown(state, stack)?.Likely ?? 0.0) / 100.0);
        var wanted = Math.Max(position.Asked.Quantity - position.Shipped - AsOrdered.PackedBf(state, order, position.Asked.Line), 0.0);
        return new(tag, Math.Min(wanted, net), Math.Max(net - wanted, 0.0), Math.Max(wanted - net, 0.0), shrunk.Count - net, stack.Footage.Count - shrunk.Count);
    }
}
