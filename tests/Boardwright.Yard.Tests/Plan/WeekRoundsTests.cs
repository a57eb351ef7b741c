using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>What comes round in the demonstration's first week (invented data).</summary>
public sealed class WeekRoundsTests
{
    private static readonly YardState State = DemonstrationBook.Yard;
    private static readonly DateOnly Monday = DemonstrationBook.FirstDay;
    private static readonly IReadOnlyList<RoundOfWeek> Week = WeekRounds.Of(State, Monday);

    [Fact]
    public void Every_day_has_a_round_with_the_gauges_of_the_vacuum_kiln_while_it_runs()
    {
        var rounds = Week.Where(one => one.What.StartsWith("Rounds", StringComparison.Ordinal)).ToList();

        Assert.Equal(Enumerable.Range(0, 7).Select(Monday.AddDays), rounds.Select(one => one.Day));
        Assert.Contains("V-19", rounds[0].Which, StringComparison.Ordinal);
        Assert.Contains("stoke B2", rounds[0].Which, StringComparison.Ordinal);
        Assert.DoesNotContain("stoke B1", rounds[0].Which, StringComparison.Ordinal);
    }

    /// <summary>Shavings and packs wait for no kiln: the plan's promises do not name them, the wall sheet does.</summary>
    [Fact]
    public void Order_that_waits_for_no_kiln_is_named_on_its_day()
    {
        var week = WeekRounds.Of(State, Monday, SeasonNow.Of(State, DemonstrationPlan.Made()).Sheet);

        Assert.Contains(week, one => one.What == "O-308 due" && one.Day == new DateOnly(2026, 11, 6));
        Assert.DoesNotContain(week, one => one.What == "O-301 due");
    }

    [Fact]
    public void Samples_are_weighed_on_the_days_they_have_been_so_far() =>
        Assert.All(Week.Where(one => one.What == "Weigh C-61"), one => Assert.Contains("samples in K1", one.Which, StringComparison.Ordinal));

    [Fact]
    public void Stack_is_named_once_in_a_week_at_most_on_the_day_its_reading_is_due()
    {
        var named = Week.Where(one => one.What == "Read stacks").SelectMany(one => one.Which.Split(", with")[0].Split(", ")).ToList();

        Assert.NotEmpty(named);
        Assert.Equal(named.Distinct(), named);
        Assert.All(named, tag => Assert.True(State.Stacks[tag].Moisture is not { } reading || reading.At.Day().AddDays(7) <= Monday.AddDays(6)));
    }

    [Fact]
    public void Days_gone_by_are_left_out() => Assert.All(WeekRounds.Of(State, Monday.AddDays(-5)), one => Assert.True(one.Day >= Monday));

    [Fact]
    public void Charge_is_watched_no_longer_than_it_is_likely_in_its_kiln()
    {
        var later = WeekRounds.Of(State, Monday.AddDays(35));

        Assert.All(State.Charges.Values.Where(charge => charge.IsRunning && charge.ExpectedOutOn < Monday.AddDays(35)), charge => Assert.DoesNotContain(later, one => one.Which.Contains(charge.Tag, StringComparison.Ordinal) || one.What.Contains(charge.Tag, StringComparison.Ordinal)));
    }

    [Fact]
    public void Boiler_is_stoked_after_the_day_it_is_expected_back()
    {
        var back = State.Boilers["B1"].Down!.BackExpectedOn!.Value;
        var rounds = WeekRounds.Of(State, back.AddDays(1)).Where(one => one.Which.Contains("stoke", StringComparison.Ordinal)).ToList();

        Assert.Contains(WeekRounds.Of(State, back), one => one.What == "B1 back" && one.Day == back);
        Assert.All(rounds, one => Assert.Contains("stoke B1", one.Which, StringComparison.Ordinal));
    }

    [Fact]
    public void Kiln_is_watched_while_the_plan_has_a_charge_in_it_and_no_longer()
    {
        var sheet = SmallYard.Season.Sheet!;
        var charge = sheet.Kilns.SelectMany(row => row.Charges).First();

        bool Watched(DateOnly day) => WeekRounds.Of(SmallYard.State, day, sheet).Any(one => one.Day == day && one.Which.Contains($"{charge.Kiln} bulbs", StringComparison.Ordinal));

        Assert.True(Watched(charge.In.Day()));
        Assert.True(Watched(charge.Out.Day()));
        Assert.Equal(sheet.Kilns.Single(row => row.Kiln == charge.Kiln).Charges.Any(one => one.In.Day() <= charge.Out.Day().AddDays(1) && one.Out.Day() > charge.Out.Day()), Watched(charge.Out.Day().AddDays(1)));
    }
}
