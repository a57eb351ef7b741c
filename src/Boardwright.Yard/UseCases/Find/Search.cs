using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What is looked for. Every part that is given has to hold; text is looked for in tag, wood, owner, customer, place and goods.</summary>
/// <param name="Text">Words; each has to be there.</param>
/// <param name="Species">Common name, as in <see cref="FindSearch.Woods"/>.</param>
/// <param name="Quarters">Rough thickness in quarters of an inch.</param>
/// <param name="Place">A place of the book.</param>
/// <param name="DrierThan">Moisture at most.</param>
public sealed record FindQuery(string? Text = null, string? Species = null, int? Quarters = null, string? Place = null, MoistureContent? DrierThan = null)
{
    /// <summary>Nothing is asked.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(Text) && Species is null && Quarters is null && Place is null && DrierThan is null;
}

/// <summary>Something of the book that was found.</summary>
/// <param name="Tag">Its tag.</param>
/// <param name="What">What it is, in a line.</param>
/// <param name="Where">Where it is, whose, and what it waits for.</param>
/// <param name="Much">How much of it; null where nothing is counted.</param>
/// <param name="Path">Its page.</param>
/// <param name="Kind">Order, stack, log …</param>
public sealed record Found(string Tag, string What, string Where, Traced? Much, string Path, string Kind);

/// <summary>Looks things up: by tag, by wood, thickness, moisture and place, by customer.</summary>
public static class FindSearch
{
    private const int ShownMost = 60;

    /// <summary>Woods that stand on a tag now.</summary>
    public static IReadOnlyList<string> Woods(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.Stacks.Values.Where(stack => stack.IsHere).Select(stack => stack.Species.CommonName).Concat(state.Logs.Values.Where(log => !log.IsSawn).Select(log => log.Species.CommonName)).Distinct().Order(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>Thicknesses of the stacks here, in quarters.</summary>
    public static IReadOnlyList<int> Thicknesses(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.Stacks.Values.Where(stack => stack.IsHere).Select(stack => stack.Thickness.Quarters).Distinct().Order()];
    }

    /// <summary>What is found; a tag written in full comes first, then what is here, then what is gone.</summary>
    public static IReadOnlyList<Found> For(YardState state, FindQuery query)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(query);
        if (query.IsEmpty)
            return [];
        var words = (query.Text ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. All(state, query).Where(found => words.All(word => Holds(found.Tag, word) || Holds(found.What, word) || Holds(found.Where, word)))
            .OrderByDescending(found => string.Equals(found.Tag, query.Text?.Trim(), StringComparison.OrdinalIgnoreCase)).Take(ShownMost)];
    }

    private static bool Holds(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<Found> All(YardState state, FindQuery query)
    {
        var wood = query.Species is not null || query.Quarters is not null || query.Place is not null || query.DrierThan is not null;
        var stacks = state.Stacks.Values.Where(stack => Fits(stack, query)).OrderByDescending(stack => stack.IsHere).Select(stack => FindRows.Of(state, stack));
        var logs = query.Quarters is null && query.DrierThan is null && query.Place is null
            ? state.Logs.Values.Where(log => (query.Species is null || log.Species.CommonName == query.Species)).Select(log => FindRows.Of(state, log))
            : [];
        var packs = query.Place is null && query.DrierThan is null
            ? state.Packs.Values.Where(pack => (query.Species is null || pack.Species.CommonName == query.Species) && (query.Quarters is null || pack.Thickness.Quarters == query.Quarters)).Select(pack => FindRows.Of(state, pack))
            : [];
        return wood ? stacks.Concat(packs).Concat(logs)
            : state.Orders.Values.Select(order => FindRows.Of(state, order)).Concat(stacks).Concat(state.Charges.Values.Select(charge => FindRows.Of(state, charge))).Concat(packs).Concat(logs).Concat(state.Pours.Values.Select(pour => FindRows.Of(state, pour)));
    }

    private static bool Fits(Stack stack, FindQuery query) =>
        (query.Species is null || (stack.Proven && stack.Species.CommonName == query.Species))
        && (query.Quarters is null || stack.Thickness.Quarters == query.Quarters)
        && (query.Place is null || (stack.IsHere && stack.Place == query.Place))
        && (query.DrierThan is null || (stack.IsHere && stack.Moisture?.Mean is { } mean && mean <= query.DrierThan));
}
