using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Packs to band and tag, and packs to load in the next days.</summary>
internal static class PacksToBand
{
    private const int LoadDays = 3;

    public static IEnumerable<DayTask> Of(YardState state)
    {
        var open = state.Packs.Values.Where(pack => pack is { IsHere: true, Order: not null } && state.Orders.GetValueOrDefault(pack.Order) is { IsOpen: true } && !AsOrdered.Of(state, pack).IsWetter).ToList();
        foreach (var group in open.Where(pack => pack is { MayBeLabelled: true, LabelledAt: null }).GroupBy(pack => pack.Order!))
        {
            var footage = group.Sum(pack => pack.Agreed!.Footage.Count);
            yield return Task(state, group.Key, [.. group.Select(pack => pack.Tag)], footage, $"Band and tag {KilnsToLoad.Named([.. group.Select(pack => pack.Tag)])}.", "One tally holds for each; the tag carries it.", 14);
        }

        foreach (var group in open.Where(pack => pack.LabelledAt is not null && state.Orders[pack.Order!].DueOn.DayNumber - state.Today.DayNumber <= LoadDays).GroupBy(pack => pack.Order!))
        {
            var footage = group.Sum(pack => pack.Agreed!.Footage.Count);
            yield return Task(state, group.Key, [.. group.Select(pack => pack.Tag)], footage, $"Load {KilnsToLoad.Named([.. group.Select(pack => pack.Tag)])}.", $"Due {DayWords.Weekday(state.Orders[group.Key].DueOn, state.Today)}.", 1) with { Path = $"/promises/{group.Key}/ship", Key = "Write the load" };
        }
    }

    private static DayTask Task(YardState state, string order, IReadOnlyList<string> packs, double footage, string act, string why, int days) => new(packs[0], act, $"For {state.Orders[order].Customer}. {why}",
        new("In them", $"{footage:#,0}", "bf", $"net tally, for {order}") { Method = "pack-tally", Source = "the agreed tallies", Inputs = [.. packs.Select(tag => (tag, $"{state.Packs[tag].Agreed!.Boards.Count} boards, {state.Packs[tag].Agreed!.Footage.Count:0} bf by {state.Packs[tag].Agreed!.By}"))] },
        new(state.Orders[order].LatePerDayMoney, days, "a day late"), Duties.Hands, $"/tally/{packs[0]}", $"See {packs[0]}");
}
