using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Logs, stacks and packs whose tag is lost: unproven until somebody looks.</summary>
internal static class TagsToSettle
{
    public static IEnumerable<DayTask> Of(YardState state) =>
        state.Logs.Values.Where(log => log is { Proven: false, IsSawn: false }).Select(log => Settle(log.Tag, "Look at the end grain and settle which log this is.", log.ConfusedWith, Key(log.Tag), Duties.Mill))
            .Concat(state.Stacks.Values.Where(stack => stack is { Proven: false, IsHere: true }).Select(stack => Settle(stack.Tag, $"Look at an end of {stack.Tag} and settle its species.", stack.ConfusedWith, Key(stack.Tag), Duties.Kilns | Duties.Mill)))
            .Concat(state.Packs.Values.Where(pack => pack is { Proven: false, IsHere: true }).Select(pack => Settle(pack.Tag, $"Look at a board of {pack.Tag} and settle its species.", pack.ConfusedWith, Key(pack.Tag), Duties.Hands | Duties.Office)));

    private static DayTask Settle(string tag, string act, System.Collections.Immutable.ImmutableList<string> with, string path, Duties duty) =>
        new(tag, act, "Its tag is lost: no price, no promise and no treatment claim until it is proven.",
            new("May be", with.Count == 0 ? "unknown" : string.Join(" or ", with), "", "same place, same size") { Source = "the entry of the lost tag" },
            new(20m, 1, "a lost history: a figure for the order of this sheet"), duty, path, "Pictures of both, and sign");

    private static string Key(string tag) => $"/find/tag/{tag}";
}
