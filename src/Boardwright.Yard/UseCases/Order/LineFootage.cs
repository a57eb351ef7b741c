using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Board feet an order line still wants of its wood, counted rough. Promises, plan, logs and the stack's own page all read it here.</summary>
/// <param name="Open">Sold, less what has left and what lies here in packs that are dry enough.</param>
/// <param name="Rough">What has to be there before dressing: boards that skip and trim are lost in it. The same where it is sold rough.</param>
public sealed record LineFootage(double Open, double Rough)
{
    /// <summary>Lost in dressing.</summary>
    public double Dressing => Rough - Open;

    /// <summary>Of a line; null for goods not counted in board feet.</summary>
    public static LineFootage? Of(YardState state, Order order, OrderPosition line)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(line);
        if (WoodWorth.FootageOf(line.Asked) is not { } asked)
            return null;
        var open = Math.Max(0.0, asked * (1.0 - line.Shipped / line.Asked.Quantity) - AsOrdered.PackedBf(state, order, line.Asked.Line));
        return new(open, line.Asked is { Unit: OrderUnit.Bf, DressedMm: not null } ? open / Kept(state, line.Asked) : open);
    }

    // Footage stays as tallied rough; what is lost in dressing are boards that skip and trim.
    private static double Kept(YardState state, OrderLine asked)
    {
        var skip = state.Setting(asked.Grain == Grain.Quarter ? "skip_reject_quarter" : "skip_reject_flat") ?? 0.0;
        return (1.0 - skip / 100.0) * (1.0 - (state.Setting("dressing_trim") ?? 0.0) / 100.0);
    }
}
