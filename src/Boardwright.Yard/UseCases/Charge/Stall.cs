using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Days in which a charge stood still, told as a diagnosis.</summary>
/// <param name="Stall">The two equilibria and the cause.</param>
/// <param name="From">First reading of the standing days.</param>
/// <param name="To">Last one.</param>
/// <param name="Set">What the controller was set to.</param>
/// <param name="Found">What was read beside the load; null where nobody read it.</param>
/// <param name="Figures">Wood, air set, air found.</param>
/// <param name="After">What was written beside gauges in the days after it.</param>
public sealed record ChargeStall(KilnStall Stall, DateTime From, DateTime To, Setting Set, Gauge? Found, IReadOnlyList<Traced> Figures, IReadOnlyList<(DateTime At, string Note)> After)
{
    private const int HoursAround = 36;
    private const int DaysAfter = 5;

    /// <summary>The meter reading it rests on; null where samples were weighed.</summary>
    public MoistureReading? ByMeter { get; init; }

    /// <summary>What it is, in a sentence.</summary>
    public string Says => Stall.Cause switch
    {
        StallCause.AirWetterThanSet => "The wood has reached the air it is in, and that air is wetter than it was set.",
        StallCause.ReachedSetAir => "The wood has reached the air that is set: this step is at its end.",
        StallCause.WoodSlowOrReadingWrong => "The air would take it further: the wood is slow, or the reading is wrong.",
        StallCause.WickDry => "Wet bulb and dry bulb read alike: the wick is dry, and nothing is known of the air.",
        _ => "The air that is set would take it further; nobody has read the air beside the load.",
    };

    /// <summary>What to do about it.</summary>
    public string Do => Stall.Cause switch
    {
        StallCause.AirWetterThanSet => "Look for water that comes in or cannot get out: a dripping mist or spray valve, a leaking coil, vents that stick. Then hold the controller’s bulbs against the hand bulb.",
        StallCause.ReachedSetAir => "Set the next step, or equalize if the driest sample is there.",
        StallCause.WoodSlowOrReadingWrong => "Weigh a sample or cut an oven section before changing anything. Pins in hot wood are uncertain by 2 %.",
        StallCause.WickDry => "Wet or change the wick, wait until it reads, and freeze the setting until then.",
        _ => "Read a hand bulb with a clean wick beside the load.",
    };

    /// <summary>The last standing days of a charge; null when it dried all the time.</summary>
    public static ChargeStall? Of(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        var readings = Readings(state, charge);
        for (var last = readings.Count - 1; last > 0; last--)
        {
            for (var first = 0; first < last; first++)
            {
                var stretch = readings[first..(last + 1)];
                if (KilnStall.Stands([.. stretch.Select(reading => (Elapsed.FromSeconds((reading.At - charge.LoadedAt).TotalSeconds), reading.Moisture))]))
                    return Diagnosed(charge, stretch);
            }
        }

        return null;
    }

    /// <summary>What may hold a charge up, by all that was read of it; empty for one that is out or of which nothing is known.</summary>
    public static IReadOnlyList<StallCheck> Checks(Charge charge, ChargeRun? run, ChargeStall? stall)
    {
        ArgumentNullException.ThrowIfNull(charge);
        if (stall is null && run is null)
            return [];

        var set = stall?.Set ?? run?.Set;
        var found = stall is not null ? stall.Found : charge.Gauges.LastOrDefault(gauge => gauge is { DryBulb: not null, WetBulb: not null } && gauge.At >= (set?.At ?? DateTime.MinValue));
        var sound = found is { WickInDoubt: false };
        return StallCheck.Of(new(stall?.Stall.Wood ?? run!.Mean, charge.Target, set is null ? null : ChargeRun.EmcOf(set.DryBulb, set.WetBulb))
        {
            EmcFound = sound ? ChargeRun.EmcOf(found!.DryBulb!.Value, found.WetBulb!.Value) : null,
            DryBulbs = set is not null && found?.DryBulb is { } dry ? (set.DryBulb, dry) : null,
            WickDry = found is { WickInDoubt: true },
            MeterIn = stall?.ByMeter?.Wood,
            SpeciesUnknown = stall?.ByMeter is { SpeciesUnknown: true },
        });
    }

    private static ChargeStall? Diagnosed(Charge charge, List<(DateTime At, MoistureContent Moisture, MoistureReading? Meter)> stretch)
    {
        var (from, to) = (stretch[0].At, stretch[^1].At);
        if (charge.Settings.LastOrDefault(setting => setting.At <= to) is not { } set || ChargeRun.EmcOf(set.DryBulb, set.WetBulb) is not { } emcSet)
            return null;

        var found = charge.Gauges.Where(gauge => gauge is { DryBulb: not null, WetBulb: not null } && gauge.At >= from.AddHours(-HoursAround) && gauge.At <= to.AddHours(HoursAround))
            .MinBy(gauge => Math.Abs((gauge.At - to).TotalHours));
        var emcFound = found is null ? null : ChargeRun.EmcOf(found.DryBulb!.Value, found.WetBulb!.Value);
        var wickDry = found is not null && found.WetBulb >= found.DryBulb;
        var wood = stretch[^1].Moisture;
        var stall = KilnStall.Diagnose(wood, emcSet, emcFound, wickDry);
        List<Traced> figures = [Wood(stretch, wood), Air("Air as set", set.DryBulb, set.WetBulb, emcSet, $"set on {set.At.ToString("d MMM", CultureInfo.InvariantCulture)}")];
        if (found is not null && emcFound is { } emc)
            figures.Add(Air("Air as found", found.DryBulb!.Value, found.WetBulb!.Value, emc, $"{found.At.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)}{(found.Note is null ? "" : $": {found.Note}")}"));
        var after = charge.Gauges.Where(gauge => gauge != found && gauge.At > to && gauge.At < to.AddDays(DaysAfter) && gauge.Note is not null).Select(gauge => (gauge.At, gauge.Note!));
        return new(stall, from, to, set, found, figures, [.. after]) { ByMeter = stretch[^1].Meter };
    }

    private static Traced Wood(List<(DateTime At, MoistureContent Moisture, MoistureReading? Meter)> stretch, MoistureContent wood)
    {
        var meter = stretch[^1].Meter;
        var read = meter is { Raw: { } raw, Wood: { } at } ? string.Create(CultureInfo.InvariantCulture, $"read {raw.Percent:0.0} in wood at {at.Fahrenheit:0} °F") : "mean of the samples";
        return new("Wood stands at", wood.Percent.ToString("0.0", CultureInfo.InvariantCulture), "%", $"{read}; {stretch.Count} readings from {stretch[0].At.ToString("d MMM", CultureInfo.InvariantCulture)} to {stretch[^1].At.ToString("d MMM", CultureInfo.InvariantCulture)}")
        {
            Method = meter is null ? "moisture-content" : "moisture-meter",
            Source = "up to 1 % for each 20 °F from 70 °F (Conners, FOR-128)",
            Inputs = [.. stretch.Select(reading => (reading.At.ToString("d MMM HH:mm", CultureInfo.InvariantCulture), reading.Moisture.Percent.ToString("0.0", CultureInfo.InvariantCulture) + " %"))],
        };
    }

    /// <summary>Air by its bulbs and what it holds wood at.</summary>
    public static Traced Air(string label, Temperature dryBulb, Temperature wetBulb, MoistureContent emc, string basis) =>
        new(label, emc.Percent.ToString("0.0", CultureInfo.InvariantCulture), "%", string.Create(CultureInfo.InvariantCulture, $"{dryBulb.Fahrenheit:0} / {wetBulb.Fahrenheit:0} °F holds it there; {basis}"))
        {
            Method = "emc",
            Source = "ASHRAE Fundamentals, ch. 1; Wood Handbook, FPL-GTR-282, eq. 4-5",
            Inputs =
            [
                ("dry bulb", string.Create(CultureInfo.InvariantCulture, $"{dryBulb.Fahrenheit:0} °F, {dryBulb.Celsius:0.0} °C")),
                ("wet bulb", string.Create(CultureInfo.InvariantCulture, $"{wetBulb.Fahrenheit:0} °F, {wetBulb.Celsius:0.0} °C")),
                ("pressure", "sea level"),
            ],
        };

    // Meter readings made in the kiln, and the mean of the samples at each round.
    private static List<(DateTime At, MoistureContent Moisture, MoistureReading? Meter)> Readings(YardState state, Charge charge)
    {
        var meter = charge.Stacks.SelectMany(tag => state.Stacks[tag].Readings)
            .Where(reading => reading is { Raw: not null, Mean: not null } && reading.At > charge.LoadedAt && (charge.UnloadedAt is null || reading.At < charge.UnloadedAt))
            .OrderBy(reading => reading.At).Select(reading => (reading.At, reading.Mean!.Value, (MoistureReading?)reading)).ToList();
        if (meter.Count > 0)
            return meter;

        var sound = charge.SoundSamples.ToList();
        return [.. sound.SelectMany(sample => sample.Weighings.Skip(1)).Where(weighing => !weighing.AfterDamage).GroupBy(weighing => weighing.At.Day()).Where(round => round.Count() == sound.Count).OrderBy(round => round.Key)
            .Select(round => (round.Max(weighing => weighing.At), MoistureContent.FromFraction(round.Average(weighing => weighing.Moisture.Fraction)), (MoistureReading?)null))];
    }
}
