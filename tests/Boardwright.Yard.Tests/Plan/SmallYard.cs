using System.Collections.Immutable;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>A yard small enough to be planned in a moment: two empty kilns, three stacks and two orders of the demonstration yard (invented), and a plan of the owner's.</summary>
internal static class SmallYard
{
    /// <summary>Cherry for O-301 and quartersawn white oak for O-302; ash that is kept for nobody.</summary>
    public static YardState State { get; } = Shrunk(DemonstrationBook.Yard);

    public static PlanMade Made { get; } = Assert.IsType<Outcome<PlanMade>.Done>(PlanMade.Of(State, new(Days: 42, WorkShare: 0.02))).Value;

    public static SeasonNow Season { get; } = SeasonNow.Of(State, Made);

    private static YardState Shrunk(YardState yard) => yard with
    {
        Kilns = Of(yard.Kilns, "K1", "K2").ToImmutableSortedDictionary(pair => pair.Key, pair => pair.Value with { Charge = null }),
        Charges = yard.Charges.Clear(),
        Stacks = Of(yard.Stacks, "S-01", "S-07", "S-11"),
        Orders = Of(yard.Orders, "O-301", "O-302"),
        PlannedCharges = yard.PlannedCharges.Clear()
            .Add("C-1", new("C-1", "K1", new(2026, 11, 12), new(2026, 11, 24), ["S-07", "S-01"], "O-301", 1))
            .Add("D-1", new("D-1", "K2", new(2026, 11, 16), new(2026, 12, 4), ["S-11"], "O-302", 1)),
    };

    private static ImmutableSortedDictionary<string, T> Of<T>(ImmutableSortedDictionary<string, T> all, params string[] tags) =>
        all.Where(pair => tags.Contains(pair.Key)).ToImmutableSortedDictionary(StringComparer.Ordinal);
}
