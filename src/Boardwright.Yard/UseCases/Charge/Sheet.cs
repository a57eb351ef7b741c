using System.Globalization;
using Boardwright.Drying;
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

    /// <summary>May it come out; null under vacuum or without samples.</summary>
    public ChargeVerdict? Verdict { get; init; }

    /// <summary>The samples' losses against what is safe for each.</summary>
    public required IReadOnlyList<SampleSafety> Safety { get; init; }

    /// <summary>Steps that would dry its boards faster than is safe; no answer without a run, or where nothing is printed for its woods.</summary>
    public required Outcome<StepRisk> StepRisk { get; init; }

    /// <summary>What may hold it up, in the order to test it; empty for a charge that is out.</summary>
    public required IReadOnlyList<StallCheck> Checks { get; init; }

    /// <summary>Whether its heat treatment is proven.</summary>
    public required Traced Treatment { get; init; }

    /// <summary>Plan, probe and verdict of a heat treatment an order asks for; null where none does and no core was written.</summary>
    public ChargeHeat? Heat { get; init; }

    public (string First, string Words)? Caution { get; init; }

    public required StackNext Next { get; init; }

    /// <summary>A sentence about wood lost, gaps and the like; empty when there is nothing.</summary>
    public required IReadOnlyList<string> Minds { get; init; }

    /// <summary>Open orders that wait for its wood, the first due first.</summary>
    public required IReadOnlyList<Order> Orders { get; init; }

    /// <param name="state">The yard.</param>
    /// <param name="tag">The charge.</param>
    /// <param name="now">The time.</param>
    /// <param name="season">The season's plan; null where nobody asks for it.</param>
    public static Outcome<ChargeSheet> Of(YardState state, string tag, DateTime now, SeasonNow? season = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Charges.TryGetValue(tag, out var charge))
            return new Refusal("charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");

        var run = charge.IsRunning ? ChargeRun.Of(state, charge, now) : new Outcome<ChargeRun>.NoAnswer("It is out of the kiln.");
        var vacuum = ChargeVacuum.Of(state, charge);
        var rows = SampleRow.Of(charge, now);
        var stall = ChargeStall.Of(state, charge);
        var drying = (run as Outcome<ChargeRun>.Done)?.Value;
        var safety = SampleSafety.Of(state, charge, rows);
        var verdict = ChargeVerdict.Of(state, charge, drying, now);
        return new ChargeSheet
        {
            Charge = charge,
            Title = $"Charge {charge.Tag} in {charge.Kiln}",
            Under = UnderTitle(state, charge),
            Figures = ChargeFigures.Of(state, charge, drying, (vacuum as Outcome<ChargeVacuum>.Done)?.Value, season ?? SeasonNow.NotAsked),
            Run = run,
            Vacuum = vacuum,
            Samples = rows,
            Stall = stall,
            Restart = ChargeRestart.Of(state, charge, now),
            Verdict = verdict,
            Safety = safety,
            StepRisk = drying is null ? new Outcome<StepRisk>.NoAnswer("It follows no schedule of air.") : UseCases.StepRisk.Of(state, charge, drying),
            Checks = ChargeStall.Checks(charge, drying, stall),
            Treatment = ChargeFigures.Treatment(charge, state.Today),
            Heat = ChargeHeat.Of(state, charge, drying),
            Caution = CautionFor(state, charge, safety, stall),
            Next = NextFor(state, charge, drying, verdict),
            Orders = OrdersOf(state, charge),
            Minds = [.. StackRedry.IsRedry(state, charge) ? [RedryMind] : Array.Empty<string>(), .. MindsOf(charge, state.Today), .. Unsampled(state, charge)],
        };
    }

    // Orders that name a stack of it, and those a stack of it is kept for.
    private static IReadOnlyList<Order> OrdersOf(YardState state, Charge charge) => [.. state.Orders.Values
        .Where(order => order.IsOpen && charge.StacksInside.Any(tag => state.Stacks[tag].ReservedFor == order.Tag || order.Lines.Any(line => !line.IsFilled && line.Asked.Stacks.Contains(tag)))).OrderBy(order => order.DueOn)];

    private static string UnderTitle(YardState state, Charge charge)
    {
        var woods = string.Join("; ", charge.Stacks.Select(tag => state.Stacks[tag]).Select(stack => $"{stack.Tag} {stack.Species.CommonName} {StackSheet.ThicknessWords(stack)}"));
        var days = (charge.UnloadedAt ?? state.Today.ToDateTime(TimeOnly.MinValue)).Day().DayNumber - charge.LoadedAt.Day().DayNumber + 1;
        var end = charge.UnloadedAt is { } at ? $", out {DayWords.Of(at.Day(), state.Today)}" : $", day {days}";
        return string.Create(CultureInfo.InvariantCulture, $"{woods}: {charge.FootageIn.Count:#,0} bf in on {DayWords.Of(charge.LoadedAt.Day(), state.Today)}{end}, {charge.Target.Percent:0.#} % wanted.");
    }

    private static (string First, string Words)? CautionFor(YardState state, Charge charge, IReadOnlyList<SampleSafety> safety, ChargeStall? stall) =>
        !charge.IsRunning ? null
        : ChargeRun.FrozenBy(charge) is { } frozen ? ("Leave the setting.", $"{Capital(frozen)}; nothing is known of the air until it is wet and read again.")
        : safety.Where(one => one is { TooFast: true, Row.Sample.Retired: false }).MaxBy(one => one.Times) is { } fast
            ? ("Drying too fast.", string.Create(CultureInfo.InvariantCulture, $"Sample {fast.Row.Sample.Name} lost {fast.Row.DailyLossPct:0.0} % a day; {fast.SafeWords} % is safe for {fast.Species.CommonName} this thick while it is green. Hold the step, raise the wet bulb, look for checks now: at this rate it is in danger for {fast.HoursInDanger:0} h more."))
        : charge.Stacks.Select(tag => LoadInTheWay.Closed(state, state.Kilns[charge.Kiln], state.Stacks[tag])).FirstOrDefault(words => words is not null) is { } closed
            ? ("Loaded against its wood.", $"{closed}. Vapour leaves it by its faces alone: expect it slow and wet inside, go by a board cut through, not by the days told here.")
        : stall is not null && stall.To >= (charge.Settings.LastOrDefault()?.At ?? DateTime.MinValue) ? ("It stands still.", stall.Says)
        : state.Kilns[charge.Kiln].Installed.Type == Book.Facts.KilnType.RadioFrequencyVacuum
            ? ("The vessel is a confined space.", "Radio frequency off, locked out and earthed, pressure equalized, a second person outside. No metal with the wood. The kiln maker’s instructions and the local rules decide.")
        : ("Never alone in a hot kiln.", "Doors secured open, fans locked out, wet bulb below 90 °F before work inside. The kiln maker’s instructions and the local rules decide.");

    private static StackNext NextFor(YardState state, Charge charge, ChargeRun? run, ChargeVerdict? verdict)
    {
        if (!charge.IsRunning)
            return new("Pack it.", "It is out and dry.", "Packs", "/tally");

        var (last, again) = (WeighingRhythm.Last(charge), WeighingRhythm.Next(charge));
        return run switch
        {
            { Frozen: { } why } => new("Wet or change the wick, leave the setting as it is.", $"{Capital(why)}. {WouldBe(state, run)}", "Read both bulbs", $"/charges/{charge.Tag}/air"),
            { Set: null } => new($"Set {ChargeFigures.Bulbs(run.Next.DryBulb, run.Next.WetBulb)} °F.", $"{run.Schedule.Name} for wood at {Text(run.Controlling.Percent)} %; no setting is on record yet.", "Write the setting", $"/charges/{charge.Tag}/set"),
            { BySamples: false } when SampleRecut.Of(charge) is [var recut, ..] => new($"Cut a sample in place of {recut.Retired.Name}.", $"It was retired: its wood cannot be believed any more. {recut.Where}", "Write the new sample", $"/charges/{charge.Tag}/sample?instead={recut.Retired.Name}"),
            { BySamples: false } => new("Cut the samples.", "Nothing tells how it dries; the readings before loading stand in.", "Write a sample", $"/charges/{charge.Tag}/sample"),
            { Next: { IsDue: true, Kind: ChangeKind.NextStep or ChangeKind.Equalize } change } => new($"Set {ChargeFigures.Bulbs(change.DryBulb, change.WetBulb)} °F.", $"{Capital(change.CallsWords)}.", "Write the setting", $"/charges/{charge.Tag}/set"),
            not null when verdict is { Step: PullStep.Pull } => new("Unload it.", verdict.Says, "Unload it", $"/charges/{charge.Tag}/unload"),
            not null when verdict is { Step: PullStep.Test } => new(verdict.Do, verdict.Says, "Write the stress test", $"/charges/{charge.Tag}/stress"),
            not null when verdict is { Step: PullStep.Condition } && charge.StressTests.Count > 0 => new(verdict.Do, verdict.Says, "Write the setting", $"/charges/{charge.Tag}/set"),
            not null when SampleRecut.Of(charge) is [var recut, ..] => new($"Cut a sample in place of {recut.Retired.Name}.", $"It was retired: its wood cannot be believed any more. {recut.Where}", "Write the new sample", $"/charges/{charge.Tag}/sample?instead={recut.Retired.Name}"),
            not null when again <= state.Today => new($"Weigh the {charge.SoundSamples.Count()} samples.", $"They were weighed {(state.Today.DayNumber - last!.Value.DayNumber is var days && days == 1 ? "yesterday" : $"{days} days ago")}.", "Write the weights", $"/charges/{charge.Tag}/weigh"),
            not null => new(
                $"Leave it at {ChargeFigures.Bulbs(run.Set!.DryBulb, run.Set.WetBulb)} °F, weigh again {(again == state.Today.AddDays(1) ? "tomorrow" : again?.ToString("'on' ddd d MMM", CultureInfo.InvariantCulture))}.",
                $"{Beside(run)}{ChargeFigures.ChangeWords(run.Next)} when {run.Next.CallsWords}{(run.Next.DueAt is { } due ? $": about {DayWords.Of(due.Day(), state.Today)}" : "")}.",
                "Write the weights", $"/charges/{charge.Tag}/weigh"),
            _ => new("Read the gauge and write it down.", "No samples can be weighed inside.", "Write the air", $"/charges/{charge.Tag}/air"),
        };
    }

    private static string Beside(ChargeRun run) => (run.Equalizing, run.BesideSchedule) switch
    {
        ({ IsOn: true } equalizing, var beside) => $"The air that is set is that of equalizing at {Text(equalizing.Finish.EqualizeEmc.Percent)} %: it has begun{beside}. ",
        ({ DriestThere: null }, _) when run.Next is { Kind: ChangeKind.Equalize, IsDue: false } => $"{run.TooMoistWords} ",
        (_, { Length: > 2 } beside) => $"That is {beside[2..]}; set that if it shall go faster. ",
        _ => "",
    };

    // What would have been done had the bulbs been sound, so that nobody wonders.
    private static string WouldBe(YardState state, ChargeRun run) => run.Next.IsDue
        ? $"With a sound wick it would be: set {ChargeFigures.Bulbs(run.Next.DryBulb, run.Next.WetBulb)} °F, {run.Next.CallsWords}."
        : $"With a sound wick: leave it, {ChargeFigures.Bulbs(run.Next.DryBulb, run.Next.WetBulb)} °F comes when {run.Next.CallsWords}{(run.Next.DueAt is { } due ? $", about {DayWords.Of(due.Day(), state.Today)}" : "")}.";

    private const string RedryMind = "A redry: this wood was dry before. 18 to 24 h in the first step, no spray while it warms up; oak that checks easily is opened by it.";

    private static IEnumerable<string> MindsOf(Charge charge, DateOnly today)
    {
        foreach (var sample in charge.Samples)
        {
            if (sample.Retired)
                yield return $"Sample {sample.Name} is retired: its wood cannot be believed any more.";
            for (var i = 1; i < sample.Weighings.Count; i++)
            {
                if (sample.Weighings[i] is { AfterDamage: true } loss)
                    yield return string.Create(CultureInfo.InvariantCulture, $"Sample {sample.Name} lost wood on {DayWords.Of(loss.At, today)}: {loss.Weight.Grams:0} g after it, dry weight {loss.DryWeight.Grams:0.0} g. Its percentages before that day are over {sample.Weighings[i - 1].DryWeight.Grams:0.0} g dry.");
            }
        }

        foreach (var gap in charge.Gaps)
        {
            var lowest = gap.DryBulbLowest is { } low ? string.Create(CultureInfo.InvariantCulture, $", dry bulb down to {low.Fahrenheit:0} °F") : "";
            yield return string.Create(CultureInfo.InvariantCulture, $"{CauseWords(gap)} {gap.From:d MMM HH:mm} to {(gap.To is { } to ? to.ToString(to.Date == gap.From.Date ? "HH:mm" : "d MMM HH:mm", CultureInfo.InvariantCulture) : "now")}{lowest}. The clock of the charge stood; nothing is drawn across it.");
        }
    }

    // A step goes by the wettest half of what is weighed: a stack nobody weighs may be wetter than all of it.
    private static IEnumerable<string> Unsampled(YardState state, Charge charge)
    {
        if (!charge.IsRunning || !charge.SoundSamples.Any() || charge.SoundSamples.Any(sample => sample.Stack is null))
            yield break;
        var without = charge.StacksInside.Where(tag => charge.SoundSamples.All(sample => sample.Stack != tag)).Select(tag => state.Stacks[tag]).ToList();
        if (without.Count > 0)
            yield return string.Create(CultureInfo.InvariantCulture, $"No sample is of {string.Join(", ", without.Select(stack => stack.Tag))}, {without.Sum(stack => stack.Footage.Count):#,0} bf: the wettest board may be among them. Cut one of each before the air is made drier by what is weighed.");
    }

    private static string CauseWords(Gap gap) => gap.Cause switch
    {
        Book.Facts.InterruptionCause.PowerCut => "Power cut",
        Book.Facts.InterruptionCause.DoorOpen => "Door open",
        Book.Facts.InterruptionCause.HeatLost => "Heat lost",
        Book.Facts.InterruptionCause.LowWater => "Low water in the boiler",
        Book.Facts.InterruptionCause.Sensor => "Sensor out",
        _ => "Gap",
    };

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Text(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
