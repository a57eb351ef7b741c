using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>The yard of a book as the planner's input: forecasts of air and kiln, heat by outside temperature, who works when, what is asked for.</summary>
/// <param name="Input">The planner's input.</param>
/// <param name="Lines">Order lines in the order of the input.</param>
/// <param name="Left">Orders that no kiln plan answers, and why.</param>
/// <param name="Notes">Stacks that could not be planned, and why.</param>
/// <param name="Yields">Low, likely and high board feet of each planned stack once dry.</param>
/// <param name="OutsideC">Outside mean of each day.</param>
/// <method page="docs/methods/kiln-plan.md"/>
public sealed record PlanYard(
    PlanInput Input, IReadOnlyList<PlannedLine> Lines, IReadOnlyList<NotPlanned> Left, IReadOnlyList<string> Notes,
    IReadOnlyDictionary<string, (double Low, double Likely, double High)> Yields, IReadOnlyList<double> OutsideC)
{
    /// <summary>Days a plan may have.</summary>
    public const int DaysMin = 7;

    /// <summary>Days a plan may have.</summary>
    public const int DaysMax = 140;

    private const int StepsPerDay = 24;
    private const int DaysAfterLastDue = 14;
    private const int UsualDaysMin = 42;

    /// <summary>Days planned where none are asked for: two weeks beyond the last open order, in whole weeks.</summary>
    public static int UsualDays(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var last = state.Orders.Values.Where(order => order.IsOpen).SelectMany(order => order.Lines).Select(line => line.Asked.DueOn).DefaultIfEmpty(state.Today).Max();
        var days = Math.Clamp(last.DayNumber - state.Today.DayNumber + DaysAfterLastDue, UsualDaysMin, DaysMax);
        return (days + 6) / 7 * 7;
    }

    /// <summary>The input; refused when the book has no kiln, no working days or no weather.</summary>
    public static Outcome<PlanYard> Of(YardState state, int days)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (state.Kilns.IsEmpty)
        {
            return new Refusal("yard", "no kiln", "a book with its kilns, boilers, people and working days: write them in under The house, or import them");
        }

        var figures = PlanFigures.Of(state);
        var calendar = PlanCalendar.For(state.Today, days, StepsPerDay, day => LoadingHours(state, day), day => figures.PlanerDays.Contains(day.DayOfWeek) && state.Calendar.HoursOn(day) > 0.0);
        if (calendar.CrewWindows.Count == 0)
        {
            return new Refusal("yard", "no day with two people who load kilns", "working days, and people of whom one leads the loading");
        }

        return YardWeather.Series(state, state.Today, state.Today.AddDays(days)).Then(weather => Made(state, figures, calendar, weather));
    }

    private static Outcome<PlanYard> Made(YardState state, PlanFigures figures, PlanCalendar calendar, Drying.WeatherSeries weather)
    {
        var outside = weather.Days.Take(calendar.Days).Select(day => Temperature.FromCelsius(day.MeanCelsius)).ToList();
        var targets = new PlanTargets(state, figures.HouseTarget);
        var stacks = new PlanStacks(state, figures, calendar.Days, weather, targets);
        var notes = new List<string>();
        var planned = new List<Stack>();
        foreach (var stack in state.Stacks.Values.Where(stack => stack is { IsHere: true, Footage.Count: > 0.0 }))
        {
            Keep(stacks.Of(stack), planned, notes);
        }

        var started = new List<StartedCharge>();
        foreach (var charge in state.Charges.Values.Where(charge => charge.IsRunning))
        {
            Keep(stacks.Of(charge), started, notes);
        }

        var (lines, left) = new PlanOrders(state, figures, stacks, targets, planned.Select(stack => stack.Id).ToHashSet(StringComparer.Ordinal)).All();
        var input = new PlanInput(
            calendar, PlanKilns.Kilns(state, figures, calendar, outside), planned, started, [.. lines.Select(line => line.Planned)], PlanKilns.Heat(state, figures, calendar, outside),
            new(figures.ThicknessRatioMost, figures.MoistureGapMostPercent), figures.ImportanceMoneyPerDay);
        return new PlanYard(input, lines, left, notes, planned.ToDictionary(stack => stack.Id, stack => stacks.Yield(state.Stacks[stack.Id]), StringComparer.Ordinal), [.. outside.Select(air => air.Celsius)]);
    }

    private static void Keep<T>(Outcome<T> made, List<T> kept, List<string> notes)
    {
        switch (made)
        {
            case Outcome<T>.Done(var value):
                kept.Add(value);
                break;
            case Outcome<T>.Refused(var reasons):
                notes.AddRange(reasons.Select(reason => $"{reason.What} is left out: {reason.Given}; wanted: {reason.Accepted}"));
                break;
            case Outcome<T>.NoAnswer(var why):
                notes.Add(why);
                break;
        }
    }

    // Loading needs two people who may, one of whom leads; a book without people is taken to have them on working days.
    internal static (TimeOnly From, TimeOnly To)? LoadingHours(YardState state, DateOnly day)
    {
        if (state.Calendar.HoursOn(day) <= 0.0)
        {
            return null;
        }

        var loaders = state.Calendar.PeopleOn(day).Select(person => state.People.GetValueOrDefault(person)).OfType<Book.Facts.PersonNamed>().Where(person => person.LoadsKilns).ToList();
        if (!state.People.IsEmpty && (loaders.Count < 2 || !loaders.Any(person => person.LeadsLoading)))
        {
            return null;
        }

        var usual = state.Calendar.Week[day.DayOfWeek];
        return (usual.From, state.Calendar.Closed.TryGetValue(day, out var closed) && closed.From is { } from && from < usual.To ? from : usual.To);
    }
}
