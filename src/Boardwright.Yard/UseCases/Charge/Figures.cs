using System.Globalization;
using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Drying.Treatment;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>The numbers of a charge, each with what went in, the method and the source.</summary>
public static class ChargeFigures
{
    public static IReadOnlyList<Traced> Of(YardState state, Charge charge, ChargeRun? run, ChargeVacuum? vacuum, SeasonNow season)
    {
        List<Traced?> figures = [SetNow(state, charge, run), charge.IsRunning ? ChargeDeviation.Of(charge) : null, SetNext(state, run), Controlling(charge, run), Ends(charge, state.Today), Loss(run), Dry(state, charge, run, season), .. Vacuum(state, charge, vacuum, season), Out(state, charge)];
        return [.. figures.OfType<Traced>()];
    }

    /// <summary>"150 / 112": dry bulb and wet bulb, degrees Fahrenheit.</summary>
    public static string Bulbs(Temperature dryBulb, Temperature wetBulb) => string.Create(CultureInfo.InvariantCulture, $"{dryBulb.Fahrenheit:0} / {wetBulb.Fahrenheit:0}");

    /// <summary>What a change does, as the beginning of a sentence.</summary>
    public static string ChangeWords(ChargeChange change) => change.Kind switch
    {
        ChangeKind.NextStep => "The next step comes",
        ChangeKind.Equalize => "Equalize",
        _ => "Condition",
    };

    private static Traced? SetNow(YardState state, Charge charge, ChargeRun? run)
    {
        if (charge.Settings.LastOrDefault() is not { } set || !charge.IsRunning)
            return null;

        var was = charge.Settings.Count > 1 ? $"was {Bulbs(charge.Settings[^2].DryBulb, charge.Settings[^2].WetBulb)}, " : "";
        var emc = ChargeRun.EmcOf(set.DryBulb, set.WetBulb);
        return new("Set now", Bulbs(set.DryBulb, set.WetBulb), "°F", $"{was}since {set.At.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)}; holds {Percent(emc)}{run?.BesideSchedule}{(run?.Equalizing is { IsOn: true } ? "; equalizing air already" : "")}")
        {
            Method = "kiln-schedule",
            Source = $"{StackSheet.ByWords(state, set.Entry)}entry {set.Entry}",
            Inputs =
            [
                ("dry bulb", Both(set.DryBulb)),
                ("wet bulb", Both(set.WetBulb)),
                ("the air holds wood at", Percent(emc)),
                ("schedule lists here", run is null ? "no schedule" : Listed(run)),
                ("the schedule", run is null ? "–" : run.Schedule.Code is null ? $"{run.Schedule.Name}, {run.Schedule.Source}" : $"{run.Schedule.Name}, {run.Schedule.Source} ({SourceMark.Words(run.Schedule.Mark)})"),
            ],
        };
    }

    private static string Listed(ChargeRun run)
    {
        var step = run.Schedule.Steps[run.StepNow];
        return $"{Bulbs(step.DryBulb, step.AirFloored90.WetBulb!.Value)} °F, holds {Percent(step.AirFloored90.Emc)}";
    }

    private static Traced? SetNext(YardState state, ChargeRun? run)
    {
        if (run is null)
            return null;

        if (run.Frozen is { } frozen)
            return new("Set next", "wait for the wick", "", $"{frozen}. With a sound one {Bulbs(run.Next.DryBulb, run.Next.WetBulb)} °F {(run.Next.IsDue ? "would be due now" : "comes next")}") { Method = "kiln-schedule", Source = "both bulbs as read beside the load" };

        var next = run.Next;
        var was = run.Set is not { } set ? "" : run.NextIsAsSet
            ? ". As it is set now" : $"; was {Bulbs(set.DryBulb, set.WetBulb)}";
        var what = next.Kind switch { ChangeKind.NextStep => run.Set is null ? "the first setting" : "next step", ChangeKind.Equalize => $"equalize at {Percent(next.Emc)}", _ => $"condition at {Percent(next.Emc)}" };
        var when = next.IsDue ? "due now" : next.DueAt is { } due ? $"about {DayWords.Of(due.Day(), state.Today)}" : run.Equalizing is not null ? "not in the air that is set" : "when it is there";
        return new("Set next", Bulbs(next.DryBulb, next.WetBulb), "°F", $"{when}: {what}, when {(run.BySamples || next.After is not null ? next.CallsWords : $"the wood is at {Number(next.At.Percent, "0.#")} %")}{was}")
        {
            Method = next.Kind == ChangeKind.NextStep ? "kiln-schedule" : "equalize-and-condition",
            Source = next.Kind == ChangeKind.Equalize && run.Schedule.Equalize is not null || next.Kind == ChangeKind.Condition && run.Schedule.Condition is not null ? $"{run.Schedule.Name}: {run.Schedule.Source}"
                : next.Kind == ChangeKind.NextStep ? $"{run.Schedule.Name}: {run.Schedule.Source} ({SourceMark.Words(run.Schedule.Mark)})" : "Dry Kiln Operator’s Manual (1991), ch. 7 (from memory of the source)",
            Inputs =
            [
                ("dry bulb", Both(next.DryBulb)),
                ("wet bulb", Both(next.WetBulb)),
                ("holds wood at", Percent(next.Emc)),
                ("calls for it", next.CallsWords),
                .. Comes(run),
                ("to know", run.Schedule.Note ?? "a starting point, not a recipe"),
            ],
        };
    }

    // What makes the day: the sample that calls, dried on by itself at the charge's rate.
    private static IEnumerable<(string, string)> Comes(ChargeRun run) => run.Equalizing is not { } equalizing ? [] :
    [
        ("the driest sample", equalizing switch
        {
            { IsOn: true } => $"nears the {Percent(run.EmcSet)} of the air that is set and does not fall under it: equalizing has begun",
            { DriestThere: { } hours } => $"at {Percent(equalizing.Finish.EqualizeFromDriest)} in {Number(hours.Hours, "0")} h from the weighing, in the air that is set{(equalizing.WettestComesFirst ? ": the wettest comes first, nothing is left to equalize" : "")}",
            _ => $"at {Percent(run.Driest)}, equalizing begins at {Percent(equalizing.Finish.EqualizeFromDriest)}",
        }),
        ("the wettest sample", equalizing.WettestThere is { } there ? $"at {Percent(equalizing.Finish.EqualizeUntilWettest)} in {Number(there.Half.Hours, "0")} h from the weighing, {Number(there.Most.Hours, "0")} at most" : $"at {Percent(run.Wettest)}"),
    ];

    private static Traced? Controlling(Charge charge, ChargeRun? run)
    {
        if (run is null)
            return null;

        if (!run.BySamples)
        {
            return new("Wettest stack", Number(run.Controlling.Percent, "0.0"), "%", $"as read before loading, mean {Number(run.Mean.Percent, "0.0")}; no sample is cut yet")
            {
                Method = "kiln-schedule",
                Source = "readings in the yard; samples take their place",
            };
        }

        var half = charge.SoundSamples.OrderByDescending(sample => sample.Moisture.Fraction).Take(run.Next.StepsBy == StepRule.WettestHalf ? (charge.SoundSamples.Count() + 1) / 2 : int.MaxValue).Select(sample => sample.Name).Order(StringComparer.Ordinal);
        return new(run.Next.StepsBy == StepRule.WettestHalf ? "Wettest half" : "Mean of samples", Number(run.Controlling.Percent, "0.0"), "%", $"samples {string.Join(", ", half)}; this mean sets the step. Weighed {run.WeighedAt.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)}")
        {
            Method = "kiln-schedule",
            Source = HouseRules.Printed(run.Next.StepsBy),
            Inputs = [.. charge.SoundSamples.Select(sample => ($"sample {sample.Name}", Number(sample.Moisture.Percent, "0.0") + " %"))],
        };
    }

    private static Traced? Ends(Charge charge, DateOnly today) => charge is not { SampleMean: { } mean, Driest: { } driest, Wettest: { } wettest } ? null
        : new("Driest to wettest", $"{Number(driest.Moisture.Percent, "0.0")} to {Number(wettest.Moisture.Percent, "0.0")}", "%", $"samples {driest.Name} and {wettest.Name}; mean {Number(mean.Percent, "0.0")}, {Number(charge.Target.Percent, "0.#")} wanted")
        {
            Method = "moisture-content",
            Source = "calculated dry weight from two sections a sample (Wengert, Drying Oak Lumber, step 3B)",
            Inputs = [.. charge.SoundSamples.Select(sample => ($"sample {sample.Name}", string.Create(CultureInfo.InvariantCulture, $"{sample.Weighings[^1].Weight.Grams:0} g over {sample.CalculatedDry.Grams:0.0} g dry, {DayWords.Of(sample.Weighings[^1].At.Day(), today)}")))],
        };

    private static Traced? Loss(ChargeRun? run)
    {
        if (run?.Fastest is not { DailyLossPct: { } loss } fastest)
            return null;

        var (safe, source) = run.Safe is Outcome<SafeRate>.Done(var rate) ? (Number(rate.DailyLossPercent, "0.0") + " % is safe", $"{rate.Source} ({SourceMark.Words(rate.Mark)})") : ("no safe rate is printed for this wood", "none printed");
        return new("Fastest loss a day", Number(loss, "0.0"), "%", $"sample {fastest.Sample.Name}; {safe}{(run.SafeRateGuards ? "" : " while green; below 30 % new checks hardly form")}")
        {
            Method = "safe-rate",
            Source = source,
            Inputs =
            [
                ("before", Number(fastest.Sample.Weighings[^2].Moisture.Percent, "0.0") + " % on " + fastest.Sample.Weighings[^2].At.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)),
                ("now", Number(fastest.Last.Moisture.Percent, "0.0") + " % on " + fastest.Last.At.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)),
                ("gaps", "left out"),
            ],
        };
    }

    private static Traced? Dry(YardState state, Charge charge, ChargeRun? run, SeasonNow season)
    {
        if (run is null)
            return null;
        if (run.Forecast is not Outcome<KilnForecast>.Done(var forecast) || ChargeEnd.Of(state, charge, run) is not { } end)
        {
            var listed = ChargeEnd.Of(state, charge, run) is { IfSet: { } bulbs } byList ? $" With {bulbs} °F set now: dry about {DayWords.Of(byList.Dry.Day(), state.Today)}, out from about {DayWords.Of(byList.OutOn, state.Today)}." : "";
            return new("Dry", "not in this air", "", $"{(run.Forecast is Outcome<KilnForecast>.NoAnswer(var why) ? why : "the samples are past the moisture wanted")}{listed}") { Method = "kiln-time" };
        }

        var rate = (run.Rate as Outcome<KilnRate>.Done)?.Value;
        return new("Dry", DayWords.Of(end.Dry.Day(), state.Today), "", $"mean at {Number(charge.Target.Percent, "0.#")} %, likely; {DayWords.Band(end.DryEarly.Day(), end.DryLate.Day(), state.Today)}, 8 times in 10. {end.OutWords(state.Today)}{end.LaterWords(season, charge.Tag, state.Today)}")
        {
            Method = "kiln-time",
            Source = $"{forecast.Origin} ({SourceMark.Words(forecast.Mark)})",
            Inputs =
            [
                ("from", $"mean {Number(run.Mean.Percent, "0.0")} % {(run.BySamples ? "of samples" : "as read before loading")} on {run.WeighedAt.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)}"),
                ("stood since then", run.StoodSince.Hours > 0.0 ? $"{Number(run.StoodSince.Hours, "0.0")} h, put on top" : "not"),
                ("hours, early to late", $"{Number(forecast.HoursP10, "0")}, {Number(forecast.HoursP50, "0")}, {Number(forecast.HoursP90, "0")}"),
                ("its own rate", rate is null ? "not learned: as its wood usually dries" : $"{Number(rate.Factor, "0.00")} times its wood’s, from the samples so far"),
                ("begun with", run.Begun is { } begun ? $"{Number(begun.Rate.Factor, "0.00")} times its wood’s, as {begun.From.Count} earlier {(begun.From.Count == 1 ? "charge" : "charges")} taught" : "its wood’s usual rate"),
                ("air", run.Next is { IsDue: true, Kind: ChangeKind.NextStep } && run.Set is not null ? "as due now, later steps as listed" : "as set now, later steps as listed"),
                ("to know", string.Join("; ", forecast.Notes)),
            ],
        };
    }

    private static IEnumerable<Traced> Vacuum(YardState state, Charge charge, ChargeVacuum? vacuum, SeasonNow season)
    {
        if (vacuum is null || !charge.IsRunning || ChargeEnd.Of(state, charge, vacuum) is not { } end)
            yield break;

        var forecast = vacuum.Forecast;
        yield return new("Dry", DayWords.Of(end.Dry.Day(), state.Today), "", $"{vacuum.Slowest.Tag} at {Number(charge.Target.Percent, "0.#")} %, likely; {DayWords.Band(end.DryEarly.Day(), end.DryLate.Day(), state.Today)}, 8 times in 10. {end.OutWords(state.Today)}{end.LaterWords(season, charge.Tag, state.Today)}")
        {
            Method = "vacuum-drying",
            Source = "steam along the grain and radio-frequency power (Chen 1997, Siau 1984)",
            Inputs =
            [
                ("from", Percent(vacuum.From)),
                ("pressure", string.Create(CultureInfo.InvariantCulture, $"{vacuum.Chamber.Pascals / 100.0:0} mbar")),
                ("water boils at", Both(forecast.Boiling)),
                ("what sets the pace", forecast.Limit is Drying.Vacuum.VacuumLimit.Power ? "power" : "the wood’s permeability"),
                ("hours, early to late", $"{Number(vacuum.Hours.Early, "0")}, {Number(vacuum.Hours.Likely, "0")}, {Number(vacuum.Hours.Late, "0")}"),
                ("by wood and kiln alone", $"{Number(forecast.HoursP10, "0")}, {Number(forecast.HoursP50, "0")}, {Number(forecast.HoursP90, "0")}"),
                ("its own rate", vacuum.Standing is { } rated && vacuum.ByCondensate is not null ? $"{Number(rated.Rate.Factor, "0.00")} times that, {vacuum.ByWords[..1].ToLowerInvariant()}{vacuum.ByWords[1..]}" : "not learned: no condensate and no moisture read"),
                ("begun with", vacuum.Begun is { } begun ? $"{Number(begun.Rate.Factor, "0.00")} times, as {begun.From.Count} earlier {(begun.From.Count == 1 ? "charge" : "charges")} taught" : "its wood and the kiln"),
            ],
        };
        if (vacuum is { ByCondensate: { } now, Standing: { } standing })
        {
            var told = string.Join(" and ", ((string?[])[vacuum.CaughtL is { } litres ? $"{Number(litres, "0.#")} L caught from {Percent(vacuum.From)}" : null, vacuum.ReadInside > 0 ? $"{vacuum.ReadInside} {(vacuum.ReadInside == 1 ? "reading" : "readings")} in the kiln" : null]).OfType<string>());
            yield return new(vacuum.ByWords, Number(now.Percent, "0.0"), "%", $"{Number(standing.Low.Percent, "0.0")} to {Number(standing.High.Percent, "0.0")}, 8 times in 10, by {told}{(vacuum.ReadInside == 0 ? "; never stop on condensate alone" : "")}")
            {
                Method = "vacuum-drying",
                Source = "balance of the water caught with leak, hold-up and the error of the start (common practice, no source)",
                Inputs = [("water caught", vacuum.CaughtL is { } water ? Number(water, "0.#") + " L" : "not read"), ("moisture read in the kiln", vacuum.ReadInside.ToString(CultureInfo.InvariantCulture)), ("of", Number(forecast.Condensate.Kilograms, "0") + " L in all"), ("share caught", Number(standing.Caught.Percent, "0") + " %")],
            };
        }
    }

    private static Traced? Out(YardState state, Charge charge)
    {
        var read = charge.Out.Where(stack => stack.McMeanPct is not null).ToList();
        if (read.Count == 0)
            return null;

        var last = read[^1];
        return new("Came out at", Number(last.McMeanPct!.Value, "0.0"), "%", $"{last.Stack}: {(last is { McLowPct: { } low, McHighPct: { } high } ? $"{Number(low, "0.0")} to {Number(high, "0.0")}, " : "")}{last.Boards ?? 0} boards; {Number(last.Bf, "#,0")} bf")
        {
            Method = "lot-moisture",
            Source = $"unloaded {(charge.UnloadedAt is { } at ? DayWords.Of(at.Day(), state.Today) : "in part")}",
            Inputs = [("spread of boards", last.McSdPct is { } sd ? Number(sd, "0.0") + " %" : "not taken"), ("boards read", $"{last.Boards ?? 0}"), ("wanted", Percent(charge.Target))],
        };
    }

    /// <summary>The state of a charge's proof that its core was hot for long enough.</summary>
    public static Traced Treatment(Charge charge, DateOnly today)
    {
        var proof = charge.Treatments.LastOrDefault(treatment => treatment.Core.Celsius >= HeatTreatment.CoreMin.Celsius - 1e-9 && treatment.Held.Minutes >= HeatTreatment.CoreHold.Minutes - 1e-9);
        var best = proof ?? charge.Treatments.LastOrDefault();
        return new("Heat treatment", proof is null ? "not proven" : "proven", "", best is null
            ? "no core probe is on record: claim nothing"
            : string.Create(CultureInfo.InvariantCulture, $"core {best.Core.Celsius:0.#} °C for {best.Held.Hours:0.#} h on {DayWords.Of(best.At.Day(), today)}{(best.Probe is null ? "" : $", {best.Probe}")}"))
        {
            Method = "heat-treatment",
            Source = "core at 56 °C for 30 min (ISPM 15; Wood Handbook, ch. 20); marks on packaging need an accredited scheme",
            Inputs = [("asked", "56 °C in the coldest core for 30 min"), ("probes on record", charge.Treatments.Count.ToString(CultureInfo.InvariantCulture))],
        };
    }

    private static string Both(Temperature temperature) => string.Create(CultureInfo.InvariantCulture, $"{temperature.Fahrenheit:0} °F, {temperature.Celsius:0.0} °C");

    private static string Percent(MoistureContent? moisture) => moisture is { } known ? Number(known.Percent, "0.0") + " %" : "unknown";

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
