using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book;

// Resin, classes and pours.
internal sealed partial class Fold
{
    private Refusal? On(ClassPlanned fact) => fact.DemouldOn < fact.PourOn
        ? new("demould_on", $"{fact.DemouldOn:yyyy-MM-dd}", $"a day from {fact.PourOn:yyyy-MM-dd} on")
        : Set(classes, fact.Class, new CastingClass(
            fact.Class, fact.PourOn, fact.DemouldOn, fact.Seats, fact.SeatMoney, [.. fact.People], classes.TryGetValue(fact.Class, out var old) ? old.Pours : [], entry.Number));

    private Refusal? On(ResinListed fact) =>
        InRange("ratio_a_by_mass", fact.RatioAByMass, 1e-3, 1e3, "0.001 to 1000") ?? InRange("ratio_b_by_mass", fact.RatioBByMass, 1e-3, 1e3, "0.001 to 1000")
        ?? Set(resins, fact.Resin, resins.TryGetValue(fact.Resin, out var old) ? old with { Label = fact } : new Resin(fact.Resin, fact, null, null));

    private Refusal? On(ResinCounted fact)
    {
        if (!resins.TryGetValue(fact.Resin, out var resin))
            return Unknown("resin", fact.Resin, resins);
        if (InRange("kg", fact.Kg, 0.0, 1e5, "0 to 1e5 kg") is { } refusal)
            return refusal;
        var stock = new ResinStock(Mass.FromKilograms(fact.Kg), entry.HappenedAt, fact.Lot, fact.ExpiresOn);
        return Set(resins, fact.Resin, fact.Part == ResinPart.A ? resin with { PartA = stock } : resin with { PartB = stock });
    }

    private Refusal? On(PourPlanned fact)
    {
        var refusal = Fresh("pour", fact.Pour, pours)
            ?? (resins.ContainsKey(fact.Resin) ? null : Unknown("resin", fact.Resin, resins))
            ?? (fact.Class is { } name && !classes.ContainsKey(name) ? Unknown("class", name, classes) : null)
            ?? MouldFault(fact.Mould)
            ?? InRange("depth_mm", fact.DepthMm, 1.0, 500.0, "1 to 500 mm")
            ?? InRange("waste_share", fact.WasteShare, 0.0, 1.0, "0 to 1")
            ?? fact.Pieces.Select(PieceFault).FirstOrDefault(r => r is not null);
        if (refusal is not null)
            return refusal;
        if (fact.Class is { } cast)
            classes[cast] = classes[cast] with { Pours = classes[cast].Pours.Add(fact.Pour) };
        return Set(pours, fact.Pour, new Pour { Tag = fact.Pour, Plan = fact, PourOn = fact.PourOn, DemouldOn = fact.DemouldOn, History = [entry.Number] });
    }

    private Refusal? MouldFault(Mould mould)
    {
        (string Name, double? Value)[] needed = mould.Shape switch
        {
            MouldShape.Rectangle => [("length_mm", mould.LengthMm), ("width_mm", mould.WidthMm)],
            MouldShape.Hexagon => [("side_mm", mould.SideMm)],
            _ => [("diameter_mm", mould.DiameterMm)],
        };
        return needed.Select(size => size.Value is null ? new(size.Name, "none", $"the size a {mould.Shape} mould needs") : InRange(size.Name, size.Value, 10.0, 6000.0, "10 to 6000 mm"))
            .FirstOrDefault(r => r is not null);
    }

    private Refusal? PieceFault(WoodPiece piece) => SpeciesOf(piece.Species, out _)
        ?? InRange("mc_pct", piece.McPct, 0.0, 100.0, "0 to 100 %")
        ?? InRange("thickness_mm", piece.ThicknessMm, 1.0, 500.0, "1 to 500 mm")
        ?? (piece.WidthsMm.Count < 2 ? new("widths_mm", $"{piece.WidthsMm.Count} widths", "at least two widths, the first and last at the ends") : null);

    private Refusal? On(PourMoved fact) => WithPour(fact.Pour, pour => pour with { PourOn = fact.PourOn, DemouldOn = fact.DemouldOn, MovedWhy = fact.Why });

    private Refusal? On(PourRiskSigned fact) => fact.SignedBy.Trim().Length == 0
        ? new("signed_by", fact.SignedBy, "the name of whoever signs")
        : WithPour(fact.Pour, pour => pour with { RiskSigned = new(entry.Number, entry.HappenedAt, fact.SignedBy, fact.Warning, entry.By) });

    private Refusal? On(ResinMixed fact)
    {
        var refusal = InRange("part_a_kg", fact.PartAKg, 0.0, 1e4, "0 to 1e4 kg") ?? InRange("part_b_kg", fact.PartBKg, 0.0, 1e4, "0 to 1e4 kg")
            ?? WithPour(fact.Pour, pour => pour with
            {
                Mixes = pour.Mixes.Add(new(
                    entry.Number, entry.HappenedAt, Mass.FromKilograms(fact.PartAKg), Mass.FromKilograms(fact.PartBKg), fact.Buckets, Elapsed.FromMinutes(fact.MinutesEach), fact.LotA, fact.LotB)),
            });
        if (refusal is not null)
            return refusal;
        var resin = resins[pours[fact.Pour].Plan.Resin];
        return Set(resins, resin.Name, resin with { PartA = Used(resin.PartA, fact.PartAKg, fact.LotA), PartB = Used(resin.PartB, fact.PartBKg, fact.LotB) });
    }

    // Resin of a lot that was not counted is not taken from the one that was.
    private static ResinStock? Used(ResinStock? stock, double kg, string? lot) => stock is null || (lot ?? stock.Lot) != stock.Lot ? stock : stock with { OnHand = Mass.FromKilograms(Math.Max(stock.OnHand.Kilograms - kg, 0.0)) };

    // The wood of a table leaves its stack with its first layer, as far as the stack still has it.
    private Refusal? On(Poured fact)
    {
        var refusal = WithPour(fact.Pour, pour => pour with { PouredAt = entry.HappenedAt, Layers = pour.Layers.Add(new(entry.Number, entry.HappenedAt, fact.DepthMm ?? pour.LeftMm)) });
        if (refusal is not null || pours[fact.Pour].Layers.Count > 1)
            return refusal;
        foreach (var piece in pours[fact.Pour].Plan.Pieces.Where(piece => piece.Stack is not null && stacks.ContainsKey(piece.Stack)))
            Take(piece.Stack!, Math.Min(PieceFootage.Of(piece), stacks[piece.Stack!].Footage.Count), null, sure: true);
        return null;
    }

    private Refusal? On(ShopTemperatureRead fact)
    {
        foreach (var reading in fact.Readings)
        {
            if (InRange("shop_c", reading.ShopC, -40.0, 60.0, "-40 to 60 C") is { } refusal)
                return refusal;
        }

        foreach (var reading in fact.Readings)
            shopC[reading.At] = reading.ShopC;
        return null;
    }

    private Refusal? On(Demoulded fact) => WithPour(fact.Pour, pour => pour with { DemouldedAt = entry.HappenedAt, Seen = fact.Seen });

    private Refusal? WithPour(string tag, Func<Pour, Pour> change)
    {
        if (!pours.TryGetValue(tag, out var pour))
            return Unknown("pour", tag, pours);
        pours[tag] = change(pour) with { History = pour.History.Add(entry.Number) };
        return null;
    }
}
