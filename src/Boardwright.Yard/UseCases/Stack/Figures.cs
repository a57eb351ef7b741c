using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>The numbers of a stack, each with what went in, the method and the source.</summary>
internal static class StackFigures
{
    public static IReadOnlyList<Traced> Of(YardState state, Stack stack, StackForecast? drying)
    {
        List<Traced?> figures = stack.Proven
            ? [ByCharge(state, stack), LastRead(state, stack), Likely(drying), Ready(drying), Outdoor(state, stack), Dry(state, stack), Weight(state, stack, drying), Trips(state, stack, drying)]
            : [ByCharge(state, stack), As(stack, LastRead(state, stack)), As(stack, Likely(drying)), As(stack, Ready(drying)), Outdoor(state, stack)];
        return [.. figures.OfType<Traced>()];
    }

    // While its tag is lost, footage once dry and weight are left out; what is read and forecast says as which wood.
    private static Traced? As(Stack stack, Traced? figure) => figure is null ? null : figure with { Basis = $"If it is {stack.Species.CommonName}, which is unproven: {figure.Basis}" };

    // In a kiln its samples or its condensate know better than the last reading in the yard.
    private static Traced? ByCharge(YardState state, Stack stack)
    {
        if (stack.Charge is not { } tag || !state.Charges.TryGetValue(tag, out var charge))
            return null;
        if (charge.SampleMean is { } mean)
        {
            return new("Mean of its samples", Text(mean.Percent, "0.0"), "%", $"{charge.SoundSamples.Count()} samples of {tag}, {Text(charge.Target.Percent, "0.#")} wanted")
            {
                Method = "moisture-content",
                Source = "calculated dry weight from two sections a sample (Wengert, Drying Oak Lumber, step 3B)",
                Inputs = [.. charge.SoundSamples.Select(sample => ($"sample {sample.Name}", Text(sample.Moisture.Percent, "0.0") + " %"))],
            };
        }

        return ChargeVacuum.Of(state, charge) is Outcome<ChargeVacuum>.Done({ ByCondensate: { } now } run)
            ? new(run.ByWords, Text(now.Percent, "0.0"), "%", $"all of {tag}: {(run.CaughtL is { } litres ? $"{Text(litres, "0.#")} L caught" : $"{run.ReadInside} readings in it")} from {Text(run.From.Percent, "0.#")} %")
            {
                Method = "vacuum-drying",
                Source = "water caught over oven-dry wood; 95 % of it taken to be caught (common practice, no source)",
            }
            : null;
    }

    private static Traced? LastRead(YardState state, Stack stack)
    {
        if (stack.Moisture is not { Mean: { } mean } reading)
            return null;

        var points = ReadingError.Points(reading, mean.Percent);
        var off = ReadingError.For(reading) is { } used ? ReadingError.StandardErrorsInBand * used.TotalErrorPercent : points;
        var by = StackSheet.ByWords(state, reading.Entry);
        var value = reading.Meter is not { Usable: false } ? Text(mean.Percent, "0.0") : mean.Percent < 15.0 ? "under 7" : "over 28";
        var read = reading is { Raw: { } raw, Wood: { } wood }
            ? string.Create(CultureInfo.InvariantCulture, $"Read {raw.Percent:0.0} in wood at {wood.Fahrenheit:0} °F: {Added(mean, raw)}")
            : $"By {Words(reading.Method)}";
        return new("Moisture, last read", value, "%",
            string.Create(CultureInfo.InvariantCulture, $"{Math.Max(mean.Percent - off, 0.0):0.0} to {mean.Percent + off:0.0}, 9 times in 10. {read}. {by}{DayWords.Of(reading.At.Day(), state.Today)}"))
        {
            Method = reading.Raw is null ? "moisture-content" : "moisture-meter",
            Source = reading.Raw is null ? $"{by}entry {reading.Entry}" : "up to 1 % for each 20 °F from 70 °F (Conners, FOR-128; James, FPL-GTR-6)",
            Inputs =
            [
                ("as read", reading.Raw is { } shown ? Text(shown.Percent, "0.0") + " %" : "not by meter"),
                ("wood temperature", reading.Wood is { } at ? Text(at.Fahrenheit, "0") + " °F" : "not taken"),
                ("meter set to", reading.SetTo?.Name ?? "–"),
                ("boards", reading.Boards?.ToString(CultureInfo.InvariantCulture) ?? "not counted"),
                ("spread of boards", reading.SdPct is { } sd ? Text(sd, "0.0") + " %" : "not taken"),
                ("give or take, the method alone", Text(points, "0.#") + " %"),
                ("with the scatter of the boards read", Text(off, "0.0") + " %"),
                ("to know", reading.Meter?.Note is { Length: > 0 } note ? note : "nothing"),
            ],
        };
    }

    private static string Added(MoistureContent mean, MoistureContent raw) => mean.Percent >= raw.Percent
        ? $"{Text(mean.Percent - raw.Percent, "0.0")} added"
        : $"{Text(raw.Percent - mean.Percent, "0.0")} taken off";

    /// <summary>"pins", "oven sections": how a reading was made.</summary>
    public static string Words(MoistureMethod method) => method switch
    {
        MoistureMethod.Pin => "pins",
        MoistureMethod.CorePins => "pins in the core",
        MoistureMethod.OvenSections => "oven sections",
        MoistureMethod.SampleBoards => "sample boards",
        MoistureMethod.InKiln => "kiln’s own gauge",
        MoistureMethod.AtUnloading => "pins at unloading",
        MoistureMethod.PackWeight => "weighed whole",
        _ => "estimate",
    };

    private static Traced? Likely(StackForecast? drying) => drying is null ? null
        : new("Likely this evening", Text(drying.Now.P50.Percent, "0.0"), "%",
            string.Create(CultureInfo.InvariantCulture, $"{drying.Now.P10.Percent:0.0} to {drying.Now.P90.Percent:0.0}, 8 times in 10, by the air since {DayWords.Of(drying.Input.Start, drying.Today)} and {Readings(drying.Input.Readings.Count)}"))
        {
            Method = "air-drying",
            Source = $"{drying.Forecast.Origin} ({SourceMark.Words(drying.Forecast.Mark)})",
            Inputs =
            [
                ("green from the saw", Text(drying.Input.From.Percent, "0") + " %"),
                ("thickness", Text(drying.Input.Thickness.Inches, "0.###") + " in"),
                ("place", drying.Input.Moves.Count == 0 ? drying.Input.Place.Name : $"{drying.Input.Place.Name}, then {drying.Input.Moves[^1].Place.Name}"),
                ("air observed through", drying.Input.WeatherKnownThrough is { } day ? DayWords.Of(day, drying.Today) : "not observed"),
                ("readings used", drying.Input.Readings.Count.ToString(CultureInfo.InvariantCulture)),
                ("to know", drying.Forecast.Notes.Count > 0 ? string.Join("; ", drying.Forecast.Notes) : "nothing"),
            ],
        };

    private static string Readings(int count) => count switch { 0 => "no reading", 1 => "one reading", _ => $"{count} readings" };

    private static Traced? Ready(StackForecast? drying)
    {
        if (drying is null)
            return null;

        var target = Text(drying.Target.Percent, "0.#") + " %";
        var (value, basis) = drying switch
        {
            { IsReady: true } => (drying.ReadyWords, $"at or under {target}; {drying.TargetWhy}"),
            { Likely: { } likely } => (DayWords.Of(likely, drying.Today), $"likely; {drying.ReadyWords}, 8 times in 10. To {target}: {drying.TargetWhy}"),
            _ => ("not in sight", $"to {target}: the air does not bring it there by {DayWords.Of(drying.Input.Weather.Last, drying.Today)}. {drying.TargetWhy}"),
        };
        return new("Dry enough by air alone", value, "", basis)
        {
            Method = "air-drying",
            Source = $"{drying.Forecast.Origin} ({SourceMark.Words(drying.Forecast.Mark)})",
            Inputs =
            [
                ("early, 1 in 10", DayOrNone(drying.Early, drying.Today)),
                ("likely", DayOrNone(drying.Likely, drying.Today)),
                ("late, 9 in 10", DayOrNone(drying.Late, drying.Today)),
                ("air ahead", "forecast, then the usual air of the season with chance departures"),
                ("wanted", target),
            ],
        };
    }

    private static string DayOrNone(DateOnly? day, DateOnly today) => day is { } known ? DayWords.Of(known, today) : "not in sight";

    private static Traced? Outdoor(YardState state, Stack stack) =>
        stack.Stage == StackStage.AirDrying && StackSheet.OutdoorMoisture(state) is var (moisture, normal)
        ? new("Air holds it at", Text(moisture.Percent, "0.0"), "%", string.Create(CultureInfo.InvariantCulture, $"usual {state.Today:MMMM}, {normal.MeanC:0.0} °C and {normal.MeanRhPct:0} %"))
        {
            Method = "emc",
            Source = "Hailwood-Horrobin form of the Wood Handbook, FPL-GTR-282, eq. 4-5",
            Inputs = [("mean temperature", Text(normal.MeanC, "0.0") + " °C"), ("mean humidity", Text(normal.MeanRhPct, "0") + " %")],
        }
        : null;

    private static Traced? Dry(YardState state, Stack stack)
    {
        if (stack.NeverKiln || stack.Stage is not (StackStage.AirDrying or StackStage.InKiln) || StackYield.Of(state, stack) is not { } dry || dry.From <= dry.To)
            return null;

        return new($"Net once dry at {Text(dry.To.Percent, "0.#")} %", Text(dry.Likely, "#,0"), "bf", string.Create(CultureInfo.InvariantCulture, $"of {stack.Footage.Count:#,0} net {(stack.Stage == StackStage.InKiln ? "as loaded" : "as it lies")} at {dry.From.Percent:0.0} %: {dry.Shrunk:#,0} shrunk, less {dry.Falldown?.Likely ?? 0:0.#} % falldown"))
        {
            Method = "shrinkage",
            Source = "Wood Handbook, FPL-GTR-282, eq. 4-9 and table 4-3; falldown: the mill’s own record",
            Inputs =
            [
                ("net now", Text(stack.Footage.Count, "#,0") + " bf"),
                ("from", Text(dry.From.Percent, "0.0") + " %"),
                ("to", Text(dry.To.Percent, "0.#") + " %"),
                ("falldown, low to high", dry.Falldown is not { } loss ? "none on record" : string.Create(CultureInfo.InvariantCulture, $"{loss.Low:0.#} to {loss.High:0.#} %: {dry.Low:#,0} to {dry.High:#,0} bf")),
            ],
        };
    }

    private static Traced? Weight(YardState state, Stack stack, StackForecast? drying)
    {
        if (StackNow.Of(state, stack, drying)?.Mean is not { } mean)
            return null;

        var mass = stack.Footage.NominalVolume.CubicMetres * WoodDensity.At(stack.Species, mean).KilogramsPerCubicMetre;
        return new("Weighs about", Text(mass, "#,0"), "kg", string.Create(CultureInfo.InvariantCulture, $"{Mass.FromKilograms(mass).Pounds:#,0} lb at {mean.Percent:0.0} %, nominal thickness"))
        {
            Method = "density",
            Source = "Wood Handbook, FPL-GTR-282, eqs. 4-11 and 4-14",
            Inputs =
            [
                ("basic specific gravity", Text(stack.Species.BasicSpecificGravity, "0.00")),
                ("moisture", Text(mean.Percent, "0.0") + " %"),
                ("footage", Text(stack.Footage.Count, "#,0") + " bf"),
            ],
        };
    }

    // Trips are counted at the heaviest it may be: wet end of the band, and as thick as it was sawn.
    private static Traced? Trips(YardState state, Stack stack, StackForecast? drying)
    {
        if ((drying?.Now.P90 ?? stack.Moisture?.Mean) is not { } wettest || stack.Footage.Count <= 0.0 || state.Setting("trailer_payload") is not { } payload)
            return null;

        var heaviest = SawnWood.Weight(state, stack, stack.Footage, wettest);
        var trips = Carrying.Trips(heaviest, Mass.FromKilograms(payload));
        var tooLong = stack.LongestPiece is { } longest && state.Setting("trailer_bed") is { } bed && longest.Feet > bed;
        return new("On the trailer", Text(trips, "0"), trips == 1 ? "trip" : "trips", string.Create(CultureInfo.InvariantCulture, $"at most {heaviest.Kilograms:#,0} kg, {payload:#,0} kg each{(tooLong ? "; longer than the bed" : "")}. Tie-downs and axles: your local rules"))
        {
            Method = "density",
            Source = "payloads and lifts of the house, settings; how a load is tied is the law of the road (49 CFR 393 and the rules of the state)",
            Inputs =
            [
                ("at the wettest likely", Text(wettest.Percent, "0.0") + " %"), ("as sawn, over nominal", Text(100.0 * (SawnWood.Thicker(state, stack) - 1.0), "0") + " %"),
                .. state.Setting("forks_lift") is { } forks ? [("lifts of the forks", Text(Math.Ceiling(heaviest.Kilograms / forks), "0") + $" of {Text(forks, "#,0")} kg at {Text(state.Setting("forks_load_centre") ?? 600.0, "0")} mm, less further out")] : Array.Empty<(string, string)>(),
                .. state.Setting("hired_truck_payload") is { } truck ? [("hired truck", Text(Math.Ceiling(heaviest.Kilograms / truck), "0") + $" of {Text(truck, "#,0")} kg")] : Array.Empty<(string, string)>(),
                ("longest piece", stack.LongestPiece is { } piece ? Text(piece.Feet, "0.#") + " ft" : "not on the card"), ("bed", state.Setting("trailer_bed") is { } feet ? Text(feet, "0") + " ft" : "not set"),
            ],
        };
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
