using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>What the book knows of the season before any plan is worked. The demonstration yard is invented.</summary>
public sealed class KnownSeasonTests
{
    private static readonly YardState Yard = DemonstrationBook.Yard;
    private static readonly KnownSeason Known = KnownSeason.Of(Yard);

    [Fact]
    public void Charges_that_run_and_loads_planned_by_hand_are_there()
    {
        Assert.Equal(Yard.Charges.Values.Where(charge => charge.IsRunning).Select(charge => charge.Tag).Order(), Known.Loads.Where(load => load.Runs).Select(load => load.Tag).Order());
        Assert.Contains(Known.Loads, load => load is { Tag: "D-41", Kiln: "K2", Runs: false } && load.In == new DateOnly(2026, 11, 3));
    }

    [Fact]
    public void Promise_stands_by_the_owners_own_load()
    {
        var cherry = Known.Promises.Single(promise => promise.Order == "O-301");

        Assert.Equal(Yard.PlannedCharges["D-41"].OutOn, cherry.Out);
        Assert.Equal(Math.Max(0, cherry.Out!.Value.DayNumber - cherry.Due.DayNumber), cherry.LateDays);
    }

    [Fact]
    public void Wood_that_is_to_stay_out_of_kilns_waits_for_none() => Assert.True(Known.Promises.Single(promise => promise.Order == "O-307").IsDry);

    [Fact]
    public void Empty_book_knows_nothing() => Assert.Empty(KnownSeason.Of(YardState.Of([], new(2026, 11, 2))).Loads);
}
