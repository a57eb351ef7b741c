using System.Globalization;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A load the owner planned beside what the worked plan does with the same stacks, in one line.</summary>
public static class OwnLoad
{
    /// <summary>The stacks of a load that still wait for a kiln: what was dried meanwhile is planned no more.</summary>
    public static IReadOnlyList<string> Waiting(YardState state, PlannedCharge own)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(own);
        return [.. own.Stacks.Where(tag => state.Stacks.GetValueOrDefault(tag)?.Stage == StackStage.AirDrying)];
    }

    /// <summary>The line; null where both plans load the same wood in the same kiln on the same day, and where nobody asked for the worked plan.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="own">The load as the owner planned it.</param>
    /// <param name="season">The season's plan.</param>
    /// <param name="stack">Only of this stack; null for the whole load.</param>
    public static string? Beside(YardState state, PlannedCharge own, SeasonNow season, string? stack = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(season);
        if (Waiting(state, own).Count == 0)
            return null;
        var hindered = LoadInTheWay.Of(state, own);
        var yours = $"Your plan: {own.Kiln} on {Day(own.InOn)}{(hindered is null ? "." : $", which cannot be: {hindered}.")}";
        if (season.Sheet is null)
            return season.Why is { } why ? $"{yours} {why}" : hindered is null ? null : yours;
        return Agrees(state, own, season, stack) ? null : $"{yours} Worked plan: {Worked(state, own, season, stack)}.{(season.Beside is { } beside ? $" {beside.Compared}" : "")}";
    }

    /// <summary>True when the worked plan loads the same stacks, and no others, in the same kiln on the same day.</summary>
    public static bool Agrees(YardState state, PlannedCharge own, SeasonNow season, string? stack = null)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(season);
        var waiting = Waiting(state, own);
        return (stack is null ? waiting : [stack]).All(tag => season.ChargeOf(tag) is { } charge && SamePlace(own, charge) && charge.Stacks.Select(one => one.Tag).ToHashSet().SetEquals(waiting));
    }

    /// <summary>What the worked plan does with the stacks: "K1 on 14 Nov", or each where they go apart.</summary>
    public static string Worked(YardState state, PlannedCharge own, SeasonNow season, string? stack = null)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(season);
        var groups = (stack is null ? Waiting(state, own) : [stack]).GroupBy(tag => season.ChargeOf(tag)).OrderBy(group => group.Key?.In ?? DateTime.MaxValue).ToList();
        if (stack is not null && season.ChargeOf(stack) is { } its && SamePlace(own, its))
            return $"the same kiln and day, {(its.Stacks.Count == 1 ? "alone" : $"with {string.Join(", ", its.Stacks.Select(one => one.Tag).Where(tag => tag != stack))}")}";
        return groups is [{ Key: var only }] ? Where(only) + With(own, only, stack)
            : string.Join("; ", groups.Select(group => $"{string.Join(", ", group)} {(group.Key is null ? Where(null) : $"in {Where(group.Key)}")}"));
    }

    private static bool SamePlace(PlannedCharge own, SeasonCharge charge) => charge.Kiln == own.Kiln && charge.In.Day() == own.InOn;

    private static string Where(SeasonCharge? charge) => charge switch
    {
        null => "in no kiln",
        { Tag: { } running } => $"{charge.Kiln}, already in it as {running}",
        _ => $"{charge.Kiln} on {Day(charge.In.Day())}",
    };

    // The same kiln and day with other company is another load too.
    private static string With(PlannedCharge own, SeasonCharge? charge, string? stack)
    {
        var more = stack is null && charge is not null ? charge.Stacks.Select(one => one.Tag).Except(own.Stacks).ToList() : [];
        return more.Count == 0 ? "" : $", with {string.Join(", ", more)} too";
    }

    private static string Day(DateOnly day) => day.ToString("d MMM", CultureInfo.InvariantCulture);
}
