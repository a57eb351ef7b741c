using System.Globalization;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What stands between a charge and the door.</summary>
public enum PullStep
{
    /// <summary>Nothing is known that is new enough.</summary>
    Weigh,

    /// <summary>Dry on: not even the driest is where equalizing begins.</summary>
    DryOn,

    /// <summary>Bring dry and wet boards together.</summary>
    Equalize,

    /// <summary>Free the stress.</summary>
    Condition,

    /// <summary>Cut a stress section, or read the one that is cut.</summary>
    Test,

    /// <summary>It may come out.</summary>
    Pull,
}

/// <summary>May it come out: the answer, what it rests on, and what next.</summary>
/// <param name="Step">What is next.</param>
/// <param name="Says">The answer in a sentence: yes or no, and why.</param>
/// <param name="Do">What to do.</param>
/// <param name="Wet">Samples over the target, wettest first, each with its stack.</param>
/// <param name="Boards">Boards to read at random so that the mean of the lot is known to half a point; null with one sample.</param>
/// <param name="Random">The last readings of boards picked at random in the kiln, against the target; null without.</param>
public sealed record ChargeVerdict(PullStep Step, string Says, string Do, IReadOnlyList<Sample> Wet, int? Boards, string? Random)
{
    private const double SampleErrorPercent = 0.7;
    private const double LateHours = 6.0; // a weighing may come later in its day than the last one
    private const double ConditionsFromPercent = 2.0;
    private const double MeanWithinPercent = 0.5;

    /// <summary>How far a sample's own figure may be off, in words.</summary>
    public static string ErrorWords { get; } = $"each sample is good to about {SampleErrorPercent.ToString("0.0", CultureInfo.InvariantCulture)} point, as its sections are; they are chosen wettest and driest, not by chance";

    /// <summary>The verdict of a running charge in a kiln with samples; null for one under vacuum or without samples.</summary>
    public static ChargeVerdict? Of(YardState state, Charge charge, ChargeRun? run, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        if (!charge.IsRunning || run is not { BySamples: true } || charge is not { Driest: { } driest, Wettest: { } wettest })
            return null;

        var wet = charge.SoundSamples.Where(sample => sample.Moisture > charge.Target).OrderByDescending(sample => sample.Moisture.Fraction).ToList();
        var (step, says, act) = Answer(state, charge, run, driest, wettest, now);
        return new(step, says, act, wet, BoardsToRead(state, charge), RandomWords(state, charge));
    }

    private static (PullStep, string, string) Answer(YardState state, Charge charge, ChargeRun run, Sample driest, Sample wettest, DateTime now)
    {
        if ((now - run.WeighedAt).TotalHours > (24.0 * WeighingRhythm.UsualDays(charge)) + LateHours)
            return (PullStep.Weigh, $"Not known: the samples were weighed {(now - run.WeighedAt).TotalDays.ToString("0.#", CultureInfo.InvariantCulture)} days ago.", "Weigh them, then ask again.");
        if (ChargeFinish.Of(state, charge) is not { } finish)
            return (PullStep.DryOn, $"No rule is printed for {Text(charge.Target)}: equalizing and conditioning are yours to judge.", "Weigh on; test for stress before you pull.");
        if (wettest.Moisture <= charge.Target)
            return AtTarget(state, charge, run, finish, now);
        if (driest.Moisture > finish.EqualizeFromDriest && run.Equalizing is not { IsOn: true })
        {
            var due = run.Next is { Kind: ChangeKind.Equalize, DueAt: { } at } ? $", about {DayWords.Of(at.Day(), state.Today)}" : "";
            return (PullStep.DryOn, $"No. Driest {Text(driest.Moisture)} in sample {driest.Name}, wettest {Text(wettest.Moisture)} in sample {wettest.Name}; {Text(charge.Target)} is wanted.",
                run.Equalizing is { WettestComesFirst: true } && run.Next.DueAt is { } whole
                ? $"Dry on until sample {wettest.Name} is at {Text(charge.Target)}, about {DayWords.Of(whole.Day(), state.Today)}, before the driest falls to {Text(finish.EqualizeFromDriest)}: then nothing is left to equalize."
                : $"Dry on until the driest is at {Text(finish.EqualizeFromDriest)}{due}, then equalize.{(run.Equalizing is { DriestThere: null } ? $" {run.TooMoistWords}" : "")}");
        }

        var passed = (now - run.ClockFrom).TotalHours;
        var hours = run.Equalizing?.WettestThere is { } known ? string.Create(CultureInfo.InvariantCulture, $" for about {Math.Max(0.0, known.Half.Hours - passed):0} h more, up to {Math.Max(0.0, known.Most.Hours - passed):0}") : "";
        var driestWords = driest.Moisture > finish.EqualizeFromDriest ? $"The driest is at {Text(driest.Moisture)} in sample {driest.Name}" : $"The driest is low enough at {Text(driest.Moisture)}";
        return (PullStep.Equalize, $"No. {driestWords}, the wettest is still at {Text(wettest.Moisture)} in sample {wettest.Name}; {Text(charge.Target)} is wanted.",
            $"Equalize at {Text(finish.EqualizeEmc)}{hours}, until sample {wettest.Name} is at {Text(finish.EqualizeUntilWettest)}: samples end it, not the clock.{(run.Equalizing is { IsOn: true } ? " The air that is set holds that already." : "")}");
    }

    // Every sample is there: only locked stress can still keep it inside.
    private static (PullStep, string, string) AtTarget(YardState state, Charge charge, ChargeRun run, KilnFinish finish, DateTime now)
    {
        var dry = $"Every sample is at {Text(charge.Target)} or under, driest {Text(charge.Driest!.Moisture)}.";
        var thickness = charge.Stacks.Select(tag => state.Stacks[tag]).Max(stack => stack.SawnThickness ?? stack.Thickness.Length);
        var usual = StressTest.UsualConditioning(thickness);
        var conditioned = run.EmcSet is { } emc && emc.Percent >= charge.Target.Percent + ConditionsFromPercent ? run.Set!.At : (DateTime?)null;
        var tests = charge.StressTests.Where(test => test.At >= (run.Set?.At ?? DateTime.MinValue)).ToList();
        var prongs = StressTest.ProngsFor(thickness) == 2 ? "saw out the middle third and leave two prongs" : "cut six prongs, break out the second and the fifth";
        if (tests.Count == 0)
        {
            return conditioned is null
                ? (PullStep.Condition, $"Not yet. {dry} No stress test is on record.", $"Condition at {Text(finish.ConditionEmc)}, usually {usual.Hours:0} h at this thickness, then cut a stress section: {prongs}.")
                : (now - conditioned.Value).TotalHours < usual.Hours
                    ? (PullStep.Condition, $"Not yet. {dry} It is conditioned since {conditioned.Value.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)}.", $"About {usual.Hours - (now - conditioned.Value).TotalHours:0} h more, then cut a stress section: {prongs}.")
                    : (PullStep.Test, $"Nearly. {dry} It was conditioned {(now - conditioned.Value).TotalHours:0} h; no stress test is on record.", $"Cut a stress section: {prongs}.");
        }

        return (tests.Select(test => StressTest.Judge(test.Test.Turn, test.Test.Settled)).Max()) switch
        {
            StressVerdict.ReadAgain => (PullStep.Test, $"Nearly. {dry} The section was read at once, and uneven moisture bends prongs too.", "Read it again after a day in the shop, or after 15 s in a 1000 W microwave oven and some minutes of cooling."),
            StressVerdict.Done => (PullStep.Pull, $"Yes. {dry} The prongs stand straight.", "Unload it, with readings of boards picked at random."),
            StressVerdict.EnoughToPlane => (PullStep.Pull, $"Yes, to be planed on both faces. {dry} The prongs stand a little in.", "Unload it; condition longer where it is resawn."),
            StressVerdict.ConditionLonger => (PullStep.Condition, $"Not yet. {dry} The prongs turn in: casehardened.", $"Condition longer at {Text(finish.ConditionEmc)}, then cut another section."),
            _ => (PullStep.Pull, $"Yes, with a warning. {dry} The prongs turn out: it was conditioned too long, which is hard to cure.", "Stop conditioning and unload it; do not sell it for resawing."),
        };
    }

    // With the spread of the samples, which is more than that of the lot: on the safe side.
    private static int? BoardsToRead(YardState state, Charge charge)
    {
        var moistures = charge.SoundSamples.Select(sample => sample.Moisture).ToList();
        var pieces = charge.StacksInside.Sum(tag => state.Stacks[tag].Pieces ?? 0);
        return LotStatistics.Of(moistures) is Outcome<LotStatistics>.Done({ StandardDeviationPercent: { } spread })
            ? pieces > 0 ? LotStatistics.BoardsFor(spread, MeanWithinPercent, pieces) : LotStatistics.BoardsFor(spread, MeanWithinPercent) : null;
    }

    private static string? RandomWords(YardState state, Charge charge)
    {
        var read = charge.StacksInside.SelectMany(tag => state.Stacks[tag].Readings.Select(reading => (Tag: tag, Reading: reading)))
            .Where(one => one.Reading is { Mean: not null, SdPct: not null, Boards: > 1 } && one.Reading.At > charge.LoadedAt).OrderByDescending(one => one.Reading.At).FirstOrDefault();
        if (read.Tag is null)
            return null;
        var (reading, spread) = (read.Reading, read.Reading.SdPct!.Value);
        var share = 100.0 * new LotStatistics(reading.Boards!.Value, reading.Mean!.Value.Percent, spread, null, null).ShareWithin(charge.Target.Percent - 1.0, charge.Target.Percent + 1.0)!.Value;
        return string.Create(CultureInfo.InvariantCulture, $"{read.Tag}, {reading.Boards} boards at random on {DayWords.Of(reading.At, state.Today)}: mean {reading.Mean!.Value.Percent:0.0} %, spread {spread:0.0}; {share:0} of 100 within 1 point of {charge.Target.Percent:0.#} %");
    }

    private static string Text(MoistureContent moisture) => moisture.Percent.ToString("0.0", CultureInfo.InvariantCulture) + " %";
}
