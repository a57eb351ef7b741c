using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using CastingMix = Boardwright.Casting.Mix;

namespace Boardwright.Yard.UseCases;

/// <summary>A table on the list.</summary>
/// <param name="Pour">As in the book.</param>
/// <param name="Wood">Species and shape, in words.</param>
/// <param name="Resin">Resin in place, traced.</param>
/// <param name="Standing">"cannot" where its wood or depth forbids it, "soft" when it was seen soft, else where it is on its way.</param>
public sealed record PourRow(Pour Pour, string Wood, Traced Resin, string Standing);

/// <summary>The tables of one pour day.</summary>
public sealed record PourDay(DateOnly PourOn, string Words, IReadOnlyList<PourRow> Rows);

/// <summary>All pours by pour day, and the resin they want against what is there.</summary>
/// <param name="Totals">Of everything still to be poured.</param>
/// <param name="Days">Those ahead or in the mould, the nearest first.</param>
/// <param name="Earlier">Those out of the mould, the latest first.</param>
/// <param name="NextDo">What to do about the next pour day.</param>
public sealed record PourList(IReadOnlyList<Traced> Totals, IReadOnlyList<PourDay> Days, IReadOnlyList<PourDay> Earlier, string NextDo, string NextWhy)
{
    /// <summary>The list of a yard.</summary>
    public static PourList Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var open = state.Pours.Values.Where(pour => pour.DemouldedAt is null).GroupBy(pour => pour.PourOn).OrderBy(day => day.Key).Select(day => Day(state, day.Key, day)).ToList();
        var earlier = state.Pours.Values.Where(pour => pour.DemouldedAt is not null).GroupBy(pour => pour.PourOn).OrderByDescending(day => day.Key).Select(day => Day(state, day.Key, day)).ToList();
        var (act, why) = Next(state);
        return new([.. state.Resins.Values.SelectMany(resin => TotalsOf(state, resin))], open, earlier, act, why);
    }

    private static PourDay Day(YardState state, DateOnly on, IEnumerable<Pour> pours)
    {
        var one = state.Classes.Values.FirstOrDefault(one => one.PourOn == on);
        return new(on, one is null ? "" : $"{one.Tag}: {one.Seats} seats, with {string.Join(" and ", one.People)}", [.. pours.Select(pour => Row(state, pour))]);
    }

    private static PourRow Row(YardState state, Pour pour)
    {
        var plan = pour.Plan;
        var wood = $"{string.Join(", ", plan.Pieces.Select(piece => piece.Species).Distinct())}, {plan.Mould.Shape.ToString().ToLowerInvariant()}, {plan.DepthMm:0.#} mm deep{(plan.Owner is { } owner ? $", wood of {owner}" : "")}{(plan.ThinnestMm is { } thin ? $", {thin:0.#} mm at the thinnest" : "")}";
        var resin = PourModel.Volume(pour) is Outcome<PourVolume>.Done(var volume)
            ? new Traced("Resin in place", $"{volume.Volume.Litres:0.00}", "L", $"{volume.Low.Litres:0.0} to {volume.High.Litres:0.0}") { Method = "resin-volume", Source = "mould and widths as planned", Inputs = [("mould", $"{volume.MouldArea.SquareMetres:0.0000} m²"), ("wood", $"{volume.WoodArea.SquareMetres:0.0000} m²")] }
            : new Traced("Resin in place", "?", "", "the widths do not fit the mould");
        return new(pour, wood, resin, StandingOf(state, pour));
    }

    private static string StandingOf(YardState state, Pour pour) =>
        pour.DemouldedAt is not null ? SoftCastings.IsSoft(pour.Seen) ? "soft" : "hard"
        : pour.PouredAt is not null ? "in the mould"
        : WoodNotForPours.Of(state).Any(task => task.At == pour.Tag) ? "cannot"
        : pour.Mixes.Count > 0 ? "mixed" : "planned";

    private static IEnumerable<Traced> TotalsOf(YardState state, Book.State.Resin resin)
    {
        var pours = PourModel.Next(state, resin.Name);
        if (PourModel.Stock(state, resin.Name) is not Outcome<StockCheck>.Done(var stock))
            yield break;
        if (pours.Count > 0)
        {
            var volumes = pours.Select(pour => PourModel.Volume(pour)).OfType<Outcome<PourVolume>.Done>().Select(done => done.Value).ToList();
            var mixes = pours.Select(pour => PourModel.Mix(state, pour)).OfType<Outcome<CastingMix>.Done>().Select(done => done.Value).ToList();
            yield return new("Resin in place", $"{volumes.Sum(volume => volume.Volume.Litres):0.00}", "L", $"{pours.Count} {(pours.Count == 1 ? "table" : "tables")} on {DayWords.Weekday(pours.Max(pour => pour.PourOn), state.Today)}") { Method = "resin-volume", Source = "moulds and widths as planned", Inputs = [.. pours.Zip(volumes, (pour, volume) => (pour.Tag, $"{volume.Volume.Litres:0.00} L"))] };
            yield return new("To mix", $"{mixes.Sum(mix => mix.Total.Kilograms):0.00}", "kg", $"with {pours[0].Plan.WasteShare:P0} waste") { Method = "resin-mix", Source = "ratio and densities of the label", Inputs = [.. pours.Zip(mixes, (pour, mix) => (pour.Tag, $"{mix.PartA.Kilograms:0.00} A, {mix.PartB.Kilograms:0.00} B kg"))] };
        }

        yield return Part("A", resin.PartA, stock.NeedA, stock.ShortA);
        yield return Part("B", resin.PartB, stock.NeedB, stock.ShortB);
    }

    private static Traced Part(string part, ResinStock? stock, Mass need, Mass miss) =>
        new($"Part {part} {(miss.Kilograms > 0.0 ? "short" : "on hand")}", miss.Kilograms > 0.0 ? $"{miss.Kilograms:0.00}" : $"{stock?.OnHand.Kilograms ?? 0.0:0.0}", "kg", $"{need.Kilograms:0.00} wanted, {stock?.OnHand.Kilograms ?? 0.0:0.0} on hand")
        {
            Method = "resin-mix",
            Source = stock is null ? "never counted" : $"counted {stock.CountedAt:d MMM yyyy}, less what was mixed since",
            Inputs = [("lot", stock?.Lot ?? "not named"), ("use by", stock?.ExpiresOn is { } day ? $"{day:d MMM yyyy}" : "not named")],
        };

    private static (string Do, string Why) Next(YardState state)
    {
        var open = state.Pours.Values.Where(pour => pour.DemouldedAt is null).ToList();
        if (open.Count == 0)
            return ("Plan the first table.", "No table stands in a mould or is planned.");
        if (open.FirstOrDefault(pour => pour.PouredAt is not null) is { } poured)
            return ($"See {poured.Tag}: it stands in its mould.", "The thin edge decides, and the shop’s nights.");
        return ResinShort.Of(state).FirstOrDefault() is { } miss
            ? (miss.Do, Without(state) is { } tag ? $"{miss.Why} Without {tag} there is enough." : miss.Why)
            : ($"Have wood, moulds and shop ready by {DayWords.Weekday(open.Min(pour => pour.PourOn), state.Today)}.", "There is resin for all of it.");
    }

    // The table whose leaving out makes the stock reach: first one that cannot be poured as planned, else the largest.
    private static string? Without(YardState state) => state.Pours.Values.Where(pour => pour.PouredAt is null)
        .OrderByDescending(pour => StandingOf(state, pour) == "cannot").ThenByDescending(pour => pour.Plan.DepthMm)
        .FirstOrDefault(pour => PourModel.Stock(state, pour.Plan.Resin, pour.Tag) is Outcome<StockCheck>.Done({ IsEnough: true }))?.Tag;
}
