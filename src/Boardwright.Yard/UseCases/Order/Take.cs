using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>An order of one line as it was typed. Price: money a board foot; shortest piece: feet unless another unit is written; forbidden: woods that must not be in it, with commas between.</summary>
public sealed record OrderTyped(
    string? Order, string? Customer, string? Goods, string? Quantity, string? Unit, string? DueOn, string? Specification, string? Species, string? Thickness, string? McLow, string? McHigh,
    string? Importance, string? LatePerDay, string? Stacks, bool NeverKiln, bool HeatTreated, bool Delivered, bool CustomerWood, string? By, bool IsAnother, string? Price = null, string? ShortestPiece = null, string? Forbidden = null);

/// <summary>Takes an order. One that is like an order on record is asked about first.</summary>
public static class OrderTake
{
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, OrderTyped order, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(key);
        var state = book.State;
        var typed = new Typed();
        var tag = typed.Named("Order", order.Order, "a number, such as " + NextOrder(state));
        typed.Refuse(TagNumbers.Fault(state, "Order", tag, key.Phone));
        var customer = typed.Named("Customer", order.Customer, "who asks");
        var goods = typed.Named("Goods", order.Goods, "what is asked for, such as black cherry 4/4");
        var quantity = Number(typed, "Quantity", order.Quantity, 1e-3, 1e6);
        if (!Enum.TryParse<OrderUnit>(order.Unit, ignoreCase: true, out var unit))
            typed.Refuse("Unit", order.Unit, "bf, m3, slabs, pieces or m3 loose");
        if (!DateOnly.TryParseExact(order.DueOn, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var due) || due < state.Today)
            typed.Refuse("Due", order.DueOn, $"a day from {state.Today:yyyy-MM-dd} on");
        var species = Known(typed, order.Species, text => SpeciesTable.Find("Species", text));
        var thickness = Known(typed, order.Thickness, text => QuartersTyped.Of(state, "Thickness", text).Then<Thick>(value => new Thick(value.Quarters, QuartersTyped.SizeBefore(text))));
        var (low, high) = (Percent(typed, "Moisture from", order.McLow), Percent(typed, "Moisture to", order.McHigh));
        if (low > high)
            typed.Refuse("Moisture", $"{low} to {high} %", "the lower figure first");
        var importance = typed.Whole("Importance", order.Importance ?? "3", 1, 5);
        var late = string.IsNullOrWhiteSpace(order.LatePerDay) ? 0.0 : Number(typed, "Money a day late", order.LatePerDay, 0.0, 1e6);
        var price = string.IsNullOrWhiteSpace(order.Price) ? (double?)null : Number(typed, "Price a board foot", order.Price, 0.0, 1e4);
        var shortest = Known(typed, order.ShortestPiece, text => SizeTyped.Along("Shortest piece", text, "ft", SizeTyped.Longest(state)).Then<Long>(size => size.Length.Feet is >= 0.5 and <= 60.0 ? new Long(size) : new Refusal("Shortest piece", text, "0.5 to 60 feet")));
        var forbidden = (order.Forbidden ?? "").Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(name => Known(typed, name, text => SpeciesTable.Find("Not in it", text))).OfType<Species>().Select(wood => wood.CommonName).ToList();
        if (species is not null && forbidden.Contains(species.CommonName))
            typed.Refuse("Not in it", species.CommonName, "woods other than the one asked for");
        var stacks = (order.Stacks ?? "").Split([',', ' ', ';'], StringSplitOptions.RemoveEmptyEntries);
        var by = typed.By(state, order.By);
        if (typed.Refusals.Count == 0 && !order.IsAnother)
        {
            foreach (var like in OrderLikeness.Of(state, customer, goods, quantity, due))
                typed.Refuse(like.SameGoods ? "The same order?" : "The same customer?", $"{customer}, {goods}", $"{like.Words} If not, say that it is another.");
        }

        return typed.Then(() => key.Write(book, by, new OrderTaken(tag, customer,
            [new(1, goods, quantity, unit, due, order.Specification?.Trim() ?? "", stacks, species?.CommonName, thickness?.Quarters, null, low, high, NeverKiln: order.NeverKiln, HeatTreated: order.HeatTreated, Delivered: order.Delivered, CustomerWood: order.CustomerWood,
                ThicknessMinMm: thickness?.Least?.Millimetres, PieceLengthMinM: shortest?.Value.Length.Metres, ForbiddenSpecies: forbidden.Count > 0 ? forbidden : null, PriceMoneyPerBf: (decimal?)price)],
            importance, (decimal)late), AsTyped(order, thickness, shortest)));
    }

    /// <summary>The next free order tag: one of the phone's own, else the one after all that are used or set aside.</summary>
    public static string NextOrder(YardState state, string? phone = null) => TagNumbers.Next(state, TagNumbers.Orders, phone);

    // A size a customer names is the least that is taken, rough and dry; the name in quarters is what is sawn for it.
    private sealed record Thick(int Quarters, Length? Least);

    private sealed record Long(SizeTyped Value);

    private static Dictionary<string, string>? AsTyped(OrderTyped order, Thick? thickness, Long? shortest)
    {
        var typed = new Dictionary<string, string>(StringComparer.Ordinal);
        if (thickness?.Least is not null)
            typed["thickness_quarters"] = order.Thickness!.Trim();
        if (shortest is not null)
            typed["piece_length_min_m"] = shortest.Value.Kept;
        return typed.Count > 0 ? typed : null;
    }

    private static T? Known<T>(Typed typed, string? text, Func<string, Outcome<T>> read)
        where T : class
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        switch (read(text))
        {
            case Outcome<T>.Done(var value):
                return value;
            case Outcome<T>.Refused(var reasons):
                typed.Take<T?>(new Outcome<T?>.Refused(reasons), null);
                return null;
            default:
                throw new InvalidOperationException("A field is read or refused.");
        }
    }

    private static double? Percent(Typed typed, string what, string? text) => string.IsNullOrWhiteSpace(text) ? null : Number(typed, what, text.TrimEnd('%', ' '), 3.0, 100.0);

    private static double Number(Typed typed, string what, string? text, double least, double most)
    {
        if (Read.Number(what, text ?? "") is Outcome<double>.Done(var value) && value >= least && value <= most)
            return value;
        typed.Refuse(what, text, string.Create(CultureInfo.InvariantCulture, $"a number from {least:0.###} to {most:#,0}"));
        return least;
    }
}
