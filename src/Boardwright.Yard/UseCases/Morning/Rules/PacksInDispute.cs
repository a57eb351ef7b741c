using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Packs with two tallies that differ.</summary>
internal static class PacksInDispute
{
    public static IEnumerable<DayTask> Of(YardState state)
    {
        foreach (var pack in state.Packs.Values.Where(pack => pack is { IsDisputed: true, IsHere: true }))
        {
            var (least, most) = (pack.Tallies.Min(tally => tally.Footage.Count), pack.Tallies.Max(tally => tally.Footage.Count));
            var price = WoodWorth.PerBf(state, pack.Species, pack.Thickness, Book.Facts.Product.Boards);
            yield return new(pack.Tag, $"Look a third time at the boards of {pack.Tag} that differ.", $"Tallied {string.Join(" and ", pack.Tallies.Select(tally => $"{tally.Footage.Count:0} bf by {tally.By}"))}. No tag is printed until one holds.",
                new("Between them", $"{most - least:0}", "bf", $"{pack.Tallies.Count} tallies")
                {
                    Method = "pack-tally",
                    Source = "both signed tallies stay in the book",
                    Inputs = [.. pack.Tallies.Select(tally => (tally.By, $"{tally.Boards.Count} boards, {tally.Footage.Count:0} bf, {tally.At:d MMM HH:mm}"))],
                },
                new((decimal)most * (price?.Money ?? 0m) * 0.05m + (decimal)(most - least) * (price?.Money ?? 0m), 1, "the difference, and one part in twenty of the pack for a quarrel about it: common practice"), Duties.Office | Duties.Hands, $"/tally/{pack.Tag}", $"Look at {pack.Tag}");
        }
    }
}
