using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>The days a plan covers, cut into equal steps, and who works when.</summary>
/// <param name="FirstDay">Day 0; step 0 begins at its midnight (local time).</param>
/// <param name="Days">Number of days planned, 1 to 400.</param>
/// <param name="StepsPerDay">Steps in a day: 1 to 96. 48 is half an hour, 2 is half a day.</param>
/// <param name="CrewWindows">When kilns can be loaded and unloaded, in order, each inside one day.</param>
/// <param name="KilnsAtOnce">How many kilns the crew can load or unload at the same time.</param>
/// <param name="PlanerDays">Day numbers on which the planer runs, in order.</param>
public sealed record PlanCalendar(
    DateOnly FirstDay, int Days, int StepsPerDay, IReadOnlyList<StepRange> CrewWindows, int KilnsAtOnce, IReadOnlyList<int> PlanerDays)
{
    /// <summary>Number of steps in the plan.</summary>
    public int Steps => Days * StepsPerDay;

    /// <summary>Hours in one step.</summary>
    public double StepHours => 24.0 / StepsPerDay;

    /// <summary>Day number of a step; steps after the plan's end have days too.</summary>
    public int DayOf(int step) => step / StepsPerDay;

    /// <summary>Calendar day of a day number.</summary>
    public DateOnly DateOf(int day) => FirstDay.AddDays(day);

    /// <summary>Local date and time at which a step begins.</summary>
    public DateTime TimeOf(int step) => FirstDay.ToDateTime(TimeOnly.MinValue).AddHours(step * StepHours);

    /// <summary>Day number of a date; negative before the first day.</summary>
    public int DayNumber(DateOnly date) => date.DayNumber - FirstDay.DayNumber;

    /// <summary>Whole steps that hold a duration, rounded up (a millionth of a step is forgiven).</summary>
    public int StepsFor(Elapsed duration) => (int)Math.Ceiling(duration.Hours / StepHours - 1e-6);

    /// <summary>The steps of whole days, first and last day included, cut to the plan.</summary>
    public StepRange StepsOf(DateOnly from, DateOnly to) => new(
        Math.Clamp(DayNumber(from), 0, Days) * StepsPerDay, Math.Clamp(DayNumber(to) + 1, 0, Days) * StepsPerDay);

    /// <summary>A calendar from a rule that gives each day's working hours (null: nobody works).</summary>
    /// <remarks>A window starts at the first whole step inside the hours and ends at the last.</remarks>
    /// <param name="firstDay">Day 0.</param>
    /// <param name="days">Number of days.</param>
    /// <param name="stepsPerDay">Steps in a day.</param>
    /// <param name="hours">Working hours of a day, or null.</param>
    /// <param name="planerRuns">True on days the planer runs.</param>
    public static PlanCalendar For(
        DateOnly firstDay, int days, int stepsPerDay, Func<DateOnly, (TimeOnly From, TimeOnly To)?> hours, Func<DateOnly, bool> planerRuns)
    {
        ArgumentNullException.ThrowIfNull(hours);
        ArgumentNullException.ThrowIfNull(planerRuns);
        var windows = new List<StepRange>();
        var stepMinutes = 1440.0 / stepsPerDay;
        for (var day = 0; day < days; day++)
        {
            if (hours(firstDay.AddDays(day)) is { } work)
            {
                var from = (int)Math.Ceiling(work.From.ToTimeSpan().TotalMinutes / stepMinutes - 1e-6);
                var to = (int)Math.Floor(work.To.ToTimeSpan().TotalMinutes / stepMinutes + 1e-6);
                if (to > from)
                {
                    windows.Add(new(day * stepsPerDay + from, day * stepsPerDay + to));
                }
            }
        }

        return new(firstDay, days, stepsPerDay, windows, 1, [.. Enumerable.Range(0, days).Where(day => planerRuns(firstDay.AddDays(day)))]);
    }
}
