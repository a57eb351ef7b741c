using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>The small book's yard, planned once in a test run.</summary>
internal static class SmallYard
{
    public static YardState State { get; } = SmallBook.Open().State;

    public static PlanMade Made { get; } = Assert.IsType<Outcome<PlanMade>.Done>(PlanMade.Of(State, new(Days: 42, WorkShare: 0.02))).Value;

    public static SeasonNow Season { get; } = SeasonNow.Of(State, Made);
}
