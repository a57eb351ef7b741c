using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.Tests.Plan;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Morning;

/// <summary>The load of today: the owner's, the worked plan's where the owner planned none, and the question which where they differ.</summary>
public sealed class KilnsToLoadTests
{
    private static readonly SeasonCharge Any = SmallYard.Season.ChargeOf("S-07")!;
    private static readonly SeasonCharge Today = Any with { Tag = null, In = SmallYard.State.Today.ToDateTime(new(8, 0)) };
    private static readonly SeasonNow Season = SmallYard.Season with { Number = 3, Sheet = SmallYard.Season.Sheet! with { Kilns = [(Today.Kiln, [Today])] } };
    private static readonly YardState Free = SmallYard.State with { Kilns = SmallYard.State.Kilns.SetItem(Today.Kiln, SmallYard.State.Kilns[Today.Kiln] with { Charge = null, Outages = [] }), PlannedCharges = SmallYard.State.PlannedCharges.Clear() };
    private static readonly YardState Own = Free with { PlannedCharges = Free.PlannedCharges.Add("X-1", new PlannedCharge("X-1", Today.Kiln, Free.Today.AddDays(1), Free.Today.AddDays(20), ["S-01"], null, 1)) };

    [Fact]
    public void Load_of_the_worked_plan_is_told_where_the_owner_planned_none()
    {
        var task = Task(Free, Season with { Beside = null });

        Assert.StartsWith("Load ", task.Do, StringComparison.Ordinal);
        Assert.EndsWith($"into {Today.Kiln}.", task.Do, StringComparison.Ordinal);
        Assert.StartsWith("Plan 3, the worked one", task.Why, StringComparison.Ordinal);
        Assert.Contains("stacks=", task.Path, StringComparison.Ordinal);
    }

    [Fact]
    public void Kiln_that_is_not_empty_is_not_loaded() =>
        Assert.DoesNotContain(MorningSheet.For(Free with { Kilns = Free.Kilns.SetItem(Today.Kiln, Free.Kilns[Today.Kiln] with { Charge = "C-0" }) }, null, Season with { Beside = null }).Tasks, task => task.Do.EndsWith($"into {Today.Kiln}.", StringComparison.Ordinal));

    [Fact]
    public void Owners_load_and_another_of_a_better_plan_are_settled_between()
    {
        var task = Task(Own, Season with { Beside = Better(worked: true) });

        Assert.StartsWith($"Settle which load goes into {Today.Kiln}: yours of ", task.Do, StringComparison.Ordinal);
        Assert.Contains("or the worked plan’s of today", task.Do, StringComparison.Ordinal);
        Assert.StartsWith("X-1: S-01. Worked: ", task.Why, StringComparison.Ordinal);
        Assert.Equal("/season/take", task.Path);
        var plans = Better(worked: true);
        Assert.True(plans.Own.LateMoney > plans.Worked.LateMoney);
        Assert.Equal(plans.Own.LateMoney - plans.Worked.LateMoney, task.Stake.Money);
    }

    [Fact]
    public void Owners_load_stands_where_no_plan_is_better()
    {
        var task = Task(Own, Season with { Beside = Better(worked: false) });

        Assert.Equal($"Stage S-01 by the door of {Today.Kiln}.", task.Do);
        Assert.Equal("/charges/new?plan=X-1", task.Path);
    }

    [Fact]
    public void Load_of_today_says_whether_its_hour_is_past()
    {
        Assert.EndsWith("at 08:00.", Today.LoadWords(Today.In.AddHours(-1)), StringComparison.Ordinal);
        Assert.Equal($"Load {Today.Kiln} today still, or on the next working day: planned for 08:00.", Today.LoadWords(Today.In.AddHours(6)));
    }

    private static DayTask Task(YardState state, SeasonNow season) =>
        Assert.Single(MorningSheet.For(state, null, season).Tasks, task => task.Much.Label is "Load" or "Orders late" && task.At == Today.Kiln);

    // The two plans of the small yard; one of them keeps promises better, and they are laid the way round that is asked for.
    private static PlansBeside Better(bool worked)
    {
        var beside = SmallYard.Season.Beside!;
        var turned = beside with { Own = beside.Worked, Worked = beside.Own };
        Assert.NotEqual(beside.WorkedIsBetter, turned.WorkedIsBetter);
        return beside.WorkedIsBetter == worked ? beside : turned;
    }
}
