using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A log of the book under the house's rules and settings: scale, weight, worth, price by source, days left.</summary>
public static class YardLog
{
    private const double UsualMeanC = 10.0;
    private static readonly string[] SourceLetters = ["s", "w", "y"];

    /// <summary>By International 1/4 in, on the scaling diameter and length without trim.</summary>
    public static Outcome<ScaledLog> Scale(Log log, LogRule rule = LogRule.InternationalQuarter)
    {
        ArgumentNullException.ThrowIfNull(log);
        return LogScale.Of(rule, new MeasuredLog(log.ScalingDiameter, log.ScaleLength) { LargeEnd = log.LargeEnd > log.ScalingDiameter ? log.LargeEnd : null });
    }

    /// <summary>Green wood without bark, over the whole length.</summary>
    public static Outcome<Mass> Weight(Log log) =>
        Solid(log).Then(volume => LogWeight.OfWood(log.Species, volume));

    /// <summary>The log by every rule, less what the intake noted, with the overrun of what logs of its wood give here.</summary>
    public static ((double Likely, double Low, double High) Sawn, IReadOnlyList<RuleComparison> Rules) Rules(YardState state, Log log)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(log);
        var (scale, next) = (Scale(log) is Outcome<ScaledLog>.Done({ GrossUnrounded: { } bf }) ? bf : 0.0, LogYield.Next(state, log.Species.CommonName));
        var (sawn, sweep, rot) = ((scale * next.Ratio, scale * next.Low, scale * next.High), LogNoted.Sweep(log), LogNoted.HeartRot(log));
        return (sawn, RuleComparison.Of(
            Measured(log, log.ScaleLength) with
            {
                Sweep = sweep.Metres > 0.0 ? sweep : null,
                Defects = [.. rot.Metres > 0.0 ? [new LogDefect.InteriorRot(rot, rot, log.ScaleLength)] : Array.Empty<LogDefect>(), .. LostToSplits(log) is { Metres: > 0.0 } lost ? [new LogDefect.LostLength(lost)] : Array.Empty<LogDefect>()],
            },
            scale > 0.0 ? sawn : null));
    }

    /// <summary>Green wood over the whole length; null where the ends were not measured.</summary>
    public static Volume? Volume(Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return Solid(log) is Outcome<Volume>.Done(var volume) ? volume : null;
    }

    /// <summary>Which formula its solid wood is worked out by: between measured radii, by Newton with a middle diameter, else by Smalian.</summary>
    public static string SolidBy(Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.Radii.Count > 0 ? $"its radii, measured at {log.Radii.Count} places (entry {log.RadiiEntry})" : log.Seen.MidDibMm is null ? "Smalian's formula" : "Newton's formula, with the middle";
    }

    private static Outcome<Volume> Solid(Log log) => log.Radii.Count > 0
        ? LogShapes.Measured(log.Radii).Then<Volume>(shape => shape.Volume)
        : LogScale.Of(log.Seen.MidDibMm is null ? LogRule.Smalian : LogRule.Newton, Measured(log, log.ActualLength)).Then<Volume>(scaled => scaled.Volume);

    private static MeasuredLog Measured(Log log, Length length) => new(log.ScalingDiameter, length)
    {
        LargeEnd = log.LargeEnd > log.ScalingDiameter ? log.LargeEnd : null,
        Middle = log.Seen.MidDibMm is { } mid ? Length.FromMillimetres(mid) : null,
    };

    // Ends split beyond the trim hold no lumber.
    private static Length LostToSplits(Log log) => Length.FromMetres(Math.Max(0.0, (log.Seen.SplitSmallEndM ?? 0.0) + (log.Seen.SplitLargeEndM ?? 0.0) - (log.ActualLength - log.ScaleLength).Metres));

    /// <summary>Worth before profit where it lies: nothing of hauling. Refused while the species is not proven or has no price.</summary>
    public static Outcome<LogWorth> Worth(YardState state, Log log)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!log.Proven)
            return new Outcome<LogWorth>.NoAnswer("No price while the species is not proven.");
        if (DryPrice(state, log.Species.CommonName) is not { } price)
            return new Outcome<LogWorth>.NoAnswer($"No price of {log.Species.CommonName} is set.");

        var strikes = log.MetalScan switch
        {
            MetalScan.Clear => "strikes_clear",
            MetalScan.HitsDugOut => "strikes_hit_dug_out",
            MetalScan.FenceLineNotScanned => "strikes_fence_line",
            _ when log.Seen.MetalMarks => "strikes_fence_line",
            _ => "strikes_not_scanned",
        };
        return Scale(log).Then<LogWorth>(scaled => new LogWorth(
            BoardFeet.From(scaled.GrossUnrounded!.Value), LogYield.SoldPerScale(state, log.Species.CommonName).Likely, price, Costs(state).Sum(cost => cost.Money),
            0.0, state.Setting(strikes) ?? 0.0, state.Setting("metal_strike") ?? 0.0));
    }

    /// <summary>A tree offered on the telephone, with its haul: miles both ways at a rate, and hours.</summary>
    public static Outcome<LogWorth> Offered(YardState state, string species, Length smallEnd, Length length, double roadMiles, double hours, string strikes) =>
        DryPrice(state, species) is not { } price
            ? new Outcome<LogWorth>.NoAnswer($"No price of {species} is set.")
            : LogScale.Of(LogRule.InternationalQuarter, new MeasuredLog(smallEnd, length)).Then<LogWorth>(scaled => new LogWorth(
                BoardFeet.From(scaled.GrossUnrounded!.Value), LogYield.SoldPerScale(state, species).Likely, price, Costs(state).Sum(cost => cost.Money),
                (2.0 * roadMiles * (state.Setting("haul_per_mile") ?? 0.0)) + (hours * (state.Setting("haul_per_hour") ?? 0.0)), state.Setting(strikes) ?? 0.0, state.Setting("metal_strike") ?? 0.0));

    /// <summary>What a dry board foot costs from the log to the buyer, term by term.</summary>
    public static IReadOnlyList<(string What, double Money)> Costs(YardState state) =>
        [.. new[]
        {
            ("sawing", "custom_sawing"), ("air drying", "custom_air_drying"), ("kiln", "custom_kiln_drying_to_5_4"), ("log yard and loader", "log_yard_and_loader"),
            ("end coat and lost in drying", "end_coat_and_lost_in_drying"), ("tally, packing, storage", "tally_packing_storage"), ("office, selling, insurance", "office_selling_insurance"),
        }.Select(term => (term.Item1, state.Setting(term.Item2) ?? 0.0))];

    /// <summary>Dry 4/4, No. 1 Common and better: the house's own price, or its share of the graded ones; null without prices.</summary>
    public static double? DryPrice(YardState state, string species)
    {
        if (OfSpecies(state, "dry_4_4_1c_and_better_", species) is { } own)
            return own;
        if (state.Prices.GetValueOrDefault(species) is not { } priced)
            return null;
        var fas = (state.Setting("no_1_common_and_better_fas_share") ?? 40.0) / 100.0;
        return (fas * (double)priced.DryFasMoney) + ((1.0 - fas) * (double)priced.Dry1cMoney);
    }

    /// <summary>What the house pays for a log by where it came from: so much a log, or so much a board foot of International scale to the nearest 5.</summary>
    public static decimal PriceBySource(YardState state, Log log)
    {
        var letter = log.Source.Length > 0 ? char.ToLowerInvariant(log.Source[0]).ToString() : "";
        if (state.Setting($"log_price_unloading_{letter}") is { } each)
            return (decimal)each;
        if (!SourceLetters.Contains(letter) || Scale(log) is not Outcome<ScaledLog>.Done(var scaled))
            return 0m;
        var perBf = OfSpecies(state, $"log_price_{letter}_", log.Species.CommonName) ?? state.Setting($"log_price_{letter}") ?? 0.0;
        return (decimal)perBf * (decimal)scaled.Gross!.Value.Count;
    }

    /// <summary>Days before the first damage at the mean outside air since felling (or since it came in), and that mean; null where none is expected.</summary>
    public static (DamageClock Clock, int Since, double MeanC)? DaysLeft(YardState state, Log log)
    {
        if (log.Species.StainGroup is not { } group || !state.DamageDays.TryGetValue(group, out var table))
            return null;

        var from = log.FelledOn ?? DateOnly.FromDateTime(log.ReceivedAt);
        var since = Math.Max(0, state.Today.DayNumber - from.DayNumber);
        var mean = Enumerable.Range(0, Math.Max(1, since)).Select(from.AddDays).Average(day => state.Weather.GetValueOrDefault(day)?.MeanC ?? state.Normals.GetValueOrDefault(day.Month)?.MeanC ?? UsualMeanC);
        var limits = DamageClock.Band(Temperature.FromCelsius(mean), Limits(table.Below4C), Limits(table.From4To15C), Limits(table.Above15C));
        return DamageClock.First(limits, since, log.EndCoated) is { } clock ? (clock, since, mean) : null;
    }

    /// <summary>Damage in words.</summary>
    public static string Words(LogDamage damage) => damage switch
    {
        LogDamage.Stain => "Stain",
        LogDamage.Borers => "Borers",
        _ => "End checks",
    };

    /// <summary>A setting of a species; the house writes basswood and sycamore without "American".</summary>
    internal static double? OfSpecies(YardState state, string setting, string species) =>
        state.Setting(setting + Key(species)) ?? (species.StartsWith("American ", StringComparison.OrdinalIgnoreCase) ? state.Setting(setting + Key(species["American ".Length..])) : null);

    private static string Key(string species) => species.Replace(' ', '_').Replace('-', '_').ToLower(CultureInfo.InvariantCulture);

    private static DamageLimits Limits(DamageDays days) => new(days.StainDays, days.BorerDays, days.EndCheckDays);
}
