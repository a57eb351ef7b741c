using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One charge for a person: what it is, how it is, what next.</summary>
public sealed record ChargeSheet
{
    public required Charge Charge { get; init; }

    public required string Title { get; init; }

    public required string Under { get; init; }

    public required IReadOnlyList<Traced> Figures { get; init; }

    /// <summary>The schedule and what is set; no answer for a vacuum kiln or without samples.</summary>
    public required Outcome<ChargeRun> Run { get; init; }

    /// <summary>The vacuum run; no answer for an air kiln.</summary>
    public required Outcome<ChargeVacuum> Vacuum { get; init; }

    public required IReadOnlyList<SampleRow> Samples { get; init; }

    /// <summary>Days it stood still, told as a diagnosis; null when there were none.</summary>
    public ChargeStall? Stall { get; init; }

    /// <summary>The way back after a stop; null while it dries.</summary>
    public ChargeRestart? Restart { get; init; }

    /// <summary>Whether its heat treatment is proven.</summary>
    public required Traced Treatment { get; init; }

    public (string First, string Words)? Caution { get; init; }

    public required StackNext Next { get; init; }

    /// <summary>A sentence about wood lost, gaps and the like; empty when there is nothing.</summary>
    public required IReadOnlyList<string> Minds { get; init; }

    public static Outcome<ChargeSheet> Of(YardState state, string tag, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Charges.TryGetValue(tag, out var charge))
            return new Refusal("charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");

        var run = charge.IsRunning ? ChargeRun.Of(state, charge, now) : new Outcome<ChargeRun>.NoAnswer("It is out of the kiln.");
        var vacuum = ChargeVacuum.Of(state, charge);
        var rows = SampleRow.Of(charge, now);
        var stall = ChargeStall.Of(state, charge);
        var drying = (run as Outcome<ChargeRun>.Done)?.Value;
        return new ChargeSheet
        {
            Charge = charge,
            Title = $"Charge {charge.Tag} in {charge.Kiln}",
            Under = UnderTitle(state, charge),
            Figures = ChargeFigures.Of(state, charge, drying, (vacuum as Outcome<ChargeVacuum>.Done)?.Value),
            Run = run,
            Vacuum = vacuum,
            Samples = rows,
            Stall = stall,
            Restart = ChargeRestart.Of(state, charge, now),
            Treatment = ChargeFigures.Treatment(charge, state.Today),
            Caution = CautionFor(state, charge, drying, stall),
            Next = NextFor(state, charge, drying),
            Minds = [.. MindsOf(charge)],
        };
    }

    private static string UnderTitle(YardState state, Charge charge)
    {
        var woods = string.Join("; ", charge.Stacks.Select(tag => state.Stacks[tag]).Select(stack => $"{stack.Tag} {stack.Species.CommonName} {StackSheet.ThicknessWords(stack)}"));
        var days = (charge.UnloadedAt ?? state.Today.ToDateTime(TimeOnly.MinValue)).Day().DayNumber - charge.LoadedAt.Day().DayNumber + 1;
        var end = charge.UnloadedAt is { } at ? $", out {DayWords.Of(at.Day(), state.Today)}" : $", day {days}";
        return string.Create(CultureInfo.InvariantCulture, $"{woods}: {charge.FootageIn.Count:#,0} bf in on {DayWords.Of(charge.LoadedAt.Day(), state.Today)}{end}, {charge.Target.Percent:0.#} % wanted.");
    }

    private static (string First, string Words)? CautionFor(YardState state, Charge charge, ChargeRun? run, ChargeStall? stall) =>
        !charge.IsRunning ? null
        : run is { SafeRateGuards: true, Fastest: { DailyLossPct: { } loss } fastest, Safe: Outcome<Drying.SafeRate>.Done(var safe) } && loss > safe.DailyLossPercent
            ? ("Drying too fast.", string.Create(CultureInfo.InvariantCulture, $"Sample {fastest.Sample.Name} lost {loss:0.0} % a day; {safe.DailyLossPercent:0.0} % is safe for this wood while it is green. Hold the step, raise the wet bulb, look for checks now."))
        : stall is not null && stall.To >= (charge.Settings.LastOrDefault()?.At ?? DateTime.MinValue) ? ("It stands still.", stall.Says)
        : state.Kilns[charge.Kiln].Installed.Type == Book.Facts.KilnType.RadioFrequencyVacuum
            ? ("The vessel is a confined space.", "Radio frequency off, locked out and earthed, pressure equalized, a second person outside. No metal with the wood. The kiln maker’s instructions and the local rules decide.")
        : ("Never alone in a hot kiln.", "Doors secured open, fans locked out, wet bulb below 90 °F before work inside. The kiln maker’s instructions and the local rules decide.");

    private static StackNext NextFor(YardState state, Charge charge, ChargeRun? run)
    {
        if (!charge.IsRunning)
            return new("Pack it.", "It is out and dry.", "Packs", "/tally");

        var days = charge.SoundSamples.Any() ? state.Today.DayNumber - charge.SoundSamples.Max(sample => sample.Weighings[^1].At).Day().DayNumber : int.MaxValue;
        return run switch
        {
            { Set: null } => new($"Set {ChargeFigures.Bulbs(run.Next.DryBulb, run.Next.WetBulb)} °F.", $"{run.Schedule.Code} for wood at {Text(run.Controlling.Percent)} %; no setting is on record yet.", "Write the setting", $"/charges/{charge.Tag}/set"),
            { BySamples: false } => new("Cut the samples.", "Nothing tells how it dries; the readings before loading stand in.", "Write a sample", $"/charges/{charge.Tag}/sample"),
            { Next: { IsDue: true, Kind: ChangeKind.NextStep or ChangeKind.Equalize } change } => new($"Set {ChargeFigures.Bulbs(change.DryBulb, change.WetBulb)} °F.", $"{Capital(change.Calls)} is at {Text(change.At.Percent)} %.", "Write the setting", $"/charges/{charge.Tag}/set"),
            not null when charge.SampleMean <= charge.Target && charge.Wettest!.Moisture <= charge.Target => new("Test for stress, then unload.", "Driest and wettest are at the moisture wanted.", "Unload it", $"/charges/{charge.Tag}/unload"),
            not null when days >= 1 => new($"Weigh the {charge.SoundSamples.Count()} samples.", $"They were weighed {(days == 1 ? "yesterday" : $"{days} days ago")}.", "Write the weights", $"/charges/{charge.Tag}/weigh"),
            not null => new(
                $"Leave it at {ChargeFigures.Bulbs(run.Set!.DryBulb, run.Set.WetBulb)} °F, weigh again tomorrow.",
                $"{ChargeFigures.ChangeWords(run.Next)} when {run.Next.Calls} is at {Text(run.Next.At.Percent)} %{(run.Next.DueAt is { } due ? $": about {DayWords.Of(due.Day(), state.Today)}" : "")}.",
                "Write the weights", $"/charges/{charge.Tag}/weigh"),
            _ => new("Read the gauge and write it down.", "No samples can be weighed inside.", "Write the air", $"/charges/{charge.Tag}/air"),
        };
    }

    private static IEnumerable<string> MindsOf(Charge charge)
    {
        foreach (var sample in charge.Samples)
        {
            if (sample.Retired)
                yield return $"Sample {sample.Name} is retired: its wood cannot be believed any more.";
            foreach (var loss in sample.Weighings.Where(weighing => weighing.AfterDamage))
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"Sample {sample.Name} lost wood on {loss.At:d MMM}: {loss.Weight.Grams:0} g after it; its dry weight is now {sample.CalculatedDry.Grams:0.0} g.");
            }
        }

        foreach (var gap in charge.Gaps)
        {
            var lowest = gap.DryBulbLowest is { } low ? string.Create(CultureInfo.InvariantCulture, $", dry bulb down to {low.Fahrenheit:0} °F") : "";
            yield return string.Create(CultureInfo.InvariantCulture, $"{CauseWords(gap)} {gap.From:d MMM HH:mm} to {(gap.To is { } to ? to.ToString(to.Date == gap.From.Date ? "HH:mm" : "d MMM HH:mm", CultureInfo.InvariantCulture) : "now")}{lowest}. The clock of the charge stood; nothing is drawn across it.");
        }
    }

    private static string CauseWords(Gap gap) => gap.Cause switch
    {
        Book.Facts.InterruptionCause.PowerCut => "Power cut",
        Book.Facts.InterruptionCause.DoorOpen => "Door open",
        Book.Facts.InterruptionCause.HeatLost => "Heat lost",
        Book.Facts.InterruptionCause.Sensor => "Sensor out",
        _ => "Gap",
    };

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Text(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
