using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using CastingMix = Boardwright.Casting.Mix;

namespace Boardwright.Yard.UseCases;

/// <summary>Figures of a pour, each with what went into it.</summary>
internal static class PourFigures
{
    public static IEnumerable<Traced> Amounts(YardState state, Pour pour, Casting.Resin resin, PourVolume volume, CastingMix mix)
    {
        yield return new("Resin in place", $"{volume.Volume.Litres:0.00}", "L", $"{volume.Low.Litres:0.0} to {volume.High.Litres:0.0} with reading errors and voids")
        {
            Method = "resin-volume",
            Source = "mould and widths as planned, trapezoid rule",
            Inputs = [("mould", $"{volume.MouldArea.SquareMetres:0.0000} m²"), ("wood", $"{volume.WoodArea.SquareMetres:0.0000} m²"), ("depth", $"{pour.Plan.DepthMm:0.#} mm"), ("edges", "2 mm each, level 1 mm, voids 5 %")],
        };
        yield return new("Weigh part A", $"{mix.PartA.Kilograms:0.00}", "kg", $"{mix.VolumeA.Litres:0.00} L; by mass, never by volume") { Method = "resin-mix", Source = $"ratio of the label, 100 to {resin.HardenerPerResin * 100.0:0.#} by mass", Inputs = Weighed(pour, resin, mix) };
        yield return new("Weigh part B", $"{mix.PartB.Kilograms:0.00}", "kg", $"{mix.VolumeB.Litres:0.00} L; {mix.Total.Kilograms:0.00} kg both, {pour.Plan.WasteShare:P0} waste in it") { Method = "resin-mix", Source = $"ratio of the label, 100 to {resin.HardenerPerResin * 100.0:0.#} by mass", Inputs = Weighed(pour, resin, mix) };
        if (PourSoft.CheckOf(resin, pour) is { } check)
            yield return new("Ratio as weighed", $"{check.OffShare * 100.0:+0.0;−0.0;0.0}", "% B", check.Verdict switch { MixVerdict.Good => "right, within 2 %", MixVerdict.Borderline => "borderline, 2 to 5 % off", _ => "wrong, over 5 % off: it will not cure" })
            {
                Method = "resin-mix",
                Source = "the weighings in the book",
                Inputs = [.. pour.Mixes.Select(one => ($"{one.At:d MMM HH:mm}", $"A {one.PartA.Kilograms:0.00} kg, B {one.PartB.Kilograms:0.00} kg, {one.Buckets} buckets, {one.Each.Minutes:0} min each"))],
            };
        else if (pour.PouredAt is null && PourModel.Next(state, pour.Plan.Resin).Contains(pour) && Stock(state, pour) is { } stock)
            yield return stock;
    }

    private static IReadOnlyList<(string, string)> Weighed(Pour pour, Casting.Resin resin, CastingMix mix) =>
        [("resin in place and waste", $"{mix.Total.Kilograms:0.00} kg"), ("waste", $"{pour.Plan.WasteShare:P0}"), ("mixed density", $"{resin.DensityMixed.KilogramsPerCubicMetre:0.0} kg/m³"), ("densities A, B", $"{resin.DensityA.KilogramsPerCubicMetre:0}, {resin.DensityB.KilogramsPerCubicMetre:0} kg/m³")];

    private static Traced? Stock(YardState state, Pour pour)
    {
        if (PourModel.Stock(state, pour.Plan.Resin) is not Outcome<StockCheck>.Done(var all) || PourModel.Stock(state, pour.Plan.Resin, pour.Tag) is not Outcome<StockCheck>.Done(var without) || !state.Resins.TryGetValue(pour.Plan.Resin, out var resin))
            return null;
        var shortKg = Math.Max(all.ShortA.Kilograms, all.ShortB.Kilograms);
        var part = all.ShortB >= all.ShortA ? "B" : "A";
        return new(shortKg > 0.0 ? $"Part {part} short, that day" : "Resin on hand", shortKg > 0.0 ? $"{shortKg:0.00}" : "enough", shortKg > 0.0 ? "kg" : "", shortKg > 0.0 ? without.IsEnough ? $"without {pour.Tag} there is enough" : $"without {pour.Tag} still {Little(Math.Max(without.ShortA.Kilograms, without.ShortB.Kilograms))} short" : "for all pours of the day")
        {
            Method = "resin-mix",
            Source = "stock as counted, less what was mixed since",
            Inputs = [("A wanted, on hand", $"{all.NeedA.Kilograms:0.00}, {resin.PartA?.OnHand.Kilograms ?? 0.0:0.0} kg"), ("B wanted, on hand", $"{all.NeedB.Kilograms:0.00}, {resin.PartB?.OnHand.Kilograms ?? 0.0:0.0} kg"), ($"B wanted without {pour.Tag}", $"{without.NeedB.Kilograms:0.00} kg")],
        };
    }

    private static string Little(double kilograms) => kilograms < 0.1 ? $"{kilograms * 1000.0:0} g" : $"{kilograms:0.00} kg";

    public static IEnumerable<Traced> Cure(Pour pour, PourCure cure)
    {
        var label = cure.Resin.Label;
        if (cure.LabelDemouldHour is { } byLabel)
            yield return new("Demould by the label", $"{byLabel:0}", "h", $"{label.Demould!.Value.Hours:0} h at {label.At.Celsius:0} °C, stretched by this shop")
            {
                Method = "resin-cure",
                Source = "the label; times double for each 10 °C colder",
                Inputs = [("shop", cure.Shop.Words), ("gel by the label", cure.LabelGelHour is { } gel ? $"{gel:0} h" : "not on it"), ("at 14 °C times take", $"{LabelRule.TimeStretch(label, Temperature.FromCelsius(14.0)):0.00} as long"), ("at 18 °C", $"{LabelRule.TimeStretch(label, Temperature.FromCelsius(18.0)):0.00} as long")],
            };
        if (cure.Model is not { } model)
            yield break;
        yield return new("Demould by the model, edge", model.DemouldEdgeHour is { } edge ? $"{edge:0}" : "over 720", "h", $"{(model.EdgeDepth is { } thin ? $"{thin.Millimetres:0.#} mm thin" : "slowest face")}; centre {model.Centre.DemouldCentreHour:0} h") { Method = "resin-cure", Source = "Kamal-Sourour kinetics through the depth; constants as the book’s resin names them", Inputs = [("gel, centre and edge", $"{model.Centre.GelCentreHour:0} and {model.GelEdgeHour:0} h"), ("hard at", $"{model.Section.Resin.DemouldConversion:P0} converted, under {model.Section.Resin.DemouldCelsiusMax:0} °C"), ("mould", "12.7 mm HDPE taken"), ("shop", cure.Shop.Words)] };
        yield return new("Hottest", $"{model.Centre.PeakCelsius:0}", "°C", $"after {model.Centre.PeakHour:0} h; {(model.MarginKelvins < 0.0 ? $"over the limit of {model.Section.Resin.PeakCelsiusMax:0}" : $"{model.MarginKelvins:0.#} °C warmer or {model.MarginMillimetres:0} mm deeper reaches the limit of {model.Section.Resin.PeakCelsiusMax:0}")}") { Method = "resin-cure", Source = "the same simulation; narrow rivers stay cooler than this", Inputs = [("depth", $"{pour.Plan.DepthMm:0.#} mm"), ("limit", $"{model.Section.Resin.PeakCelsiusMax:0} °C, a setting")] };
        yield return new("On the planned day", $"{(model.Edge ?? model.Centre).At(cure.PlannedHour).LeastConversion * 100.0:0}", "% set", $"edge at {cure.PlannedHour:0} h; {model.Section.Resin.DemouldConversion:P0} is hard") { Method = "resin-cure", Source = "the same simulation", Inputs = [("planned", $"{pour.DemouldOn:ddd d MMM yyyy}"), ("centre", $"{model.Centre.At(cure.PlannedHour).CentreConversion * 100.0:0} % set")] };
    }
}
