using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Steps of a schedule that would dry boards of a charge faster than is safe, in words: which boards, by how much, and what air keeps them.</summary>
/// <param name="Says">The answer in a sentence.</param>
/// <param name="Steps">Each step that is over, the first one first; empty where none is.</param>
public sealed record StepRisk(string Says, IReadOnlyList<StepSafety> Steps)
{
    /// <summary>Under this no board of a charge is guarded: new checks hardly form.</summary>
    private const double GuardedAbovePercent = 30.0;

    /// <summary>True where a step is over.</summary>
    public bool IsOver => Steps.Count > 0;

    /// <summary>Of a running charge, from the step in force on, in the air that is set.</summary>
    /// <returns>The answer; no answer where nothing is printed for its woods.</returns>
    public static Outcome<StepRisk> Of(YardState state, Charge charge, ChargeRun run)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        ArgumentNullException.ThrowIfNull(run);
        var schedule = run.Set is { } set && !(run.Next.IsDue && run.Next.Kind == ChangeKind.NextStep) ? run.Schedule.Holding(set.DryBulb, set.WetBulb, run.StepNow) : run.Schedule with { Steps = [.. run.Schedule.Steps.Skip(run.StepNow)] };
        if (run.Clock?.Left is { } left)
            schedule = schedule with { Steps = [schedule.Steps[0] with { Lasts = left }, .. schedule.Steps.Skip(1)] };
        var rate = (run.Rate as Outcome<KilnRate>.Done)?.Value;
        IReadOnlyList<SafetyBoards> boards = [.. charge.StacksInside.Select(tag => state.Stacks[tag]).Select(stack => new SafetyBoards(
            stack.Tag, stack.Species, stack.SawnThickness ?? stack.Thickness.Length, Moisture(charge, stack, run), rate))];
        return Of(boards, schedule, run.StepNow, HouseRules.Steps(state));
    }

    /// <summary>Of any charge and schedule.</summary>
    /// <param name="boards">Its stacks.</param>
    /// <param name="schedule">From the step it begins with.</param>
    /// <param name="first">What that step is counted as, from 0.</param>
    /// <param name="stepsBy">Which samples lead.</param>
    public static Outcome<StepRisk> Of(IReadOnlyList<SafetyBoards> boards, Drying.Schedules.KilnSchedule schedule, int first, Drying.Schedules.StepRule stepsBy)
    {
        ArgumentNullException.ThrowIfNull(boards);
        if (boards.Count > 0 && boards.All(one => one.From.Percent < GuardedAbovePercent * 0.85))
            return new StepRisk("Its boards are under 30 %: new checks hardly form, and no step is held against the safe rate any more.", []);
        return ChargeSafety.Of(boards, schedule, stepsBy).Then<StepRisk>(steps =>
        {
            IReadOnlyList<StepSafety> over = [.. steps.Where(step => step.Over.Count > 0).Select(step => step with { Step = step.Step + first })];
            return new StepRisk(over.Count == 0 ? "No step dries its boards faster than is safe while they are over 30 %." : $"{(over.Count == 1 ? "One step dries" : $"{over.Count} steps dry")} boards faster than is safe, at worst {Times(over.SelectMany(step => step.Over).Max(one => one.Times))} as fast.", over);
        });
    }

    /// <summary>Which boards of a step: "all boards of S-02", "a fifth of S-02, those over 34 %".</summary>
    public static string Which(BoardsOver over)
    {
        ArgumentNullException.ThrowIfNull(over);
        return over.Share > 0.95 ? Words($"all of {over.Name}") : Words($"{100.0 * over.Share:0} % of {over.Name}, the wettest: over {over.MoistureLeast.Percent:0} %");
    }

    /// <summary>By how much: "5.9 % a day, 3.8 is safe: 1.5 times".</summary>
    public static string HowMuch(BoardsOver over)
    {
        ArgumentNullException.ThrowIfNull(over);
        return Words($"{over.LossPercent:0.0} % a day where {over.SafePercent:0.0} is safe, {Times(over.Times)}; worst a board of {over.Thickness.Inches:0.00} in at {over.Moisture.Percent:0} %");
    }

    private static string Times(double times) => Words($"{times:0.0} times");

    // By its own samples; else the charge's mean.
    private static MoistureContent Moisture(Charge charge, Stack stack, ChargeRun run) => charge.SoundSamples.Where(sample => sample.Stack == stack.Tag).ToList() is { Count: > 0 } own
        ? MoistureContent.FromFraction(own.Average(sample => sample.Moisture.Fraction))
        : run.BySamples ? run.Mean : stack.Moisture?.Mean ?? run.Mean;

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
