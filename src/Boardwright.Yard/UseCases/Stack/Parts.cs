using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What a stack's footage becomes once dry: what an order takes, what is spare, what falls down and what shrinks. Board feet.</summary>
/// <param name="Order">The order.</param>
/// <param name="Sold">Footage the order takes of it, at most what there is.</param>
/// <param name="Dressing">Lost in dressing for it: boards that skip, and trim.</param>
/// <param name="Spare">Left over; nothing when it falls short.</param>
/// <param name="Missing">Missing for the order.</param>
/// <param name="Falldown">Lost to drying defects and trimming, likely.</param>
/// <param name="Shrunk">Lost to shrinking.</param>
public sealed record StackParts(string Order, double Sold, double Dressing, double Spare, double Missing, double Falldown, double Shrunk)
{
    /// <summary>Moisture it is dried to.</summary>
    public required MoistureContent At { get; init; }

    public static StackParts? Of(YardState state, Stack stack)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(stack);
        if (stack.ReservedFor is not { } tag || !state.Orders.TryGetValue(tag, out var order) || stack.NeverKiln || !stack.Proven
            || order.Lines.FirstOrDefault(line => line.Asked.Stacks is [var only] && only == stack.Tag && line.Asked.Unit == OrderUnit.Bf) is not { } position
            || StackYield.Of(state, stack) is not { } dry || LineFootage.Of(state, order, position) is not { } wanted)
        {
            return null;
        }

        var share = wanted.Rough > 0.0 ? Math.Min(1.0, dry.Likely / wanted.Rough) : 0.0;
        return new(tag, wanted.Open * share, wanted.Dressing * share, Math.Max(dry.Likely - wanted.Rough, 0.0), Math.Max(wanted.Rough - dry.Likely, 0.0), dry.Shrunk - dry.Likely, stack.Footage.Count - dry.Shrunk) { At = dry.To };
    }
}
