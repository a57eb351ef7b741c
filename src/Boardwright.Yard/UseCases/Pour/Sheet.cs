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

    /// <summary>How deep one layer may be.</summary>
    public required PourLayers Layers { get; init; }

    /// <summary>What stands mixed.</summary>
    public required PourBucket Bucket { get; init; }

    /// <summary>It was poured off ratio: no forecast is made of it.</summary>
    public required bool WillNotCure { get; init; }

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
    /// <param name="now">Null for the afternoon of the yard's day.</param>
    /// <param name="asked">Bubbles or sinking, asked about before they are written; null for what the record says.</param>
    public static Outcome<PourSheet> Of(YardState state, string tag, string? shop, string? asked = null, DateTime? now = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Pours.TryGetValue(tag, out var pour))
            return new Refusal("pour", tag, $"a pour of the book: {string.Join(", ", state.Pours.Keys)}");
        return PourShop.For(state, pour, shop).Then(air => PourCure.For(state, pour, air)).Then(cure => PourModel.Volume(pour).Then(volume => PourModel.Mix(state, pour).Then(mix =>
            PourModel.HeldDown(state, pour).Then<PourSheet>(held => Make(state, pour, cure, volume, mix, held, now ?? state.Today.ToDateTime(PourCure.UsualHour)) with { Blemishes = PourBlemish.Of(pour, cure, asked) }))));
    }

    private static PourSheet Make(YardState state, Pour pour, PourCure cure, PourVolume volume, CastingMix mix, IReadOnlyList<(CastingWood Piece, HoldDown Held)> held, DateTime now)
    {
        var pieces = held.Select((one, index) => Piece(state, pour, cure.Resin, one.Piece, one.Held, index)).ToList();
        var (layers, bucket) = (PourLayers.Of(pour, cure), PourBucket.Of(state, pour, now));
        var faults = FaultsOf(pour, cure, layers, InBucket(state, pour, bucket), held, pieces);
        var soft = PourSoft.Of(state, pour, cure);
        var (next, why) = PourNext.For(pour, cure, soft, faults, layers, bucket);
        var hopeless = pour.PouredAt is not null && PourSoft.WillNotCure(cure.Resin, pour);
        return new()
        {
            Pour = pour,
            Under = $"{pour.Plan.Resin}, {pour.Plan.DepthMm:0.#} mm deep{(pour.Plan.Class is { } name ? $", {name}" : "")}{(pour.Plan.Owner is { } owner ? $", wood of {owner}" : "")}. {(pour.PouredAt is { } at ? $"Poured {at:ddd d MMM HH:mm}" : $"Pours {DayWords.Weekday(pour.PourOn, state.Today)}")}, {(pour.DemouldedAt is { } outAt ? $"out of the mould {DayWords.Weekday(outAt, state.Today)}" : $"demould planned {DayWords.Weekday(pour.DemouldOn, state.Today)}")}.",
            Volume = volume,
            Figures = [.. PourFigures.Amounts(state, pour, cure.Resin, volume, mix)],
            Pieces = pieces,
            Faults = faults,
            ToSign = pour.PouredAt is null && !PourSign.MayGoOn(pour) ? PourSign.Warning(pour) : null,
            CureFigures = hopeless ? [] : [.. PourFigures.Cure(pour, cure)],
            Cure = cure,
            Layers = layers,
            Bucket = bucket,
            WillNotCure = hopeless,
            Advice = hopeless ? ["As weighed it will not cure, at any hour and in any warmth: no hours are forecast."] : cure.Model is { } model ? PourAdvice.For(model, cure.Resin.Label) : ["The book does not say how this resin cures: only the label's hours are shown."],
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

    // Depth the liquid mix fills, mm; all of the plan while nothing is mixed.
    private static double InBucket(YardState state, Pour pour, PourBucket bucket) =>
        bucket.Liquid.Count > 0 && PourLayers.Fills(state, pour, bucket.LiquidMass) is Outcome<double>.Done(var mm) ? mm : pour.Plan.DepthMm;

    private static List<string> FaultsOf(Pour pour, PourCure cure, PourLayers layers, double inBucketMm, IReadOnlyList<(CastingWood Piece, HoldDown Held)> held, IReadOnlyList<PourPiece> pieces)
    {
        var faults = pieces.Where(piece => piece.IsTooWet && !PourSign.MayGoOn(pour)).Select(piece => $"Piece {piece.Name}: {piece.Moisture}.").ToList();
        if (pour.Layers.Count > 0 || Math.Round(inBucketMm) <= layers.MostMm)
            return faults;
        var hot = cure.Model is { IsSafe: false } model ? $" All at once it comes to {model.Centre.PeakCelsius:0} °C, over the limit of {model.Section.Resin.PeakCelsiusMax:0}." : "";
        if (layers.Layers < 2)
        {
            faults.Add($"{pour.Plan.DepthMm:0} mm: {layers.Words(pour)}.{hot}");
            return faults;
        }

        var layer = Length.FromMillimetres(layers.LayerMm(pour));
        var first = held.Select(one => FirstLayer.Of(one.Piece, cure.Resin.DensityMixed, layer)).ToList();
        var wood = first.Count == 0 ? "" : $" the wood ({first.Max(one => one.WoodKilogramsPerSquareMetre):0.0} kg/m²) {(first.Any(one => one.Floats) ? "floats" : "does not float")} in the first ({first.Max(one => one.ResinKilogramsPerSquareMetre):0.0} kg/m² displaced)";
        faults.Add($"{pour.Plan.DepthMm:0} mm is too deep for one pour: at most {layers.MostMm:0} mm ({layers.Why}). In {layers.Layers} pours of {layer.Millimetres:0.#} mm{wood}.{hot} No signature lifts this.");
        return faults;
    }
}
