using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What a schedule would do to a charge from now on: when it would be dry, and whether a step would be too fast for its boards.</summary>
/// <param name="Schedule">Name of a kept one; null for the listed one of its woods.</param>
/// <param name="Dry">When it would be dry, in words; the reason where it would not.</param>
/// <param name="Risk">Its steps against the safe rate.</param>
public sealed record ScheduleTrial(string? Schedule, string Dry, Outcome<StepRisk> Risk)
{
    private const int Most = 6;

    /// <summary>The listed schedule and those the house keeps, the one it runs by first.</summary>
    public static IReadOnlyList<ScheduleTrial> Of(YardState state, Charge charge, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        return !charge.IsRunning ? [] : [.. state.Schedules.Keys.Prepend<string?>(null).OrderBy(name => name == charge.Schedule ? 0 : 1).Take(Most).Select(name => Try(state, charge, name, now))];
    }

    private static ScheduleTrial Try(YardState state, Charge charge, string? name, DateTime now)
    {
        // As it would be set: what stands on the controller belongs to the schedule it runs by.
        var tried = name == charge.Schedule ? charge : charge with { Schedule = name, Settings = [] };
        switch (ChargeRun.Of(state, tried, now))
        {
            case Outcome<ChargeRun>.Done(var run):
                var end = ChargeEnd.Of(state, tried, run);
                return new(name, end is null ? "not dry in its air" : $"dry about {DayWords.Of(end.Dry.Day(), state.Today)}, {DayWords.Band(end.DryEarly.Day(), end.DryLate.Day(), state.Today)}{end.IfSetWords}", StepRisk.Of(state, tried, run));
            case Outcome<ChargeRun>.NoAnswer(var why):
                return new(name, why, new Outcome<StepRisk>.NoAnswer(why));
            default:
                return new(name, "no answer", new Outcome<StepRisk>.NoAnswer("It follows no schedule of air."));
        }
    }
}
