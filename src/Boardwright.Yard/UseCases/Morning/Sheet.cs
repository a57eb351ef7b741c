using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A name on the sheet's switch.</summary>
/// <param name="Name">As in the book.</param>
/// <param name="From">First hour of the day, from the role's rounds or the working hours; null on a day off.</param>
public sealed record SheetPerson(string Name, TimeOnly? From);

/// <summary>What to do today, what stands to lose most first; for one person by their role, or for everybody.</summary>
/// <param name="Person">Whose sheet; null for everybody.</param>
/// <param name="People">Who may be chosen.</param>
/// <param name="DayWords">A day off or a person away; null on a usual working day.</param>
/// <param name="Tasks">In the order of money at stake for each day left.</param>
public sealed record MorningSheet(string? Person, IReadOnlyList<SheetPerson> People, string? DayWords, IReadOnlyList<DayTask> Tasks)
{
    /// <summary>Said while nothing can be told of the season's plan, or only of the one before; null where the newest is told, and where nobody asked for it.</summary>
    public string? SeasonWords { get; init; }

    /// <summary>The rules of the sheet; each knows one kind of work.</summary>
    private static readonly Func<YardState, IEnumerable<DayTask>>[] Rules =
    [
        ChargesToWatch.Of, ChargesToPull.Of, OpenInterruptions.Of, SensorsToMend.Of, ChangesToSettle.Of, ReadyToShip.Of,
        PacksInDispute.Of, PacksToBand.Of, ShavingsToFill.Of, StacksToPlane.Of,
        ReadingsDue.Of, LogsToOpen.Of, LogsToScan.Of, TagsToSettle.Of, ValuesToSettle.Of, CallsToAnswer.Of,
        ResinShort.Of, PoursToMind.Of, WoodNotForPours.Of, SoftCastings.Of, DaysOff.Of,
    ];

    /// <summary>Rules that look at the season's plan too.</summary>
    private static readonly Func<YardState, SeasonNow, IEnumerable<DayTask>>[] RulesByPlan =
    [
        KilnsToLoad.Of, FiresToStoke.Of, HeatShort.Of, BoilersToChase.Of, PromisesAtRisk.Of, PromisesToRefuse.Of, OrdersDue.Of, WoodForClass.Of,
    ];

    // A yard's state never changes, so its tasks are worked out once, and those of each plan of it: a kiln forecast among them takes a moment.
    private static readonly ConditionalWeakTable<YardState, Lazy<IReadOnlyList<DayTask>>> Worked = [];
    private static readonly ConditionalWeakTable<YardState, ConcurrentDictionary<SeasonNow, Lazy<IReadOnlyList<DayTask>>>> WorkedByPlan = [];

    /// <summary>The sheet of a day.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="person">A name of the book; null or unknown for everybody.</param>
    /// <param name="plan">The season's plan; null where nobody asks for it.</param>
    public static MorningSheet For(YardState state, string? person, SeasonNow? plan = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        var who = person is not null ? state.People.GetValueOrDefault(person) : null;
        var season = plan ?? SeasonNow.NotAsked;
        var tasks = Worked.GetValue(state, static yard => new(() => [.. Rules.AsParallel().AsOrdered().SelectMany(rule => rule(yard))])).Value
            .Concat(WorkedByPlan.GetValue(state, static _ => new(ReferenceEqualityComparer.Instance)).GetOrAdd(season, asked => new(() => [.. RulesByPlan.AsParallel().AsOrdered().SelectMany(rule => rule(state, asked))])).Value)
            .OrderByDescending(task => task.Stake.PerDay).ThenBy(task => task.At, StringComparer.Ordinal)
            .Where(task => who is null || Concerns(state, task, who));
        return new(who?.Person, [.. state.People.Values.Select(one => new SheetPerson(one.Person, FirstHour(state, one))).OrderBy(one => one.From ?? TimeOnly.MaxValue).ThenBy(one => one.Name, StringComparer.Ordinal)], Words(state, who), [.. tasks])
        {
            SeasonWords = state.Kilns.IsEmpty ? null : season.Why ?? season.Newer,
        };
    }

    // Work that nobody's role names is everybody's.
    private static bool Concerns(YardState state, DayTask task, PersonNamed who) =>
        (task.For & Roles.Of(who)) != 0 || !state.People.Values.Any(one => (task.For & Roles.Of(one)) != 0);

    private static TimeOnly? FirstHour(YardState state, PersonNamed person) =>
        Roles.Rounds(person) is [var first, ..] ? first
        : state.Calendar.PeopleOn(state.Today).Contains(person.Person) ? state.Calendar.Week[state.Today.DayOfWeek].From
        : null;

    private static string? Words(YardState state, PersonNamed? who)
    {
        if (state.Calendar.Closed.TryGetValue(state.Today, out var closed))
            return $"Today: {closed.Why}{(closed.From is { } from ? $" ({from:HH:mm})" : "")}. Kilns and boilers run on.";
        if (state.Calendar.Week.Count == 0 || who is null || Roles.Rounds(who).Count > 0 || state.Calendar.PeopleOn(state.Today).Contains(who.Person))
            return state.Calendar.Week.Count > 0 && state.Calendar.HoursOn(state.Today) == 0.0 ? "Nobody works today. Kilns and boilers run on." : null;
        if (state.Calendar.Away.FirstOrDefault(away => away.Day == state.Today && away.Person == who.Person) is { } gone)
            return $"{who.Person} is away today: {gone.Why}.";
        var days = state.Calendar.Week.Values.Where(day => day.People.Contains(who.Person)).Select(day => day.Day).OrderBy(day => ((int)day + 6) % 7).ToList();
        return days.Count == 0 ? null : $"{who.Person} works on {string.Join(", ", days)}: this waits until then.";
    }
}
