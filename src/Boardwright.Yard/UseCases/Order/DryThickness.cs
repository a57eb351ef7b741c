using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How thick sawn boards are once dry, and what an order in millimetres means for stock named in quarters of an inch.</summary>
/// <method page="docs/methods/shrinkage.md"/>
public static class DryThickness
{
    private const double UsualPercent = 8.0;

    /// <summary>Of a size sawn green; null where no shrinkage is known. Flatsawn boards shrink radially in thickness, quartersawn tangentially.</summary>
    public static Length? Of(Species species, Length sawn, Grain grain, MoistureContent dry)
    {
        ArgumentNullException.ThrowIfNull(species);
        return Shrinkage.Total(species, grain == Grain.Quarter ? ShrinkageDirection.Tangential : ShrinkageDirection.Radial) is Outcome<double>.Done(var total)
            ? Shrinkage.Size(sawn, total, species.ShrinkageStart, species.ShrinkageStart, dry) : null;
    }

    /// <summary>What is asked, what the name in quarters is, and what the wood named for it will be; null for a line without a least thickness.</summary>
    public static string? Words(YardState state, OrderLine asked)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(asked);
        if (asked.ThicknessMinMm is not { } least || asked.ThicknessQuarters is not { } quarters)
            return null;
        var nominal = NominalThickness.FromQuarters(quarters);
        var green = QuartersTyped.Green(state, nominal);
        var dry = MoistureContent.FromPercent(asked is { McLowPct: { } low, McHighPct: { } high } ? (low + high) / 2.0 : UsualPercent);
        var woods = asked.Stacks.Select(state.Stacks.GetValueOrDefault).OfType<Stack>().Select(stack => (stack.Species, Sawn: stack.SawnThickness ?? green ?? nominal.Length)).Distinct().ToList();
        if (woods.Count == 0 && asked.Species is { } name && SpeciesTable.Find("", name) is Outcome<Species>.Done(var known))
            woods.Add((known, green ?? nominal.Length));
        return Text($"At least {least:0.0} mm is asked, rough and dry. {nominal} is the name of what is sawn for it ({nominal.Length.Millimetres:0.0} mm{(green is { } set ? Text($", set at {set.Millimetres:0.0} mm green") : "")}).{string.Concat(woods.Select(wood => $" {Dried(wood.Species, wood.Sawn, dry, least)}"))}");
    }

    private static string? Dried(Species species, Length sawn, MoistureContent dry, double least) =>
        (Of(species, sawn, Grain.Flat, dry), Of(species, sawn, Grain.Quarter, dry)) is ({ } flat, { } quarter)
            ? Text($"{sawn.Millimetres:0.0} mm of green {species.CommonName} is {flat.Millimetres:0.0} mm flatsawn at {dry.Percent:0.#} %{Short(flat, least)}, {quarter.Millimetres:0.0} mm quartersawn{Short(quarter, least)}.") : null;

    private static string Short(Length size, double least) => size.Millimetres < least ? " (too thin)" : "";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
