using System.Globalization;
using Boardwright.Casting;
using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using CastingMix = Boardwright.Casting.Mix;
using CastingWood = Boardwright.Casting.WoodPiece;

namespace Boardwright.Yard.UseCases;

/// <summary>One piece of wood in a mould, for a person.</summary>
/// <param name="Name">1, 2, …</param>
/// <param name="Wood">Species and moisture.</param>
/// <param name="HoldDown">What keeps it under, traced.</param>
/// <param name="Moisture">Whether it is dry enough, in words.</param>
/// <param name="IsTooWet">No guide allows it.</param>
public sealed record PourPiece(string Name, string Wood, string Size, Traced HoldDown, string Moisture, bool IsTooWet);

/// <summary>One pour for a person: what it is, how it is, what next.</summary>
public sealed record PourSheet
{
    /// <summary>The pour as the book has it.</summary>
    public required Pour Pour { get; init; }

    public required string Under { get; init; }

    /// <summary>Resin in place, its low and high.</summary>
    public required PourVolume Volume { get; init; }

    /// <summary>Volume, mix, part A, part B, stock.</summary>
    public required IReadOnlyList<Traced> Figures { get; init; }

    public required IReadOnlyList<PourPiece> Pieces { get; init; }

    /// <summary>What forbids pouring it like this; empty for none, or when what is wrong with the wood was signed for.</summary>
    public required IReadOnlyList<string> Faults { get; init; }

    /// <summary>What is wrong with the wood, to be read and signed for; null when nothing is, or the table is poured.</summary>
    public string? ToSign { get; init; }

    /// <summary>Hours by label and by model, peak and margin.</summary>
    public required IReadOnlyList<Traced> CureFigures { get; init; }

    /// <summary>The cure behind the figures and the curve.</summary>
    public required PourCure Cure { get; init; }

    /// <summary>What the model advises, sentence by sentence.</summary>
    public required IReadOnlyList<string> Advice { get; init; }

    /// <summary>Why it is soft and what to do; null when it is not.</summary>
    public PourSoft? Soft { get; init; }

    /// <summary>Bubbles and sinking that were seen or are asked about, each with its causes.</summary>
    public IReadOnlyList<PourBlemish> Blemishes { get; init; } = [];

    public required string NextDo { get; init; }

    public required string NextWhy { get; init; }

    /// <summary>The sheet of a pour.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="tag">The pour's.</param>
    /// <param name="shop">Shop temperatures every six hours as a person expects them; null for the book's own.</param>
    /// <param name="asked">Bubbles or sinking, asked about before they are written; null for what the record says.</param>
    public static Outcome<PourSheet> Of(YardState state, string tag, string? shop, string? asked = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Pours.TryGetValue(tag, out var pour))
            return new Refusal("pour", tag, $"a pour of the book: {string.Join(", ", state.Pours.Keys)}");
        return PourShop.For(state, pour, shop).Then(air => PourCure.For(state, pour, air)).Then(cure => PourModel.Volume(pour).Then(volume => PourModel.Mix(state, pour).Then(mix =>
            PourModel.HeldDown(state, pour).Then<PourSheet>(held => Make(state, pour, cure, volume, mix, held) with { Blemishes = PourBlemish.Of(pour, cure, asked) }))));
    }

    private static PourSheet Make(YardState state, Pour pour, PourCure cure, PourVolume volume, CastingMix mix, IReadOnlyList<(CastingWood Piece, HoldDown Held)> held)
    {
        var pieces = held.Select((one, index) => Piece(state, pour, cure.Resin, one.Piece, one.Held, index)).ToList();
        var faults = FaultsOf(pour, cure.Resin, held, pieces);
        var soft = PourSoft.Of(state, pour, cure);
        var (next, why) = PourNext.For(pour, cure, soft, faults);
        return new()
        {
            Pour = pour,
            Under = $"{pour.Plan.Resin}, {pour.Plan.DepthMm:0.#} mm deep{(pour.Plan.Class is { } name ? $", {name}" : "")}{(pour.Plan.Owner is { } owner ? $", wood of {owner}" : "")}. {(pour.PouredAt is { } at ? $"Poured {at:ddd d MMM HH:mm}" : $"Pours {DayWords.Weekday(pour.PourOn, state.Today)}")}, {(pour.DemouldedAt is { } outAt ? $"out of the mould {DayWords.Weekday(outAt, state.Today)}" : $"demould planned {DayWords.Weekday(pour.DemouldOn, state.Today)}")}.",
            Volume = volume,
            Figures = [.. PourFigures.Amounts(state, pour, cure.Resin, volume, mix)],
            Pieces = pieces,
            Faults = faults,
            ToSign = pour.PouredAt is null && !PourSign.MayGoOn(pour) ? PourSign.Warning(pour) : null,
            CureFigures = [.. PourFigures.Cure(pour, cure)],
            Cure = cure,
            Advice = cure.Model is { } model ? PourAdvice.For(model, cure.Resin.Label) : ["The book does not say how this resin cures: only the label's hours are shown."],
            Soft = soft,
            NextDo = next,
            NextWhy = why,
        };
    }

    private static PourPiece Piece(YardState state, Pour pour, Casting.Resin resin, CastingWood piece, HoldDown held, int index)
    {
        var planned = pour.Plan.Pieces[index];
        var wood = WoodForPour.Of(MoistureContent.FromPercent(planned.McPct));
        return new($"{index + 1}", $"{planned.Species}, {planned.McPct:0.0} %{(planned.Stack is { } stack ? $", from {stack}" : "")}", $"{planned.LengthMm:0} × {planned.WidthsMm.Min():0} to {planned.WidthsMm.Max():0} × {planned.ThicknessMm:0.#} mm",
            new("Hold down", $"{held.Need.Kilograms:0.00}", "kg", $"lay out {held.Ballast.Kilograms:0.0} kg, half as much again")
            {
                Method = "hold-down",
                Source = "Archimedes; wood density from the Wood Handbook, FPL-GTR-282",
                Inputs = [("wood", $"{piece.Density.KilogramsPerCubicMetre:0} kg/m³, {piece.Volume.Litres:0.00} L, {piece.Mass.Kilograms:0.00} kg"), ("mixed resin", $"{resin.DensityMixed.KilogramsPerCubicMetre:0.0} kg/m³"), ("upward force", $"{held.BuoyancyNewtons:0.0} N"), ("as water", $"{held.Water.Litres:0.00} L"), ("lifts above", held.FloatsAbove is { } above ? $"{above.Millimetres:0} mm of resin" : "never")],
            },
            StillWet(state, pour, planned.Stack, planned.McPct) is { } wet ? $"Planned at {planned.McPct:0.0} %: {wet}" : wood.Advice, wood.IsTooWet);
    }

    // The plan names what the wood is to be on the day; until then its stack says what it is.
    private static string? StillWet(YardState state, Pour pour, string? tag, double plannedPct)
    {
        if (pour.PouredAt is not null || tag is null || !state.Stacks.TryGetValue(tag, out var stack) || !stack.IsHere || StackNow.Of(state, stack) is not { } now || now.Mean.Percent <= plannedPct + StillWetPoints)
            return null;
        return string.Create(CultureInfo.InvariantCulture, $"{tag} is at {now.Mean.Percent:0.0} % now ({now.How}){(stack.Charge is { } charge ? $", in charge {charge}" : "")}: read it again before the pour");
    }

    private const double StillWetPoints = 1.0; // nearer than that a meter does not tell

    private static List<string> FaultsOf(Pour pour, Casting.Resin resin, IReadOnlyList<(CastingWood Piece, HoldDown Held)> held, IReadOnlyList<PourPiece> pieces)
    {
        var faults = pieces.Where(piece => piece.IsTooWet && !PourSign.MayGoOn(pour)).Select(piece => $"Piece {piece.Name}: {piece.Moisture}.").ToList();
        if (resin.Label.DeepestPour is { } deepest && pour.Plan.DepthMm > deepest.Millimetres)
        {
            var pours = (int)Math.Ceiling(pour.Plan.DepthMm / deepest.Millimetres);
            var layer = Length.FromMillimetres(pour.Plan.DepthMm / pours);
            var first = held.Select(one => FirstLayer.Of(one.Piece, resin.DensityMixed, layer)).ToList();
            faults.Add($"{pour.Plan.DepthMm:0} mm is too deep for one pour: the label allows {deepest.Millimetres:0}. In {pours} pours of {layer.Millimetres:0} mm the wood ({first.Max(one => one.WoodKilogramsPerSquareMetre):0.0} kg/m²) {(first.Any(one => one.Floats) ? "floats" : "does not float")} in the first ({first.Max(one => one.ResinKilogramsPerSquareMetre):0.0} kg/m² displaced).");
        }

        return faults;
    }
}
