using Boardwright.Planning;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>A plan as it was worked to its end, with the state of the book it was made for: what it was made from can be read from the book again.</summary>
/// <param name="Number">Plans of this yard are counted from 1, so that two people know whether they speak of the same one.</param>
/// <param name="Entries">Entries the book had.</param>
/// <param name="Today">Its first day.</param>
/// <param name="Days">Days planned.</param>
/// <param name="Plan">Its choices.</param>
public sealed record KeptPlan(int Number, int Entries, DateOnly Today, int Days, Plan Plan)
{
    /// <summary>The plan of a book as it stands.</summary>
    public static KeptPlan Of(int number, YardState state, PlanMade made)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        return new(number, state.Entries.Count, state.Today, made.Input.Calendar.Days, made.Answer.Plan);
    }

    /// <summary>The plan a newer one is compared with: the last one of an earlier day, else the first of today. Null where there is none, or only plans of another book.</summary>
    /// <param name="kept">Plans kept, the first first.</param>
    /// <param name="state">The book as it stands.</param>
    public static KeptPlan? Before(IReadOnlyList<KeptPlan> kept, YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var earlier = Fitting(kept, state).Where(one => one.Entries < state.Entries.Count || one.Today < state.Today).ToList();
        return earlier.LastOrDefault(one => one.Today < state.Today) ?? earlier.FirstOrDefault();
    }

    /// <summary>The plan a search begins from: the newest. Null where there is none of this book.</summary>
    public static KeptPlan? Newest(IReadOnlyList<KeptPlan> kept, YardState state) => Fitting(kept, state).LastOrDefault();

    /// <summary>What is kept once a newer plan is there: it, and the one it is compared with.</summary>
    public static IReadOnlyList<KeptPlan> After(IReadOnlyList<KeptPlan> kept, YardState state, KeptPlan newest) => Before(kept, state) is { } before ? [before, newest] : [newest];

    /// <summary>The book as it stood when the plan was made.</summary>
    public YardState StateThen(YardState now)
    {
        ArgumentNullException.ThrowIfNull(now);
        return YardState.Of([.. now.Entries.Take(Entries)], Today);
    }

    // A book begun anew in the same place has fewer entries, or an earlier day.
    private static IEnumerable<KeptPlan> Fitting(IReadOnlyList<KeptPlan> kept, YardState state)
    {
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(state);
        return kept.Where(one => one.Entries <= state.Entries.Count && one.Today <= state.Today);
    }
}

/// <summary>Where the plans that are compared lie between two runs of the program. Nothing is lost with them: they can be made again.</summary>
public interface IPlanShelf
{
    /// <summary>The plans, the first first; empty where none can be read.</summary>
    IReadOnlyList<KeptPlan> Read();

    /// <summary>Puts these in the place of all others.</summary>
    void Write(IReadOnlyList<KeptPlan> plans);
}

/// <summary>Plans kept as long as the program runs.</summary>
public sealed class MemoryPlanShelf : IPlanShelf
{
    private volatile IReadOnlyList<KeptPlan> plans = [];

    public IReadOnlyList<KeptPlan> Read() => plans;

    public void Write(IReadOnlyList<KeptPlan> plans) => this.plans = plans;
}
