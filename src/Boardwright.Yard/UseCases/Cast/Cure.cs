using Boardwright.Casting;
using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Whether a pour runs hot or stays soft, and when it comes out of the mould.</summary>
public static class CastCure
{
    private const double HoursBetween = 6.0;

    public static Command Command { get; } = Command.Of("cast", "cure", "How hot a pour gets, when it gels and when it can leave the mould", Run) with
    {
        Argument = new("FILE", $"a mould in JSON: {MouldFile.Keys}"),
        Options = [Option.Optional("shop", "TEMPERATURES|FILE", "shop air from the pour on, every 6 h, such as 20C,19C,15C, or a table with the header h,c (default: as in the file)")],
        Examples = ["cast cure demo/examples/mould-river.json", "cast cure demo/examples/mould-table.json --shop 20C,19C,15C,14C,18C,20C,18C,15C"],
    };

    public sealed record Places(double? Centre, double? Edge);

    public sealed record Point(double Hours, double ShopC, double CentreC, double HottestC, double TopC, double CentreConversion, double LeastConversion);

    public sealed record Answer(
        double PeakC, double PeakAtH, Places GelH, Places DemouldH, bool Safe, string Advice, double MarginC, double MarginMm, double LimitC, double? LabelDemouldH,
        IReadOnlyList<string> Cautions, IReadOnlyList<Point> Curve);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        var shop = ask.Has("shop") ? Given(ask) : null;
        return ask.Refuses ? ask.Refused<Answer>() : InputFile.Read<MouldFile>("FILE", text).Then(mould =>
            ResinFile.Of(mould.Resin).Then(resin => (shop is null ? Shop(mould) : shop).Then(air =>
                mould.Wall().Then(wall => Layers(mould).Then(layers => Forecast(mould, resin, air, wall, layers))))));
    }

    private static Outcome<Answer> Forecast(MouldFile mould, Resin resin, ShopTemperature shop, MouldWall? wall, IReadOnlyList<PourLayer> layers)
    {
        if (resin.Curing is not { } curing)
            return new Outcome<Answer>.NoAnswer("The resin's data do not say how it cures: give heat_j_per_g (or both equivalent weights) and gel_min, gel_mass_g, gel_temperature_c.");
        Length? edge = mould.EdgeMm is { } given && Length.Accepts(given / 1000.0) ? Length.FromMillimetres(given) : null;
        var section = new CureSection { Resin = curing, Layers = layers, Wall = wall, Shop = shop };
        return PourForecast.Of(section, edge).Then<Answer>(pour => new Answer(
            pour.Centre.PeakCelsius, pour.Centre.PeakHour, new(pour.Centre.GelCentreHour, pour.GelEdgeHour), new(pour.Centre.DemouldCentreHour, pour.DemouldEdgeHour),
            pour.IsSafe, string.Join(' ', PourAdvice.For(pour, resin.Label)), pour.MarginKelvins, pour.MarginMillimetres, curing.PeakCelsiusMax,
            resin.Label.Demould is { } label ? LabelRule.Reaches(resin.Label, shop, label)?.Hours : null,
            PourAdvice.Cautions,
            [.. pour.Centre.Curve.Where((_, index) => index % 2 == 0).Select(point => new Point(
                point.Hour, point.ShopCelsius, point.CentreCelsius, point.HottestCelsius, point.TopCelsius, point.CentreConversion, point.LeastConversion))]));
    }

    private static Outcome<IReadOnlyList<PourLayer>> Layers(MouldFile mould)
    {
        if (mould.Layers is not { Count: > 0 } layers)
            return mould.Depth().Then<IReadOnlyList<PourLayer>>(depth => new List<PourLayer> { new(depth, default) });
        var bad = layers.FirstOrDefault(layer => layer.DepthMm is not (> 0.0 and <= 1000.0) || layer.PouredH is < 0.0 or > 2000.0);
        return bad is null
            ? layers.Select(layer => new PourLayer(Length.FromMillimetres(layer.DepthMm!.Value), Elapsed.FromHours(layer.PouredH ?? 0.0))).ToList()
            : new Refusal("layers", $"depth_mm {bad.DepthMm}, poured_h {bad.PouredH}", "a depth of 0 to 1000 mm poured after 0 to 2000 h");
    }

    private static Outcome<ShopTemperature> Shop(MouldFile mould)
    {
        if (mould.ShopC is { } constant)
            return Celsius(constant).Then(temperature => ShopTemperature.Readings("shop_c", [(0.0, temperature)]));
        if (mould.Shop is not { Count: > 0 } readings)
            return new Refusal("shop_c", "nothing", "the shop's temperature as shop_c, shop or --shop");
        var bad = readings.FirstOrDefault(reading => reading.H is not (>= 0.0 and <= 10_000.0) || reading.C is not (>= -20.0 and <= 120.0));
        return bad is null
            ? ShopTemperature.Readings("shop", [.. readings.Select(reading => (reading.H!.Value, Temperature.FromCelsius(reading.C!.Value)))])
            : new Refusal("shop", $"h {bad.H}, c {bad.C}", "hours from 0 and a shop of -20 to 120 C");
    }

    private static Outcome<ShopTemperature> Given(Ask ask)
    {
        if (!ask.Text("shop").EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            var list = ask.List("shop", Read.Temperature);
            return ShopTemperature.Readings("--shop", [.. list.Select((temperature, index) => (HoursBetween * index, temperature))]);
        }

        var rows = ask.Take("--shop", CsvTable.Read("--shop", ask.File("shop"), "h", "c"))?.Rows ?? [];
        var readings = rows.Select(row => (ask.Take("--shop", row.Get("h", Read.Number)), ask.Take("--shop", row.Get("c", (what, text) => Read.Number(what, text).Then(Celsius))))).ToList();
        return ShopTemperature.Readings("--shop", readings);
    }

    private static Outcome<Temperature> Celsius(double celsius) => celsius is >= -20.0 and <= 120.0
        ? Temperature.FromCelsius(celsius)
        : new Refusal("shop", $"{celsius} C", "a shop of -20 to 120 C");
}
