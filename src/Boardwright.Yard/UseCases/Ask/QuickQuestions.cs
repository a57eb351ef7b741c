using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>The quick questions of the yard, in one place.</summary>
public static class QuickQuestions
{
    private const double ShrinkageSpread = 0.15; // single boards about the mean of the species
    private static readonly (string, string)[] Woods = [.. SpeciesTable.All.Select(species => species.CommonName).Order(StringComparer.OrdinalIgnoreCase).Select(name => (name, name))];
    private static readonly QuickField Wood = new("species", "Wood") { Choices = Woods };

    public static IReadOnlyList<QuickQuestion> All { get; } =
    [
        new("air", "What does this air hold wood at?", "Air", AirStateCommand.Command,
            [new("dry-bulb", "Temperature of the air, dry bulb", "F", "68"), new("rh", "Humidity of the air", "%"), new("wet-bulb", "or wet bulb", "F"), EquationField], "emc")
        {
            Show = (_, _, answer) => Air((AirStateCommand.Answer)answer),
            Here = YardAir,
        },
        new("shrink", "What will this board shrink?", "Shrinking", WoodShrink.Command,
            [Wood, new("size", "Width of the face now", "in", "8"), new("from", "Moisture now", "%", "12"), new("to", "Moisture it comes to", "%", "7"), new("grain", "Growth rings to the face") { Choices = [("flat", "flatsawn"), ("quarter", "quartersawn"), ("45deg", "between, 45 degrees")] }], "shrinkage")
        {
            Show = (_, typed, answer) => Shrink(typed, (WoodShrink.Answer)answer),
        },
        new("meter", "What does this reading mean?", "Reading", MoistureMeter.Command,
            [new("reading", "The meter shows", "%"), new("temperature", "The wood’s own temperature", "F", "68"), Wood, SetToField, TemperatureRuleField], "moisture-meter")
        {
            Show = (_, typed, answer) => Meter(typed, (MoistureMeter.Answer)answer),
        },
        new("rate", "How fast may this wood dry?", "Safe rate", DryRate.Command, [Wood, new("thickness", "Rough thickness", "in", "4/4")], "safe-rate")
        {
            Show = (_, typed, answer) => Rate(typed, (DryRate.Answer)answer),
        },
        new("weight", "What does this much wood weigh?", "Weight", WoodWeightCommand.Command, [Wood, new("mc", "Moisture", "%", "12"), new("volume", "How much", "bf", "1000")], "density")
        {
            Show = (_, _, answer) => Weight((WoodWeightCommand.Answer)answer),
        },
        QuickHeat.Question(Wood),
    ];

    /// <summary>The question of a key; the first where the key is none.</summary>
    public static QuickQuestion Of(string? key) => All.FirstOrDefault(question => question.Key == key) ?? All[0];

    private static QuickField EquationField => new("equation", "By") { Choices = [("hailwood-horrobin", "the Wood Handbook’s equation"), ("glass", "the newer one of Glass")] };

    private static QuickField SetToField => new("calibrated-for", "The meter is set to") { Choices = [("", "this wood"), ("douglas-fir", "Douglas-fir, as it comes from the maker"), .. Woods] };

    private static QuickField TemperatureRuleField => new("equation", "Corrected for temperature by") { Choices = [("one-per-20f", "one percent for 20 °F"), ("pfaff-garrahan", "the equation of Pfaff and Garrahan")] };

    private static QuickAnswer Air(AirStateCommand.Answer air) => new(
    [
        new("It holds wood at", air.EmcPct is { } emc ? Text($"{emc:0.0}") : "no figure", air.EmcPct is null ? "" : "%", Text($"at {air.DryBulbC * 1.8 + 32.0:0.#} °F and {air.RhPct:0} % humidity, once the wood has settled"))
        {
            Method = "emc", Source = "Wood Handbook, ch. 4", Inputs = [("dry bulb", Both(air.DryBulbC)), ("humidity", Text($"{air.RhPct:0.0} %")), ("wet bulb", air.WetBulbC is { } wet ? Both(wet) : "–"), ("dew point", air.DewPointC is { } dew ? Both(dew) : "–")],
        },
        new("Humidity", Text($"{air.RhPct:0}"), "%", Text($"wet bulb {(air.WetBulbC is { } bulb ? Text($"{bulb * 1.8 + 32.0:0.#} °F") : "unknown")}; {1000.0 * air.HumidityRatioKgPerKg:0.0} g of water in a kg of dry air")) { Method = "moist-air", Source = "ASHRAE Handbook of Fundamentals, ch. 1" },
    ], "A board takes weeks to get there, a thick one months; furniture for heated rooms is dried to 6 to 8 %.");

    // Outside as the book has it for today, and the shop as it was last read.
    private static QuickAnswer? YardAir(YardState state)
    {
        var figures = new List<Traced>();
        var equation = HouseRules.Equilibrium(state);
        if (YardWeather.Series(state, state.Today, state.Today) is Outcome<Drying.WeatherSeries>.Done && state.Weather.GetValueOrDefault(state.Today) is { } day
            && AirState.FromHumidity(Temperature.FromCelsius(day.MeanC), RelativeHumidity.FromPercent(day.MeanRhPct), AirState.StandardPressure) is Outcome<AirState>.Done(var outside) && outside.EmcBy(equation) is { } emc)
            figures.Add(new("The yard today", Text($"{emc.Percent:0.0}"), "%", Text($"holds wood at this: {day.MeanC * 1.8 + 32.0:0} °F and {day.MeanRhPct:0} %, {(day.Observed ? "mean as observed" : "by the forecast")}")) { Method = "emc", Source = day.Observed ? "weather of the book" : "forecast in the book" });
        if (figures.Count > 0 && state.ShopC.Count > 0 && state.Weather.GetValueOrDefault(state.Today) is { } air && Shop(air, state.ShopC.Last().Value) is { } shop && shop.EmcBy(equation) is { } inside)
            figures.Add(new("The shop", Text($"{inside.Percent:0.0}"), "%", Text($"if the yard’s air is warmed to {state.ShopC.Last().Value * 1.8 + 32.0:0} °F there and nothing wets it: {shop.Humidity.Percent:0} % humidity")) { Method = "emc", Source = "shop as last read; water of the yard’s air (common practice, no source)" });
        return figures.Count > 0 ? new(figures, "") : null;
    }

    private static AirState? Shop(Book.State.WeatherDay air, double shopC) =>
        AirState.FromHumidity(Temperature.FromCelsius(air.MeanC), RelativeHumidity.FromPercent(air.MeanRhPct), AirState.StandardPressure) is Outcome<AirState>.Done({ DewPoint: { } dew })
        && dew.Celsius < shopC && AirState.FromDewPoint(Temperature.FromCelsius(shopC), dew, AirState.StandardPressure) is Outcome<AirState>.Done(var shop) ? shop : null;

    private static QuickAnswer Shrink(IReadOnlyDictionary<string, string> typed, WoodShrink.Answer answer)
    {
        var inches = answer.ChangeMm / 25.4;
        return new(
        [
            new(inches < 0.0 ? "It shrinks by" : "It grows by", Text($"{Math.Abs(inches):0.000}"), "in", Text($"{Math.Abs(inches) * (1.0 - ShrinkageSpread):0.000} to {Math.Abs(inches) * (1.0 + ShrinkageSpread):0.000} as boards differ; {Math.Abs(answer.ChangeMm):0.0} mm, {Math.Abs(answer.ChangePct):0.0} %"))
            {
                Method = "shrinkage", Source = "Wood Handbook, tables 4-3 and 4-4; boards 15 % about the mean of their wood", Inputs = [("wood", typed.GetValueOrDefault("species") ?? ""), ("from", Text($"{answer.SizeInMm / 25.4:0.00} in, {answer.SizeInMm:0.0} mm"))],
            },
            new("Then it is", Text($"{answer.SizeOutMm / 25.4:0.000}"), "in", Text($"wide; {answer.SizeOutMm:0.0} mm")) { Method = "shrinkage" },
        ], "Leave room for it: a top fixed so that it can slide does not split. Length hardly moves.");
    }

    private static QuickAnswer Meter(IReadOnlyDictionary<string, string> typed, MoistureMeter.Answer answer) => new(
    [
        new("The wood is at", answer is { CorrectedMcPct: { } percent, Usable: true } ? Text($"{percent:0.0}") : answer.Usable ? "no figure" : "above range", answer is { CorrectedMcPct: not null, Usable: true } ? "%" : "", answer is { CorrectedMcPct: not null, Usable: true } ? Text($"give or take {answer.ErrorPct:0.0}; {answer.Note}") : answer.Note)
        {
            Method = "moisture-meter", Source = "Wood Handbook; Pfaff and Garrahan; the meter’s own range ends near fibre saturation",
            Inputs = [("the meter shows", typed.GetValueOrDefault("reading") ?? ""), ("corrected for temperature", Text($"{answer.TemperatureCorrectedPct:0.0} %"))],
        },
    ], "Measure the wood’s own temperature in a hole, not the air’s. Pins at a fifth of the thickness read the mean; where it matters, oven-dry a section.");

    private static QuickAnswer Rate(IReadOnlyDictionary<string, string> typed, DryRate.Answer answer) => new(
    [
        new("It may lose", Text($"{answer.SafeDailyLossPct:0.0}"), "% a day", "while it is green, hour by hour; the first third of its water is the dangerous one, under 30 % new checks hardly form")
        {
            Method = "safe-rate", Source = $"{answer.Source} ({SourceMark.Words(answer.Mark)})", Inputs = [("wood", typed.GetValueOrDefault("species") ?? ""), ("thickness", typed.GetValueOrDefault("thickness") ?? "")],
        },
    ], "Weigh samples against it each day; where it is passed, raise the wet bulb and look for checks at once.");

    private static QuickAnswer Weight(WoodWeightCommand.Answer answer) => new(
    [
        new("It weighs", Text($"{answer.WeightLb:#,0}"), "lb", Text($"{answer.WeightKg:#,0} kg; {answer.DensityKgPerM3:0} kg in a cubic metre")) { Method = "density", Source = "Wood Handbook, ch. 4" },
    ], "Stickers, bolsters and bark are not in it. Board feet are taken at their nominal size.");

    private static string Both(double celsius) => Text($"{celsius * 1.8 + 32.0:0.#} °F, {celsius:0.0} °C");

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
