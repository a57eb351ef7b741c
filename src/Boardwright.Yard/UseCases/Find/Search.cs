using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Something of the book that a few letters may mean.</summary>
public sealed record Found(string Tag, string What, string Path);

/// <summary>Looks up tags, customers, species, owners and places at once.</summary>
public static class FindSearch
{
    public static IReadOnlyList<Found> For(YardState state, string? text)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (string.IsNullOrWhiteSpace(text))
        {
            return [];
        }

        return [.. All(state).Where(found => found.Tag.Contains(text, StringComparison.OrdinalIgnoreCase) || found.What.Contains(text, StringComparison.OrdinalIgnoreCase)).Take(60)];
    }

    private static IEnumerable<Found> All(YardState state) =>
        state.Orders.Values.Select(order => new Found(order.Tag, $"order of {order.Customer}: {string.Join("; ", order.Lines.Select(line => line.Asked.Goods))}", $"/promises/{order.Tag}"))
            .Concat(state.Stacks.Values.Select(stack => new Found(stack.Tag, $"stack, {stack.Species} {stack.Thickness}, {stack.Place}, owner {stack.Owner}", $"/stacks/{stack.Tag}")))
            .Concat(state.Logs.Values.Select(log => new Found(log.Tag, $"log, {log.Species}, from {log.Source}, owner {log.Owner}", $"/logs/{log.Tag}")))
            .Concat(state.Charges.Values.Select(charge => new Found(charge.Tag, $"charge in {charge.Kiln}: {string.Join(", ", charge.Stacks)}", $"/charges/{charge.Tag}")))
            .Concat(state.Packs.Values.Select(pack => new Found(pack.Tag, $"pack, {pack.Species} {pack.Thickness}, from {pack.Stack}", $"/tally/{pack.Tag}")))
            .Concat(state.Pours.Values.Select(pour => new Found(pour.Tag, $"pour on {pour.PourOn:d MMM}", $"/pours/{pour.Tag}")));
}
