using Boardwright.Quantities;

namespace Boardwright.Drying.Schedules;

/// <summary>Air set on a kiln's controller.</summary>
/// <param name="At">When it was set.</param>
/// <param name="DryBulb">Dry bulb.</param>
/// <param name="WetBulb">Wet bulb.</param>
public readonly record struct AirSet(DateTime At, Temperature DryBulb, Temperature WetBulb);

/// <summary>Moisture content that leads a charge, at a weighing.</summary>
/// <param name="At">When it was weighed.</param>
/// <param name="Controlling">Moisture content of the samples that lead.</param>
public readonly record struct LeadWeighed(DateTime At, MoistureContent Controlling);

/// <summary>Where a charge stands in a schedule of which steps go by the clock.</summary>
/// <remarks>
/// A step by the clock begins when its air is set, at the earliest when the step before it is over, and ends when it has been run for its hours: time in which the kiln stood is not
/// counted. Setting the air of the next step early ends it. A step by moisture ends at the first weighing in which the samples that lead are at its point. A step that is over
/// while its successor's air is not set yet is followed at once on paper, and its successor is due: none of its hours are run.
/// </remarks>
/// <param name="Step">Index of the step in force.</param>
/// <param name="IsDue">True where its air is to be set now.</param>
/// <param name="Run">Hours of it that have been run; null for a step that does not go by the clock.</param>
/// <param name="Left">Hours of it still to run; null likewise.</param>
/// <method page="docs/methods/kiln-schedule.md"/>
public sealed record StepClock(int Step, bool IsDue, Elapsed? Run, Elapsed? Left)
{
    private const int Tries = 100;

    /// <summary>The stand of a charge.</summary>
    /// <param name="schedule">Its schedule.</param>
    /// <param name="set">Airs set, in order of time.</param>
    /// <param name="weighed">Weighings, in order of time; without any the steps by moisture are taken to go on.</param>
    /// <param name="now">The time.</param>
    /// <param name="stood">Time in which it stood between two moments.</param>
    public static StepClock At(KilnSchedule schedule, IReadOnlyList<AirSet> set, IReadOnlyList<LeadWeighed> weighed, DateTime now, Func<DateTime, DateTime, Elapsed> stood)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(weighed);
        ArgumentNullException.ThrowIfNull(stood);
        var step = 0;
        var begin = set.Count > 0 ? set[0].At : (DateTime?)null;
        var last = DateTime.MinValue; // end of the step before
        while (step < schedule.Steps.Count - 1 && End(schedule, step, begin, last, set, weighed, now, stood) is { } end)
        {
            (step, last) = (step + 1, end);
            begin = set.Count == 0 ? null : IsSet(set.Last(one => one.At <= end || one == set[0]), schedule.Steps[step]) ? end : set.Select(one => (DateTime?)one.At).FirstOrDefault(at => at >= end);
        }

        var lasts = schedule.Steps[step].Lasts;
        var run = begin is { } since ? Dried(since, now, stood) : default;
        return new(step, begin is null, lasts is null ? null : run, lasts is { } all ? all.Hours > run.Hours ? all - run : default(Elapsed) : null);
    }

    // When the step was over; null while it is not.
    private static DateTime? End(KilnSchedule schedule, int step, DateTime? begin, DateTime last, IReadOnlyList<AirSet> set, IReadOnlyList<LeadWeighed> weighed, DateTime now, Func<DateTime, DateTime, Elapsed> stood)
    {
        var running = schedule.Steps[step];
        if (running.Lasts is not { } lasts)
        {
            var from = begin > last ? begin.Value : last;
            var there = weighed.Where(one => one.At <= now && one.Controlling <= running.Above).ToList();
            return weighed.Any(one => one.At <= from) && there.Contains(weighed.Last(one => one.At <= from)) ? from : there.Where(one => one.At >= from).Select(one => (DateTime?)one.At).FirstOrDefault();
        }

        if (begin is not { } since)
            return null;
        var over = Over(since, lasts, now, stood);
        var early = set.Where(one => one.At > since && one.At <= now && IsSet(one, schedule.Steps[step + 1]) && !IsSet(one, running)).Select(one => (DateTime?)one.At).FirstOrDefault();
        return early is { } sooner && !(over <= sooner) ? sooner : over;
    }

    private static DateTime? Over(DateTime since, Elapsed lasts, DateTime now, Func<DateTime, DateTime, Elapsed> stood)
    {
        var end = since.AddHours(lasts.Hours);
        for (var again = 0; again < Tries && end <= now; again++)
        {
            var with = since.AddHours(lasts.Hours + stood(since, end).Hours);
            if (with <= end)
                return end;
            end = with;
        }

        return null;
    }

    private static Elapsed Dried(DateTime from, DateTime to, Func<DateTime, DateTime, Elapsed> stood) =>
        to <= from ? default : Elapsed.FromHours(Math.Max(0.0, (to - from).TotalHours - stood(from, to).Hours));

    // A controller takes whole degrees.
    private static bool IsSet(AirSet set, KilnStep step) =>
        Whole(set.DryBulb) == Whole(step.DryBulb) && Whole(set.WetBulb) == Whole(Temperature.FromFahrenheit(step.WetBulbFloored90Fahrenheit));

    private static double Whole(Temperature temperature) => Math.Round(temperature.Fahrenheit, MidpointRounding.AwayFromZero);
}
