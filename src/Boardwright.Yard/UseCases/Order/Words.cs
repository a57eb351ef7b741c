using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Words of orders for a person.</summary>
public static class OrderWords
{
    /// <summary>The unit as written on an order.</summary>
    public static string Unit(OrderUnit unit, double count = 2.0) => unit switch
    {
        OrderUnit.Bf => "bf",
        OrderUnit.M3 => "m³",
        OrderUnit.M3Loose => "m³ loose",
        OrderUnit.Slabs => count == 1.0 ? "slab" : "slabs",
        _ => count == 1.0 ? "piece" : "pieces",
    };
}
