using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Stacks laid into a kiln, place by place, with what has to be brought out for it.</summary>
/// <param name="Kiln">The kiln.</param>
/// <param name="Room">Its places.</param>
/// <param name="Layout">Which layers stand where.</param>
/// <param name="Weights">Weight of each place.</param>
/// <param name="Figures">Stickers, lifts, what stays empty.</param>
/// <param name="Minds">What to mind while laying.</param>
public sealed record ChargeLay(
    Kiln Kiln, KilnPlaces Room, ChargeLayout Layout, IReadOnlyList<Mass> Weights, IReadOnlyList<Traced> Figures, IReadOnlyList<string> Minds)
{
    private const double UsualSpacingIn = 24.0;
    private const string Method = "charge-layout";

    /// <summary>The places of a kiln.</summary>
    public static KilnPlaces Places(KilnInstalled kiln)
    {
        ArgumentNullException.ThrowIfNull(kiln);
        return new(
            kiln.StackPlaces, Math.Min(2, kiln.StackPlaces), Length.FromMillimetres(kiln.PlaceWidthMm), Length.FromMetres(kiln.PlaceLengthM), Length.FromMillimetres(kiln.PlaceHeightMm),
            Share.FromFraction(kiln.FillOfLayers), kiln.Type == KilnType.RadioFrequencyVacuum ? default : KilnRoom.UsualSticker);
    }

    /// <summary>Lays stacks into a kiln.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="kiln">Name of the kiln.</param>
    /// <param name="stacks">Tags of the stacks.</param>
    public static Outcome<ChargeLay> Of(YardState state, string? kiln, IReadOnlyList<string> stacks)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(stacks);
        if (kiln is null || !state.Kilns.TryGetValue(kiln, out var into))
            return new Refusal("kiln", kiln ?? "", state.Kilns.Count == 0 ? "a kiln of the house; none is written in yet" : string.Join(", ", state.Kilns.Keys));
        if (stacks.FirstOrDefault(tag => !state.Stacks.ContainsKey(tag)) is { } unknown)
            return new Refusal("stack", unknown, $"a stack of the book: {NearestNames.Of(unknown, [.. state.Stacks.Keys])}");
        if (stacks.Count == 0)
            return new Refusal("stacks", "none", "at least one stack");

        var room = Places(into.Installed);
        var wood = stacks.Distinct().Select(tag => state.Stacks[tag]).ToList();
        var layout = ChargeLayout.Of(room, [.. wood.Select(stack => new WoodToLay(stack.Tag, stack.Footage, stack.Thickness))]);
        IReadOnlyList<Mass> weights = [.. layout.Places.Select(place => Mass.FromKilograms(place.From.Sum(layers => SawnWood.Weight(state, state.Stacks[layers.Name], layers.Footage).Kilograms)))];
        return new ChargeLay(into, room, layout, weights, [.. Reckoned(state, into, room, layout, weights)], [.. ToMind(into, room, layout, wood, weights.Sum(weight => weight.Kilograms))]);
    }

    private static IEnumerable<Traced> Reckoned(YardState state, Kiln kiln, KilnPlaces room, ChargeLayout layout, IReadOnlyList<Mass> weights)
    {
        var layers = layout.Places.Sum(place => place.From.Sum(from => from.Layers));
        if (room.Sticker > default(Length))
        {
            var spacing = Length.FromInches(state.Setting("sticker_spacing") ?? UsualSpacingIn);
            yield return new("Stickers", Text(layers * room.StickersAcross(spacing), "#,0"), "", $"{layers} layers, {room.StickersAcross(spacing)} under each, {Text(spacing.Inches, "0.#")} in apart")
            {
                Method = Method,
                Source = "sticker specs and spacing (Wengert): in line over a bolster, never over 24 in apart",
                Inputs = [("layers", Text(layers, "0")), ("length of a place", Text(room.Span.Feet, "0.#") + " ft"), ("apart", Text(spacing.Inches, "0.#") + " in"), ("thick, all alike", Text(room.Sticker.Inches, "0.##") + " in")],
            };
        }

        var heaviest = weights.Max(weight => weight.Kilograms);
        yield return new("Heaviest place", Text(heaviest, "#,0"), "kg", string.Create(CultureInfo.InvariantCulture, $"{Mass.FromKilograms(heaviest).Pounds:#,0} lb as last read; all {weights.Sum(weight => weight.Kilograms):#,0} kg{(kiln.Installed.LoadMaxKg is { } carries ? $" of {carries:#,0} that {kiln.Name} carries" : "")}"))
        {
            Method = Method,
            Source = "Wood Handbook, FPL-GTR-282, eqs. 4-11 and 4-14; lift of the forks: setting forks_lift",
            Inputs = [("forks lift", state.Setting("forks_lift") is { } lift ? $"{Text(lift, "#,0")} kg: {Text(Math.Ceiling(heaviest / lift), "0")} lifts" : "not set")],
        };
        var used = layout.Places.Sum(place => place.From.Sum(from => KilnRoom.AsFourQuarter(from.Footage, state.Stacks[from.Name].Thickness).Count));
        var empty = Math.Max(0.0, kiln.Installed.CapacityBf - used);
        yield return new("Room left empty", Text(empty, "#,0"), "bf of 4/4", state.Setting("kiln_day_margin") is { } margin ? $"{Text(margin * empty / 1000.0, "0.##")} money a day of {kiln.Name}" : "what a day of kiln earns is not set")
        {
            Method = Method,
            Source = "setting kiln_day_margin",
            Inputs = [("capacity", Text(kiln.Installed.CapacityBf, "#,0") + " bf of 4/4"), ("taken", Text(used, "#,0") + " bf of 4/4")],
        };
    }

    private static IEnumerable<string> ToMind(Kiln kiln, KilnPlaces room, ChargeLayout layout, List<Stack> wood, double kilograms)
    {
        if (kiln.Installed.LoadMaxKg is { } most && kilograms > most)
            yield return string.Create(CultureInfo.InvariantCulture, $"It weighs {kilograms:#,0} kg; {kiln.Name} carries {most:#,0}: leave some out, or let it dry first.");

        foreach (var over in layout.Over)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{over.Footage.Count:0} bf of {over.Name} find no place in whole layers: lay them where a layer is short, or leave them out.");
        }

        foreach (var tooLong in wood.Where(stack => stack.LongestPiece is { } longest && longest.Metres > kiln.Installed.PieceLengthMaxM + 0.05))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{tooLong.Tag} holds pieces of {tooLong.LongestPiece!.Value.Feet:0.#} ft; {kiln.Name} takes {kiln.Installed.PieceLengthMaxM / 0.3048:0.#} ft.");
        }

        if (room.Sticker > default(Length))
        {
            if (layout.Places.Any(place => place.From.Count == 0 || place.Gap.Inches > 2.0 * room.Sticker.Inches))
                yield return "Close what is open above and beside the packs with baffles: air takes the open way, not the way through the wood.";
            yield return "Stickers of one thickness, in line over a bolster; a sticker near each end.";
        }
        else
        {
            yield return "Board on board, no stickers; a plate below and one above, of opposite polarity, the top level and covered whole.";
            yield return "Wettest stock in the middle; no metal anywhere in the load.";
        }

        if (wood.Select(stack => stack.Owner).Distinct().Count() > 1)
            yield return "Wood of different owners: tag each layer's end where one stack ends and the next begins.";
        if (wood.Any(stack => stack.Moisture is null))
            yield return "A stack was never read: it is weighed here at 30 %.";
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
