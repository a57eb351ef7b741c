using System.Globalization;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A load the owner planned beside what the worked plan does with the same stacks, in one line.</summary>
public static class OwnLoad
{
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
        var yours = $"Your plan: {own.Kiln} on {Day(own.InOn)}.";
        if (season.Sheet is null)
            return season.Why is { } why ? $"{yours} {why}" : null;
        return Agrees(own, season, stack) ? null : $"{yours} Worked plan: {Worked(own, season, stack)}.";
    }

    /// <summary>True when the worked plan loads the same stacks, and no others, in the same kiln on the same day.</summary>
    public static bool Agrees(PlannedCharge own, SeasonNow season, string? stack = null)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(season);
        return (stack is null ? own.Stacks : [stack]).All(tag => season.ChargeOf(tag) is { } charge && charge.Kiln == own.Kiln && charge.In.Day() == own.InOn
            && (stack is not null || charge.Stacks.Count == own.Stacks.Count));
    }

    /// <summary>What the worked plan does with the stacks: "K1 on 14 Nov", or each where they go apart.</summary>
    public static string Worked(PlannedCharge own, SeasonNow season, string? stack = null)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(season);
        var groups = (stack is null ? own.Stacks : [stack]).GroupBy(tag => season.ChargeOf(tag)).OrderBy(group => group.Key?.In ?? DateTime.MaxValue).ToList();
        return groups is [{ Key: var only }] ? Where(only) + With(own, only, stack)
            : string.Join("; ", groups.Select(group => $"{string.Join(", ", group)} {(group.Key is null ? Where(null) : $"in {Where(group.Key)}")}"));
    }

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
