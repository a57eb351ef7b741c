using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>Heat wanted and there on one day, kW as a day's mean.</summary>
/// <param name="Day">Which.</param>
/// <param name="CapacityKilowatts">Boilers that run.</param>
/// <param name="ShopKilowatts">Shop and house.</param>
/// <param name="KilnKilowatts">All kilns.</param>
/// <method page="docs/methods/boiler-and-shop-heat.md"/>
public sealed record HeatDay(DateOnly Day, double CapacityKilowatts, double ShopKilowatts, double KilnKilowatts)
{
    /// <summary>Left for kilns after shop and house.</summary>
    public double SpareKilowatts => CapacityKilowatts - ShopKilowatts;

    /// <summary>What is missing; zero when it is enough.</summary>
    public double ShortKilowatts => Math.Max(0.0, KilnKilowatts - SpareKilowatts);

    /// <summary>Balance of a run of days.</summary>
    /// <param name="days">Each with its outside mean and what the kilns want, kW.</param>
    /// <param name="boilers">All boilers.</param>
    /// <param name="shop">Shop and house.</param>
    public static IReadOnlyList<HeatDay> Of(IEnumerable<(DateOnly Day, Temperature Outside, double KilnKilowatts)> days, IReadOnlyList<Boiler> boilers, ShopHeat shop)
    {
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(shop);
        return [.. days.Select(day => new HeatDay(day.Day, Boiler.CapacityKilowatts(boilers, day.Day), shop.KilowattsAt(day.Outside), day.KilnKilowatts))];
    }
}
