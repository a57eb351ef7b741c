using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;
using BookResin = Boardwright.Yard.Book.State.Resin;
using CastingMix = Boardwright.Casting.Mix;
using CastingResin = Boardwright.Casting.Resin;
using CastingWood = Boardwright.Casting.WoodPiece;

namespace Boardwright.Yard.UseCases;

/// <summary>A pour of the book in the words of the casting core: its mould, its wood, its resin.</summary>
public static class PourModel
{
    /// <summary>Resin around the wood, with its band.</summary>
    public static Outcome<PourVolume> Volume(Pour pour)
    {
        ArgumentNullException.ThrowIfNull(pour);
        return Volume(pour, pour.Plan.DepthMm);
    }

    /// <summary>Resin around the wood up to a height over the bottom, mm.</summary>
    public static Outcome<PourVolume> Volume(Pour pour, double depthMm)
    {
        ArgumentNullException.ThrowIfNull(pour);
        return Inside(pour.Plan.Mould).Then(mould => Wood(pour.Plan).Then(wood => PourVolume.Around(mould, Length.FromMillimetres(depthMm), wood, ReadingAllowance.Usual)));
    }

    /// <summary>What to weigh, with the plan's waste.</summary>
    public static Outcome<CastingMix> Mix(YardState state, Pour pour)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Volume(pour).Then(volume => Resin(state, pour.Plan.Resin).Then<CastingMix>(resin => CastingMix.For(resin, volume.Volume, Share.FromFraction(pour.Plan.WasteShare))));
    }

    /// <summary>What keeps each piece under, in the order of the plan.</summary>
    public static Outcome<IReadOnlyList<(CastingWood Piece, HoldDown Held)>> HeldDown(YardState state, Pour pour)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(pour);
        return Resin(state, pour.Plan.Resin).Then(resin => Wood(pour.Plan).Then<IReadOnlyList<(CastingWood, HoldDown)>>(wood =>
            wood.Select(piece => (piece, HoldDown.Of(piece, resin.DensityMixed, Length.FromMillimetres(pour.Plan.DepthMm)))).ToList()));
    }

    /// <summary>A resin of the book by its label; how it cures comes with a cure the program knows by the name the book gives.</summary>
    public static Outcome<CastingResin> Resin(YardState state, string name)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Resins.TryGetValue(name, out var resin) ? Of(resin) : new Refusal("resin", name, $"a resin of the book: {string.Join(", ", state.Resins.Keys)}");
    }

    /// <summary>Pours of one resin on the next pour day, those late too: what the stock has to reach for.</summary>
    public static IReadOnlyList<Pour> Next(YardState state, string resin)
    {
        ArgumentNullException.ThrowIfNull(state);
        var open = state.Pours.Values.Where(pour => pour.PouredAt is null && pour.Plan.Resin == resin && PourBucket.Of(state, pour, state.Today.ToDateTime(default)).Liquid.Count == 0).ToList();
        var next = open.Where(pour => pour.PourOn >= state.Today).Select(pour => pour.PourOn).DefaultIfEmpty(state.Today).Min();
        return [.. open.Where(pour => pour.PourOn <= next)];
    }

    /// <summary>Pours of one resin on the next pour day, against its stock.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="resin">Its name in the book.</param>
    /// <param name="without">A pour to leave out; null for none.</param>
    public static Outcome<StockCheck> Stock(YardState state, string resin, string? without = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Resins.TryGetValue(resin, out var stock))
            return new Refusal("resin", resin, $"a resin of the book: {string.Join(", ", state.Resins.Keys)}");
        var mixes = new List<CastingMix>();
        foreach (var pour in Next(state, resin).Where(pour => pour.Tag != without))
        {
            switch (Mix(state, pour))
            {
                case Outcome<CastingMix>.Done(var mix):
                    mixes.Add(mix);
                    break;
                case var other:
                    return other.Then<StockCheck>(_ => throw new InvalidOperationException("A mix is done or not."));
            }
        }

        return StockCheck.Of(mixes, stock.PartA?.OnHand ?? default, stock.PartB?.OnHand ?? default);
    }

    /// <summary>Inside of a mould, seen from above.</summary>
    public static Outcome<Outline> Inside(Mould mould)
    {
        ArgumentNullException.ThrowIfNull(mould);
        return mould.Shape switch
        {
            Book.Facts.MouldShape.Rectangle => Outline.Rectangle("mould", Mm(mould.LengthMm), Mm(mould.WidthMm)),
            Book.Facts.MouldShape.Hexagon => Outline.RegularHexagon("mould", Mm(mould.SideMm)),
            _ => Outline.Circle("mould", Mm(mould.DiameterMm)),
        };
    }

    private static Outcome<IReadOnlyList<CastingWood>> Wood(PourPlanned plan)
    {
        var pieces = new List<CastingWood>();
        foreach (var piece in plan.Pieces)
        {
            var name = $"piece {pieces.Count + 1}";
            var made = SpeciesTable.Find(name, piece.Species).Then(species => Outline.Strip(name, Mm(piece.LengthMm), [.. piece.WidthsMm.Select(width => Mm(width))]).Then<CastingWood>(outline =>
                new CastingWood(name, outline, Mm(piece.ThicknessMm), WoodDensity.At(species, MoistureContent.FromPercent(piece.McPct)))));
            if (made is not Outcome<CastingWood>.Done(var done))
                return made.Then<IReadOnlyList<CastingWood>>(_ => pieces);
            pieces.Add(done);
        }

        return pieces;
    }

    private static CastingResin Of(BookResin resin)
    {
        var label = resin.Label;
        var known = ResinTable.All.FirstOrDefault(one => string.Equals(one.Name, label.Kinetics, StringComparison.OrdinalIgnoreCase));
        return new(
            resin.Name, label.RatioBByMass / label.RatioAByMass, Density.FromKilogramsPerCubicMetre(label.DensityAKgM3), Density.FromKilogramsPerCubicMetre(label.DensityBKgM3), Density.FromKilogramsPerCubicMetre(label.DensityMixedKgM3),
            new()
            {
                DeepestPour = Mm(label.DepthMaxMm),
                At = Temperature.FromCelsius(label.LabelC),
                Depth = Mm(label.LabelDepthMm),
                Gel = Elapsed.FromHours(label.GelHours),
                Demould = Elapsed.FromHours(label.DemouldHours),
                Doubling = TemperatureDifference.FromKelvins(label.DoublesPerKelvin),
            },
            known?.Curing is { } curing ? curing with { DensityKilogramsPerCubicMetre = label.DensityMixedKgM3 } : null,
            label.Note ?? "the label as entered in the book", "I");
    }

    private static Length Mm(double? millimetres) => Length.FromMillimetres(millimetres ?? 0.0);
}
