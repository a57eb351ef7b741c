using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

public enum OrderedMoisture
{
    NotAsked,
    NotMeasured,
    AsOrdered,
    Wetter,
    Drier,
}

/// <summary>Moisture as measured beside moisture as ordered. The mean decides: it must lie within what was asked for.</summary>
/// <remarks>
/// Wood wetter than ordered shrinks after it was sold. It leaves only on a named decision: who agreed, and why (common practice, no source).
/// </remarks>
/// <param name="Mean">Mean as last measured; null where nothing was.</param>
/// <param name="Low">Least asked for, percent; null for no limit.</param>
/// <param name="High">Most asked for, percent; null for no limit.</param>
public sealed record AsOrdered(MoistureContent? Mean, double? Low, double? High)
{
    public OrderedMoisture Is => (Low, High, Mean) switch
    {
        (null, null, _) => OrderedMoisture.NotAsked,
        (_, _, null) => OrderedMoisture.NotMeasured,
        (_, { } most, { } mean) when mean.Percent > most + Rounding => OrderedMoisture.Wetter,
        ({ } least, _, { } mean) when mean.Percent < least - Rounding => OrderedMoisture.Drier,
        _ => OrderedMoisture.AsOrdered,
    };

    public bool IsWetter => Is == OrderedMoisture.Wetter;

    /// <summary>"6 to 8 %": what was asked for; empty without a limit.</summary>
    public string Asked => (Low, High) switch
    {
        ({ } low, { } high) when low != high => string.Create(CultureInfo.InvariantCulture, $"{low:0.#} to {high:0.#} %"),
        ({ } low, null) => string.Create(CultureInfo.InvariantCulture, $"{low:0.#} % or more"),
        (null, { } high) => string.Create(CultureInfo.InvariantCulture, $"{high:0.#} % or less"),
        ({ } one, _) => string.Create(CultureInfo.InvariantCulture, $"{one:0.#} %"),
        _ => "",
    };

    /// <summary>"wetter than ordered": the plain word for papers and pages; empty where nothing was asked.</summary>
    public string Word => Is switch
    {
        OrderedMoisture.Wetter => "wetter than ordered",
        OrderedMoisture.Drier => "drier than ordered",
        OrderedMoisture.NotMeasured => "not measured",
        OrderedMoisture.AsOrdered => "as ordered",
        _ => "",
    };

    /// <summary>"wetter than ordered: 6 to 8 %"; empty where nothing was asked.</summary>
    public string Words => Is switch
    {
        OrderedMoisture.Wetter => $"wetter than ordered: {Asked}",
        OrderedMoisture.Drier => $"drier than ordered: {Asked}",
        OrderedMoisture.NotMeasured => $"{Asked} ordered, not measured",
        OrderedMoisture.AsOrdered => $"as ordered: {Asked}",
        _ => "",
    };

    // Half of the last digit a meter shows.
    private const double Rounding = 0.05;

    /// <summary>A moisture beside an order line; of wood without an order nothing is asked.</summary>
    public static AsOrdered Of(MoistureContent? mean, OrderLine? line) => new(mean, line?.McLowPct, line?.McHighPct);

    /// <summary>A pack beside the line it was tallied for.</summary>
    public static AsOrdered Of(YardState state, Pack pack)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(pack);
        return Of(PackSheet.From(state, pack).Moisture?.Mean ?? (pack.Agreed ?? pack.Tallies[0]).Moisture, LineOf(state, pack));
    }

    /// <summary>Board feet in packs that are here and dry enough for a line of an order, also where their count is still disputed: nothing more has to be dried for them.</summary>
    public static double PackedBf(YardState state, Order order, int line)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(order);
        return order.Packs.Select(tag => state.Packs[tag]).Where(pack => pack.IsHere && (pack.Line ?? 1) == line && !Of(state, pack).IsWetter).Sum(pack => pack.Footage.Count);
    }

    private static OrderLine? LineOf(YardState state, Pack pack) =>
        pack.Order is { } order && state.Orders.TryGetValue(order, out var known) ? known.Lines.Find(line => line.Asked.Line == (pack.Line ?? 1))?.Asked : null;
}
