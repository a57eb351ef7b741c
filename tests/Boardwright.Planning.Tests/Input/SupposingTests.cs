using Boardwright.Planning.Solver;
using Boardwright.Quantities;

namespace Boardwright.Planning.Tests;

public sealed class SupposingTests
{
    private static readonly PlanInput Input = SmallYard.Input;

    [Fact]
    public void Bought_wood_serves_its_order_from_its_day_on_and_costs_its_money()
    {
        var supposed = Supposing.Buy(Input, "O-4", SmallYard.Monday.AddDays(3), 270m);
        var plan = SmallYard.Plan with { Servings = [.. SmallYard.Plan.Servings, new("O-4", "bought for O-4", BoardFeet.From(90))] };

        Assert.Empty(PlanInputCheck.Refusals(supposed));
        Assert.Empty(PlanCheck.Faults(supposed, plan));
        var (before, after) = (PlanOutlook.Of(Input, SmallYard.Plan), PlanOutlook.Of(supposed, plan));
        Assert.Equal(new OrderOutlook("O-4", true, SmallYard.Monday.AddDays(3), SmallYard.Monday.AddDays(3), 0, 0), after.Orders[3]);
        Assert.Equal(before.Score.CostCents + 27000, after.Score.CostCents);
    }

    [Fact]
    public void Days_worked_too_are_added_and_no_other_day_changes()
    {
        var supposed = Supposing.WorkToo(Input, day => day.DayOfWeek == DayOfWeek.Saturday, new(8, 0), new(12, 0));

        Assert.Empty(PlanInputCheck.Refusals(supposed));
        Assert.Equal(Input.Calendar.CrewWindows.Count + 2, supposed.Calendar.CrewWindows.Count);
        Assert.Contains(new StepRange(5 * 24 + 8, 5 * 24 + 12), supposed.Calendar.CrewWindows);
        Assert.Subset(supposed.Calendar.CrewWindows.ToHashSet(), Input.Calendar.CrewWindows.ToHashSet());
        Assert.Empty(PlanCheck.Faults(supposed, SmallYard.Plan));
    }

    [Fact]
    public void One_more_order_is_planned_with_the_others()
    {
        var supposed = Supposing.Take(Input, new("O-9", SmallYard.Monday.AddDays(12), BoardFeet.From(100), [new("S-14", true, 0m)], 0, 5, 50m));

        var answer = YardSolverTests.Done(YardSolver.Solve(supposed, new(60, 1, 0.5), cancel: TestContext.Current.CancellationToken));

        Assert.Empty(PlanCheck.Faults(supposed, answer.Plan, answer.Outlook));
        Assert.Equal(0, answer.Outlook.Orders.First(order => order.Order == "O-9").LateDays);
    }

    [Fact]
    public void Plan_begun_from_yesterdays_is_no_worse_and_keeps_started_charges()
    {
        var limits = new SolverLimits(60, 1, 0.2);
        var yesterday = YardSolverTests.Done(YardSolver.Solve(SeasonYard.Input, limits, cancel: TestContext.Current.CancellationToken));
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();

        var today = YardSolverTests.Done(YardSolver.Solve(SeasonYard.Input, limits with { Start = yesterday.Plan }, cancel: stopped.Token)); // no search: only what is taken over
        var first = YardSolverTests.Done(YardSolver.Solve(SeasonYard.Input, limits, cancel: stopped.Token));

        Assert.Empty(PlanCheck.Faults(SeasonYard.Input, today.Plan, today.Outlook));
        Assert.True(today.Outlook.Score <= first.Outlook.Score);
        Assert.Equal(SeasonYard.Input.Started.Select(charge => charge.Id), today.Plan.Charges.Select(charge => charge.Started).OfType<string>());
    }

    [Fact]
    public void Order_that_asks_more_than_all_its_wood_and_boards_longer_than_any_kiln_are_answered_with_the_reason()
    {
        PlanInput[] impossible =
        [
            Input with { Orders = [new("O-1", SmallYard.Monday.AddDays(9), BoardFeet.From(1e6), [new("S-1", true, 0m)], 0, 3, 10m)] },
            Input with { Orders = [new("O-1", SmallYard.Monday.AddDays(9), BoardFeet.From(100), [new("S-99", true, 0m)], 0, 3, 10m)], Stacks = [.. Input.Stacks, SmallYard.Stack("S-99") with { LongestPiece = Length.FromFeet(40) }] },
        ];
        foreach (var input in impossible)
        {
            var answer = YardSolverTests.Done(YardSolver.Solve(input, new(60, 1, 0.2), cancel: TestContext.Current.CancellationToken));
            var reason = Assert.Single(LateReasons.Find(input, answer.Plan, new(60, 1, 0.2), TestContext.Current.CancellationToken));

            Assert.Empty(PlanCheck.Faults(input, answer.Plan, answer.Outlook));
            Assert.False(answer.Outlook.Orders[0].Met);
            Assert.Equal([LateCause.NoStock], reason.Causes);
        }
    }
}
