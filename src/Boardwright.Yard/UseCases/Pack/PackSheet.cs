using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One count of a pack, measured by its rule.</summary>
/// <param name="Tally">As it was called.</param>
/// <param name="Measured">Boards with their surface measure, footage by length, volume.</param>
/// <param name="Exact">The same boards without any rounding.</param>
/// <param name="Holds">Whether this is the count that holds.</param>
public sealed record PackCount(Tally Tally, PackTally Measured, BoardFeet Exact, bool Holds)
{
    public string By => Tally.By;
}

/// <summary>Moisture and treatment a pack may claim, each with its proof.</summary>
/// <param name="Low">Driest reading on record; null when none.</param>
/// <param name="High">Wettest.</param>
/// <param name="Basis">How, where, when.</param>
/// <param name="Charge">The last charge it was in; null for wood that saw no kiln.</param>
/// <param name="IsHeatTreated">True with a record of 56 C at the core for half an hour; null where nothing proves it either way.</param>
/// <param name="Proof">The record, or why there is none.</param>
public sealed record PackDrying(MoistureContent? Low, MoistureContent? High, string? Basis, string? Charge, bool? IsHeatTreated, string Proof);

/// <summary>One pack for a person: what it is, how it is, what next.</summary>
public sealed record PackSheet(
    Pack Pack, string Title, string Under, IReadOnlyList<PackCount> Counts, IReadOnlyList<TallyDifference> Differences, PackDrying Drying, IReadOnlyList<Traced> Figures,
    string NextDo, string NextWhy)
{
    /// <summary>The count that holds, if one does.</summary>
    public PackCount? Agreed => Counts.FirstOrDefault(count => count.Holds);

    public static Outcome<PackSheet> Of(YardState state, string tag)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Packs.TryGetValue(tag ?? "", out var pack))
            return new Refusal("pack", tag ?? "", $"a pack of the book: {NearestNames.Of(tag ?? "", [.. state.Packs.Keys])}");
        var counts = pack.Tallies.Select(tally => Count(pack, tally)).ToList();
        var closed = counts.Where(count => !count.Tally.Open).ToList();
        IReadOnlyList<TallyDifference> differences = closed.Count < 2 ? [] : TallyComparison.Of(Boards(pack, closed[0].Tally), Boards(pack, closed[1].Tally));
        var drying = DryingOf(state, pack);
        var ordered = AsOrdered.Of(state, pack);
        var (nextDo, nextWhy) = Next(state, pack, differences, ordered);
        return new PackSheet(
            pack, $"Pack {pack.Tag}, {(pack.Proven ? pack.Species.CommonName : "unproven species")} {pack.Thickness}", UnderOf(pack), counts, differences, drying,
            [.. FiguresOf(state, pack, counts, drying)], nextDo, nextWhy)
        {
            Ordered = ordered,
            Weight = From(state, pack).Moisture?.Mean is { } mean ? (counts.FirstOrDefault(count => count.Holds) ?? counts[0]).Measured.WeightAt(mean) : null,
        };
    }

    /// <summary>Its moisture beside what its order asks for.</summary>
    public required AsOrdered Ordered { get; init; }

    /// <summary>Weight at the last moisture known of it; null without one.</summary>
    public Mass? Weight { get; init; }

    /// <summary>The boards of a tally as the rule counts them.</summary>
    public static IReadOnlyList<TalliedBoard> Boards(Pack pack, Tally tally)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(tally);
        return Boards(tally.Boards, pack.Thickness, pack.Species);
    }

    internal static IReadOnlyList<TalliedBoard> Boards(IEnumerable<TallyBoard> boards, NominalThickness thickness, Species species) =>
        [.. boards.Select(board => new TalliedBoard(thickness, Length.FromInches(board.WidthIn), Length.FromFeet(board.LengthFt)) { Species = species, Grade = board.Grade })];

    private static PackCount Count(Pack pack, Tally tally)
    {
        var boards = Boards(pack, tally);
        return new(tally, PackTally.Of(boards, tally.Rule == "exact" ? BoardRule.Exact : BoardRule.Nhla), PackTally.Of(boards, BoardRule.Exact).BoardFeet, tally == pack.Agreed);
    }

    private static string UnderOf(Pack pack) =>
        $"From stack {pack.Stack}{(pack.Order is { } order ? $", for {order}" : "")}{(pack.Shipment is { } gone ? $", left with {gone}" : pack.Restacked is { } stack ? $", back on stickers as {stack}" : "")}.";

    /// <summary>The stack a pack is from, as it was when its boards left it: what was read or dried later says nothing of the pack.</summary>
    internal static Stack From(YardState state, Pack pack)
    {
        var stack = state.Stacks[pack.Stack];
        return stack with
        {
            Stage = pack.Stage,
            Charges = [.. stack.Charges.Where(charge => state.Charges[charge].LoadedAt < pack.At)],
            Readings = [.. stack.Readings.Where(reading => reading.At <= pack.At)],
        };
    }

    private static PackDrying DryingOf(YardState state, Pack pack)
    {
        var stack = From(state, pack);
        var charge = stack.Charges.LastOrDefault() is { } name ? state.Charges[name] : null;
        var (low, high, basis) = MoistureOf(stack, charge);
        var treatment = stack.Charges.SelectMany(c => state.Charges[c].Treatments.Select(t => (Charge: c, Treatment: t))).LastOrDefault(t => HeatTreatmentRule.IsMet(t.Treatment));
        var treated = !pack.Proven ? null : treatment.Treatment is not null ? true : charge is null ? false : (bool?)null;
        var proof = treatment.Treatment is { } held
            ? string.Create(CultureInfo.InvariantCulture, $"core {held.Core.Celsius:0} °C for {held.Held.Minutes:0} min in {treatment.Charge}, {held.At:d MMM yyyy}; a record, not an official mark")
            : charge is null ? "saw no kiln" : $"no core temperature on record for {charge.Tag}";
        return new(low, high, basis, charge?.Tag, treated, proof);
    }

    private static (MoistureContent? Low, MoistureContent? High, string? Basis) MoistureOf(Stack stack, Charge? charge)
    {
        var unloaded = charge?.Out.LastOrDefault(o => (o.OutStack ?? o.Stack) == stack.Tag);
        if (unloaded is { McLowPct: { } low, McHighPct: { } high })
            return (MoistureContent.FromPercent(low), MoistureContent.FromPercent(high), $"{unloaded.Boards} boards at unloading from {charge!.Tag}");
        if (stack.Moisture is not { Mean: { } mean } reading)
            return (null, null, null);
        var spread = 2.0 * (reading.SdPct ?? 0.0);
        return (MoistureContent.FromPercent(Math.Max(mean.Percent - spread, 0.0)), MoistureContent.FromPercent(mean.Percent + spread),
            $"{reading.Method switch { MoistureMethod.Pin => "pin meter, corrected", MoistureMethod.OvenSections => "oven sections", MoistureMethod.AtUnloading => "at unloading", MoistureMethod.PackWeight => "weighed whole", _ => "estimate" }}, {reading.At:d MMM yyyy}{(spread > 0.0 ? ", mean and two deviations" : "")}");
    }

    private static IEnumerable<Traced> FiguresOf(YardState state, Pack pack, List<PackCount> counts, PackDrying drying)
    {
        var shown = counts.FirstOrDefault(count => count.Holds) ?? counts[0];
        var stack = From(state, pack);
        yield return new("Volume", shown.Measured.Volume.CubicMetres.ToString("0.000", CultureInfo.InvariantCulture), "m³", "nominal thickness, sizes as called")
        {
            Method = "pack-tally",
            Inputs = [("boards", $"{shown.Measured.Pieces}"), ("mean width", Text(shown.Measured.AverageWidth.Inches, "0.00") + " in"), ("mean length", Text(shown.Measured.AverageLength.Feet, "0.0") + " ft")],
        };
        if (drying is { Low: { } low, High: { } high })
        {
            var ordered = AsOrdered.Of(state, pack);
            yield return new("Moisture", low == high ? Text(low.Percent, "0.0") + " %" : $"{Text(low.Percent, "0.0")} to {Text(high.Percent, "0.0")} %", "",
                $"{drying.Basis}{(ordered.Asked.Length > 0 ? $"; {ordered.Words}" : "")}");
        }
        if (stack.Moisture?.Mean is { } mean && shown.Measured.WeightAt(mean) is { } weight)
            yield return new("Weighs about", Text(weight.Kilograms, "#,0"), "kg", $"{Text(weight.Pounds, "#,0")} lb at {Text(mean.Percent, "0.0")} %")
            {
                Method = "density",
                Source = "Wood Handbook, FPL-GTR-282, eqs. 4-11 and 4-14",
                Inputs = [("volume", Text(shown.Measured.Volume.CubicMetres, "0.000") + " m³"), ("basic specific gravity", Text(pack.Species.BasicSpecificGravity, "0.00"))],
            };
        yield return new("Heat treated", drying.IsHeatTreated switch { true => "yes", false => "no", null => "unproven" }, "", drying.Proof) { Source = "Wood Handbook, insect kill: 56 °C at the core for 30 minutes" };
    }

    private static (string Do, string Why) Next(YardState state, Pack pack, IReadOnlyList<TallyDifference> differences, AsOrdered ordered) =>
        pack.Shipment is { } gone ? ($"Nothing: it left with {gone}.", $"{Despite(state, gone)}Its tally can be printed again as it was shipped.")
        : pack.Restacked is { } stack ? ($"See stack {stack}.", "Its boards lie on stickers again; what comes of them is tallied anew.")
        : !pack.Proven ? ("Settle what wood it is.", "Its tag was lost: no label, price or promise until the species is proven.")
        : pack.IsBeingTallied ? ("Go on with the tally, or close it.", "Until it is closed it holds for nothing.")
        : pack.IsDisputed ? ($"Look a third time at {(differences.Count == 1 ? "the board" : "the boards")} {string.Join(", ", differences.Select(d => d.FirstNumber ?? d.SecondNumber))}.", "Two tallies differ. Nothing is printed until one of them is chosen.")
        : ordered.IsWetter ? ("Put it back on stickers and dry it.", $"{ordered.Mean!.Value.Percent.ToString("0.0", CultureInfo.InvariantCulture)} % measured, {ordered.Asked} ordered by {pack.Order}: wetter than ordered. Or ask the customer first.")
        : pack.LabelledAt is null ? ("Print its tag.", "One tally holds.")
        : pack.Order is not { } order ? ("Keep it dry until it is sold.", "It is tagged and for stock.")
        : ordered.Is == OrderedMoisture.NotMeasured ? ("Read it, then ship it.", $"{order} asks for {ordered.Asked}; nothing was measured of this wood.")
        : ("Ship it.", $"It is tagged and waits for {order}.");

    // A load that went wetter than ordered keeps who agreed to it and why, and who wrote that.
    private static string Despite(YardState state, string shipment) => state.Shipments[shipment] is { Fact.Despite: { } why } load
        ? $"It went wetter than ordered. {why.TrimEnd('.')} (written by {state.Entry(load.Entry).By}). " : "";

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
