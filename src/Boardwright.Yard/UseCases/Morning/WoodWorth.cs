using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What a board foot of a stack sells for once dry, from the house's own prices.</summary>
public static class WoodWorth
{
    // Board feet in a cubic metre of nominal footage.
    private const double BfPerCubicMetre = 1.0 / 0.002359737;

    /// <summary>Price with its basis; null where the house has no price for the wood.</summary>
    public static (decimal Money, string Basis)? PerBf(YardState state, Species species, NominalThickness thickness, Product product)
    {
        var name = species.CommonName.Replace(' ', '_').ToLowerInvariant();
        if (product is Product.Slabs or Product.Slab or Product.Boule && (state.Setting($"slab_dry_{name}") ?? state.Setting("slab_dry")) is { } slab)
            return ((decimal)slab, $"{slab:0.00} a bf, dry slabs");
        var listed = state.Setting($"dry_4_4_1c_and_better_{name}") is { } set ? (decimal)set
            : state.Prices.TryGetValue(species.CommonName, out var prices) ? 0.4m * prices.DryFasMoney + 0.6m * prices.Dry1cMoney
            : (decimal?)null;
        if (listed is not { } flat)
            return null;
        var premium = (decimal)(state.Setting($"premium_{thickness.Quarters}_4") ?? 0.0) / 100m;
        var price = flat * (1m + premium);
        return (price, $"{price:0.00} a bf, dry No. 1 Common and better{(premium > 0m ? $", {thickness} adds {premium:P0}" : "")}");
    }

    /// <summary>Price of a stack's wood.</summary>
    public static (decimal Money, string Basis)? PerBf(YardState state, Stack stack) => PerBf(state, stack.Species, stack.Thickness, stack.Product);

    /// <summary>Worth of the wood in a charge: what went in, at its price dry.</summary>
    public static decimal Of(YardState state, Charge charge) =>
        charge.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)).OfType<Stack>().Sum(stack => (decimal)stack.Footage.Count * (PerBf(state, stack)?.Money ?? 0m));

    /// <summary>What an order line comes to; null where its goods have no price or no board feet.</summary>
    public static (decimal Money, string Basis)? Of(YardState state, OrderLine line)
    {
        if (FootageOf(line) is not { } footage || line.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)).OfType<Stack>().FirstOrDefault() is not { } stack || PerBf(state, stack) is not { } price)
            return null;
        return ((decimal)footage * price.Money, $"{footage:#,0} bf at {price.Basis}");
    }

    /// <summary>Board feet of a line; null for goods that are not counted in board feet.</summary>
    public static double? FootageOf(OrderLine line) => line.Unit switch
    {
        OrderUnit.Bf => line.Quantity,
        OrderUnit.M3 => line.Quantity * BfPerCubicMetre,
        _ => null,
    };

    /// <summary>A quantity as the order says it.</summary>
    public static string Words(OrderLine line) => $"{line.Quantity:#,0.#} {UnitWords(line.Unit)}";

    public static string UnitWords(OrderUnit unit) => unit switch
    {
        OrderUnit.Bf => "bf",
        OrderUnit.M3 => "m³",
        OrderUnit.M3Loose => "m³ loose",
        OrderUnit.Slabs => "slabs",
        _ => "pieces",
    };
}
