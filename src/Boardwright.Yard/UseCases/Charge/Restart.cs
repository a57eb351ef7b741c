using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One line of the way back.</summary>
/// <param name="Step">Which.</param>
/// <param name="Do">What to do, with this charge's own figures.</param>
/// <param name="Why">Why here in the order; empty where it needs no reason.</param>
/// <param name="Done">When it was ticked; null while it is open.</param>
public sealed record RestartLine(RestartStep Step, string Do, string Why, RestartTick? Done)
{
    /// <summary>A step that is done, in a few words.</summary>
    public static string DoneWords(RestartStep step) => step switch
    {
        RestartStep.Safe => "safe to start",
        RestartStep.Closed => "vents shut, spray off",
        RestartStep.Moving => "air or cooling water moves",
        RestartStep.Heated => "warm again, or under vacuum again",
        RestartStep.WickWet => "the wick is wet",
        RestartStep.Humid => "humidity or power on again",
        _ => "drying again",
    };
}

/// <summary>The way back of a charge whose kiln stood still: what the stop did, and the steps in their order, each ticked in the book.</summary>
/// <param name="Gap">The stop.</param>
/// <param name="Risk">What it does to this wood.</param>
/// <param name="Stood">How long it stood, up to now while it is open.</param>
/// <param name="Lines">The steps.</param>
/// <param name="Warm">Hours the coil takes to be back at the dry bulb; null where nothing tells.</param>
public sealed record ChargeRestart(Gap Gap, StopRisk Risk, Elapsed Stood, IReadOnlyList<RestartLine> Lines, Elapsed? Warm)
{
    private static readonly TimeSpan Forgotten = TimeSpan.FromDays(3);

    /// <summary>The step that is next; null when all are done.</summary>
    public RestartLine? Next => Lines.FirstOrDefault(line => line.Done is null);

    /// <summary>The way back of a charge; null when it dries, or somebody ran it on since: set it, or weighed it.</summary>
    public static ChargeRestart? Of(YardState state, Charge charge, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        if (!charge.IsRunning || charge.Gaps.Where(gap => gap.Cause != InterruptionCause.Sensor).MaxBy(gap => gap.From) is not { } gap || IsOver(charge, gap, now))
            return null;

        var ticks = charge.Restarts.Where(tick => tick.At >= gap.From).ToList();
        var order = IsVacuum(state, charge) ? KilnRestart.OfVacuum : KilnRestart.OfAir;
        var wood = state.Stacks[charge.Stacks[0]];
        var moisture = SampleTrend.WettestHalf([.. charge.SoundSamples.Select(sample => sample.Moisture)]) ?? charge.Stacks.Max(tag => state.Stacks[tag].Moisture?.Mean) ?? MoistureContent.FromPercent(100.0);
        var stood = Elapsed.FromSeconds(Math.Max(0.0, ((gap.To ?? now) - gap.From).TotalSeconds));
        var risk = charge.Stacks.Select(tag => StopRisk.Of(state.Stacks[tag].Species, moisture, stood)).MaxBy(one => one.Danger) ?? StopRisk.Of(wood.Species, moisture, stood);
        return new(gap, risk, stood, [.. order.Select(step => Line(state, charge, step, ticks.LastOrDefault(tick => tick.Step == step)))], Warming(state, charge, gap, now));
    }

    /// <summary>Ticks a step; refused out of its order.</summary>
    public static Outcome<IReadOnlyList<Entry>> Tick(YardBook book, string tag, string? step, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Charges.TryGetValue(tag, out var charge))
            return new Refusal("Charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");

        var who = read.By(state, by);
        var next = Of(state, charge, book.Now)?.Next;
        if (next is null)
            read.Refuse("Step", step, $"a charge that was interrupted and is not back yet; {tag} dries");
        else if (!Enum.TryParse<RestartStep>(step, out var given) || given != next.Step)
            read.Refuse("Step", step, $"the next one: {next.Do} Heat comes before spray");
        else if (next.Step == RestartStep.Heated && NoHeat(state, charge))
            read.Refuse("Step", RestartLine.DoneWords(next.Step), $"a boiler that runs: {Boilers(state)} in the book; write under Boiler that it works again");
        return read.Then(() => key.Write(book, who, new RestartStepDone(tag, next!.Step)));
    }

    // A kiln heated by water has none while every boiler is down.
    private static bool NoHeat(YardState state, Charge charge) =>
        state.Kilns[charge.Kiln].Installed.HeatAtWaterC is not null && state.Boilers.Count > 0 && state.Boilers.Values.All(boiler => boiler.Down is not null);

    private static string Boilers(YardState state) => $"{string.Join(" and ", state.Boilers.Keys)} {(state.Boilers.Count == 1 ? "is" : "are")} down";

    // Whoever set it or weighed it after the stop has run it on; a stop of days ago that nobody ticked is no longer asked about.
    private static bool IsOver(Charge charge, Gap gap, DateTime now) => charge.Restarts.Any(tick => tick.Step == RestartStep.Resumed && tick.At >= gap.From)
        || (gap.To is { } end && (now - end > Forgotten || charge.Settings.Any(setting => setting.At > end) || charge.Samples.Any(sample => sample.Weighings.Any(weighing => weighing.At > end))));

    private static bool IsVacuum(YardState state, Charge charge) => state.Kilns[charge.Kiln].Installed.Type == KilnType.RadioFrequencyVacuum;

    private static RestartLine Line(YardState state, Charge charge, RestartStep step, RestartTick? done)
    {
        var (act, why) = IsVacuum(state, charge) ? VacuumWords(charge, step) : AirWords(state, charge, step);
        return new(step, act, why, done);
    }

    private static (string Do, string Why) AirWords(YardState state, Charge charge, RestartStep step)
    {
        var set = charge.Settings.LastOrDefault();
        var humidity = state.Kilns[charge.Kiln].Installed.Type == KilnType.Dehumidification ? "compressor" : "spray and vents";
        var before = set is null ? "the dry bulb of its step" : Fahrenheit(set.DryBulb);
        return step switch
        {
            RestartStep.Safe => ("Look: nobody inside, doors shut, power whole on every wire.", "A door left open goes on cooling it; a fan on two wires burns."),
            RestartStep.Closed => ($"Shut the vents, {humidity} off.", "Water on cold wood wets open checks and deepens them."),
            RestartStep.Moving => ("Fans on, and the right way round.", "Heat without moving air cooks one side."),
            RestartStep.Heated when NoHeat(state, charge) => ($"Wait for a boiler, then heat to {before}, nothing else yet.", $"{Boilers(state)} in the book. Leave doors and vents shut till then; heat before spray."),
            RestartStep.Heated => ($"Heat to {before}, nothing else yet.", "Heat before spray."),
            RestartStep.WickWet => ("Wet the wick, water in its trough; the wet bulb reads below the dry one.", "A wick that dried in the stop tells of air that is not there."),
            RestartStep.Humid => ($"Now {humidity} on again{(set is null ? "" : $", wet bulb {Fahrenheit(set.WetBulb)}")}.", ""),
            _ => ($"Drying again at {(set is null ? "the step it had" : $"{ChargeFigures.Bulbs(set.DryBulb, set.WetBulb)} °F")}: hold that step until the next weighing.", "The clock goes on from here; the gap stays a gap."),
        };
    }

    private static (string Do, string Why) VacuumWords(Charge charge, RestartStep step) => step switch
    {
        RestartStep.Safe => ("Radio frequency off and locked out; read the pressure on two gauges.", "Nobody leans on the door of a vessel whose pressure is not known."),
        RestartStep.Moving => ("Cooling water runs through the condenser.", "A warm condenser lets the pressure rise."),
        RestartStep.Heated => ($"Pump down to {(charge.Gauges.LastOrDefault(gauge => gauge.Pressure is not null)?.Pressure is { } held ? $"{held.Millibars.ToString("0", CultureInfo.InvariantCulture)} mbar, as it was held" : "the pressure it was held at")}.", "Pressure first: warm wood at rising pressure does not dry."),
        RestartStep.Humid => ("Radio frequency on at low power; up when core and surface agree within 10 °C.", "The core kept its heat, the surface did not."),
        _ => ("Drying again: write the condensate as it stands.", "The clock goes on from here; the gap stays a gap."),
    };

    // What the coil gives beyond the walls warms wood, water and structure from the lowest dry bulb.
    private static Elapsed? Warming(YardState state, Charge charge, Gap gap, DateTime now)
    {
        var kiln = state.Kilns[charge.Kiln];
        if (charge.Settings.LastOrDefault() is not { } set || KilnBody.Of(state, charge) is not { } body)
            return null;
        var outside = Temperature.FromCelsius(YardHeat.Outside(state, now.Day())?.Celsius ?? 0.0);
        var low = gap.DryBulbLowest ?? body.Inertia.After(Elapsed.FromSeconds(Math.Max(0.0, ((gap.To ?? now) - gap.From).TotalSeconds)), set.DryBulb, outside);
        return body.Inertia.Until(set.DryBulb, low, outside, Power.FromKilowatts(kiln.Installed.HeatKw));
    }

    private static string Fahrenheit(Temperature temperature) => string.Create(CultureInfo.InvariantCulture, $"{temperature.Fahrenheit:0} °F");
}
