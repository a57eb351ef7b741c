using Boardwright.Drying.Heat;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Heat a kiln charge takes, by where it goes.</summary>
public static class HeatKiln
{
    public static Command Command { get; } = Command.Of("heat", "kiln", "Heat a kiln charge takes, by where it goes", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "common or scientific name"),
            Option.Required("volume", "V", "solid wood when green, such as 13.27m3 or 5000bf"),
            Option.Required("from", "MC", "moisture content at the start, such as 80%"),
            Option.Required("to", "MC", "moisture content at the end"),
            Option.Required("outside", "T", "air outside"),
            Option.Required("kiln-temperature", "T", "dry bulb of the kiln"),
            Option.Required("hours", "H", "length of the run, such as 336h"),
            Option.Optional("kiln-rh", "P", "humidity in the kiln (default: mean of the species' 4/4 schedule)"),
            Option.Optional("outside-rh", "P", "humidity outside (default 75%)"),
            Option.Optional("start", "T", "wood at the start (default: the air outside)"),
            Option.Optional("warm-up", "H", "time to warm the load (default 8h)"),
            Option.Optional("structure", "FILE", "a kiln in JSON: volume_m3 area_m2 u_w_per_m2_k leak_share heat_capacity_kwh_per_k fan_kw (default: a small insulated kiln scaled to the volume)"),
        ],
        Examples =
        [
            "heat kiln --species \"northern red oak\" --volume 13.2735m3 --from 80% --to 40% --outside 5C --kiln-temperature 43C --kiln-rh 85% --hours 336h --start 10C",
            "heat kiln --species \"black cherry\" --volume 900bf --from 15% --to 7% --outside 35F --kiln-temperature 130F --hours 120h --structure demo/examples/kiln-structure.json",
        ],
    };

    public sealed record Answer(
        double WoodKwh, double WaterKwh, double StructureKwh, double EvaporationKwh, double SorptionKwh, double VentKwh, double WallsKwh, double TotalKwh, double FanKwh,
        double CoilKwh, double MeanKw, double PeakKw, double? KwhPerKgWater, double WaterKg, double KilnRhPct, string Advice);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var volume = ask.Volume("volume");
        var from = ask.Moisture("from");
        var to = ask.Moisture("to");
        var outsideT = ask.Temperature("outside");
        var kiln = ask.Temperature("kiln-temperature");
        var hours = ask.Elapsed("hours");
        var given = ask.HumidityOrNull("kiln-rh");
        var outside = new OutsideAir(outsideT, ask.Humidity("outside-rh", RelativeHumidity.FromPercent(75.0)));
        var start = ask.Temperature("start", outsideT);
        var warmUp = ask.Elapsed("warm-up", KilnHeat.UsualWarmUp);
        var structure = ask.Has("structure")
            ? ask.Take("--structure", InputFile.Read<StructureFile>("--structure", ask.File("structure")).Then(file => file.Structure()))
            : KilnStructure.ForVolume(volume);
        if (!ask.Refuses && volume.CubicMetres <= 0.0)
            ask.Refuse("volume", ask.Text("volume"), "a volume above zero");
        if (!ask.Refuses && to >= from)
            ask.Refuse("to", ask.Text("to"), $"below --from, {from.Percent:0.#} %");
        if (!ask.Refuses && warmUp.Seconds <= 0.0)
            ask.Refuse("warm-up", ask.Text("warm-up"), "a time above zero");
        if (!ask.Refuses && kiln < start)
            ask.Refuse("kiln-temperature", ask.Text("kiln-temperature"), $"at least as warm as the wood at the start, {start.Celsius:0.#} C");
        if (ask.Refuses || species is null || structure is null)
            return ask.Refused<Answer>();
        var load = KilnLoad.Of(species, volume, from, start);
        return Humidity(species, given).Then(humidity =>
        {
            var stage = new KilnStage(kiln, humidity, to, hours);
            return KilnHeat.Stage(load, stage, structure, outside).Then<Answer>(terms => Show(terms, stage, KilnHeat.WarmUpKilowatts(terms, stage, structure, outside, warmUp)));
        });
    }

    private static Outcome<RelativeHumidity> Humidity(Species species, RelativeHumidity? given) => given is { } stated
        ? stated
        : KilnSchedule.For(species, Length.FromInches(1.0)).Then<RelativeHumidity>(schedule =>
            RelativeHumidity.FromFraction(schedule.Steps.Average(step => step.Air.Humidity.Fraction)));

    private static Answer Show(KilnHeatTerms terms, KilnStage stage, double warmUpKilowatts)
    {
        var mean = terms.Total / terms.Hours;
        var peak = Math.Max(mean, warmUpKilowatts);
        return new(
            terms.Wood, terms.Water, terms.Structure, terms.Evaporation, terms.Sorption, terms.Vent, terms.Walls, terms.Total, terms.Fans, terms.Coil, mean, peak,
            terms.TotalPerKilogramOfWater, terms.WaterKilograms, stage.Humidity.Percent,
            peak > 2.0 * mean
                ? $"Warming up wants {peak:0.#} kW, {peak / mean:0.#} times the mean: do not start two kilns on one day, or warm up more slowly. Repairs to pressure parts are for certified people."
                : "Repairs to pressure parts of the boiler are for certified people.");
    }

    private sealed record StructureFile
    {
        public double? VolumeM3 { get; init; }

        public double? AreaM2 { get; init; }

        [System.Text.Json.Serialization.JsonPropertyName("u_w_per_m2_k")]
        public double? LossWPerM2K { get; init; }

        public double? LeakShare { get; init; }

        public double? HeatCapacityKwhPerK { get; init; }

        public double? FanKw { get; init; }

        public Outcome<KilnStructure> Structure()
        {
            if (AreaM2 is not (> 0.0 and <= 1e4) || LossWPerM2K is not (> 0.0 and <= 20.0))
                return new Refusal("area_m2, u_w_per_m2_k", $"{AreaM2}, {LossWPerM2K}", "the surface, 0 to 10000 m2, and its loss, 0 to 20 W/(m2 K)");
            if (LeakShare is < 0.0 or > 1.0 || HeatCapacityKwhPerK is < 0.0 or > 1e3 || FanKw is < 0.0 or > 1e3)
                return new Refusal("leak_share, heat_capacity_kwh_per_k, fan_kw", $"{LeakShare}, {HeatCapacityKwhPerK}, {FanKw}", "a share of 0 to 1, 0 to 1000 kWh/K and 0 to 1000 kW");
            var example = KilnStructure.Example;
            return new KilnStructure(
                AreaM2.Value * LossWPerM2K.Value, HeatCapacityKwhPerK * 3.6e6 ?? example.HeatCapacityJoulesPerKelvin,
                FanKw is { } fans ? Power.FromKilowatts(fans) : example.Fans, LeakShare is { } leak ? Share.FromFraction(leak) : example.Leak);
        }
    }
}
