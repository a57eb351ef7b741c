using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Tables seen soft when they left the mould: warm, or scrape and pour again.</summary>
internal static class SoftCastings
{
    private const int LookBackDays = 30;
    private static readonly string[] Words = ["soft", "tacky", "dent", "sticky"];

    public static IEnumerable<DayTask> Of(YardState state) =>
        state.Pours.Values.Where(pour => IsSoft(pour.Seen) && pour.DemouldedAt is { } at && state.Today.DayNumber - DateOnly.FromDateTime(at).DayNumber <= LookBackDays).Select(pour =>
            new DayTask(pour.Tag, $"Settle what to do with {pour.Tag}.", $"Seen {DayWords.Of(pour.DemouldedAt, state.Today)}: {pour.Seen}.",
                new("Weighed, B on A", pour.Mixes.Count > 0 ? $"{pour.Mixes.Sum(mix => mix.PartB.Kilograms) / pour.Mixes.Sum(mix => mix.PartA.Kilograms) * 100.0:0.0}" : "none", pour.Mixes.Count > 0 ? "%" : "", state.Resins.TryGetValue(pour.Plan.Resin, out var resin) ? $"{100.0 * resin.Label.RatioBByMass / resin.Label.RatioAByMass:0.0} on the label" : "label not in the book") { Method = "resin-cure", Source = "the weighings of the mix" },
                new(PoursToMind.Seat(state, pour), 7, "the seat"), Duties.Casting, $"/pours/{pour.Tag}", $"Open {pour.Tag}"));

    /// <summary>Whether what was seen says that the resin is not hard.</summary>
    internal static bool IsSoft(string? seen) => seen is not null && Words.Any(word => seen.Contains(word, StringComparison.OrdinalIgnoreCase));
}
