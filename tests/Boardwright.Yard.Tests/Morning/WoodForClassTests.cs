using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Morning;

/// <summary>Tables planned of wood that is not dry by their day are told of while something can be done.</summary>
public sealed class WoodForClassTests
{
    [Fact]
    public void Wood_in_no_kiln_and_wood_out_too_late_are_named_with_their_tables()
    {
        var yard = DemonstrationBook.Yard;
        var none = yard with { PlannedCharges = yard.PlannedCharges.Clear() };

        var task = Assert.Single(MorningSheet.For(none, null, SeasonNow.NotAsked).Tasks, task => task.Do.StartsWith("Find dry wood for the pour of Sat 28 Nov", StringComparison.Ordinal));

        Assert.Contains("S-16", task.Do, StringComparison.Ordinal);
        Assert.Contains("S-16 for T-1, T-2: in no kiln.", task.Why, StringComparison.Ordinal);
        Assert.Equal(26, task.Stake.Days);
        Assert.True(task.Stake.Money > 0m);
    }

    [Fact]
    public void Owners_load_that_is_out_the_day_before_is_in_time_and_one_on_the_day_is_not()
    {
        var yard = DemonstrationBook.Yard;
        YardState Out(DateOnly on) => yard with { PlannedCharges = yard.PlannedCharges.Clear().Add("X-1", new PlannedCharge("X-1", "K2", new(2026, 11, 3), on, ["S-16", "S-17", "S-21"], null, 1)) };
        bool Named(DateOnly on) => MorningSheet.For(Out(on), null, SeasonNow.NotAsked).Tasks.Any(task => task.Do.StartsWith("Find dry wood", StringComparison.Ordinal));

        Assert.False(Named(new(2026, 11, 27)));
        Assert.True(Named(new(2026, 11, 28)));
    }

    [Fact]
    public void Nothing_is_said_while_the_plan_is_worked_out() =>
        Assert.DoesNotContain(MorningSheet.For(DemonstrationBook.Yard, null, SeasonNow.StillWorked).Tasks, task => task.Do.StartsWith("Find dry wood", StringComparison.Ordinal));
}
