using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>Wood advised for an order is told with its day by the worked plan, and one stack is advised once. The demonstration yard is invented.</summary>
public sealed class OrderCoverTests
{
    private static readonly YardState Yard = DemonstrationBook.Yard;
    private static readonly PlanMade Made = DemonstrationPlan.Made();
    private static readonly SeasonNow Season = SeasonNow.Of(Yard, Made);

    [Fact]
    public void Advice_names_the_stack_as_good_as_the_wood_named_and_whether_it_meets_the_day()
    {
        var cover = Season.Covers["O-303"];

        Assert.Equal("S-06", cover.Stack);
        Assert.StartsWith($"Put S-06 behind O-303: {(cover.Ready.LateDays > 0 ? $"what falls short then comes {cover.Ready.LateDays} day" : "in time")}", cover.Do, StringComparison.Ordinal);
        Assert.Equal(cover.Ready.LateDays > 0, cover.Do.Contains("the least late there is", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheet_gives_the_same_advice_in_its_first_words()
    {
        var sheet = MorningSheet.For(Yard, null, Season);

        Assert.Equal(Season.Covers["O-303"].Do, sheet.Tasks.Single(task => task.At == "O-303" && task.Standing is not null).Do);
        Assert.DoesNotContain(MorningSheet.For(Yard, null, SeasonNow.StillWorked).Tasks, task => task.Do.StartsWith("Put S-", StringComparison.Ordinal));
    }

    [Fact]
    public void Wood_whose_sawn_thickness_nobody_wrote_does_not_stand_behind_an_order_that_asks_for_one()
    {
        Assert.Null(Yard.Stacks["S-13"].SawnThickness);
        Assert.NotNull(Yard.Orders["O-310"].Lines[0].Asked.ThicknessMinMm);

        Assert.False(Season.Covers.ContainsKey("O-310"));
        Assert.True(OrderCover.MayFallShort(Yard, Made, Season.Of("O-310", 1)!));
        Assert.Equal(OrderCover.Watch("O-310"), MorningSheet.For(Yard, null, Season).Tasks.Single(task => task.At == "O-310" && task.Standing is not null).Do);
    }

    [Fact]
    public void Day_of_a_stack_in_a_planned_charge_is_not_before_that_charge_is_emptied()
    {
        var index = Index("O-303");
        Assert.All(Made.Answer.Outlook.Charges.Where(charge => charge.Charge.Started is null).SelectMany(charge => charge.Charge.Stacks.Select(stack => (stack, Out: Made.Input.Calendar.TimeOf(charge.EmptyAt).Day(), charge.Charge.Kiln))), one =>
        {
            var ready = WorkedReady.Of(Made, index, new(one.stack, true, 0m));

            Assert.True(ready.On >= one.Out, $"{one.stack}: {ready.On} before {one.Out}");
            Assert.Equal((one.Kiln, true, Math.Max(0, ready.On!.Value.DayNumber - Made.Input.Orders[index].Due.DayNumber)), (ready.Kiln, ready.InPlan, ready.LateDays));
        });
    }

    [Fact]
    public void What_serves_another_order_in_the_plan_is_said_and_taken_off()
    {
        var serving = Made.Answer.Plan.Servings.First(one => one.Quantity.Count > 100.0 && one.Order != "O-303");
        var ready = WorkedReady.Of(Made, Index("O-303"), new(serving.Stack, true, 0m));

        Assert.Contains(serving.Order, ready.Serves);
        Assert.Contains($"It serves {serving.Order}", ready.Words, StringComparison.Ordinal);
        Assert.True(ready.SpareBf <= Made.Yard.Yields[serving.Stack].Likely - serving.Quantity.Count + 0.1);
        Assert.Contains($"it serves {serving.Order}", new OrderCover("O-303", ready, "").Do, StringComparison.Ordinal);
    }

    /// <summary>Keeping a whole stack for one order must not take from another what the plan serves it with.</summary>
    [Fact]
    public void Stack_that_serves_another_order_is_not_kept_whole()
    {
        var serving = Made.Answer.Plan.Servings.First(one => one.Quantity.Count > 100.0 && one.Order != "O-303");

        Assert.False(new OrderCover("O-303", WorkedReady.Of(Made, Index("O-303"), new(serving.Stack, true, 0m)), "").MayBeKept);
        Assert.True(Season.Covers["O-303"].MayBeKept);
    }

    /// <summary>What was kept for an order beside the wood it names is wood the planner may give it, and nobody else.</summary>
    [Fact]
    public void Stack_kept_for_an_order_serves_that_order_alone()
    {
        var kept = Yard with { Stacks = Yard.Stacks.SetItem("S-06", Yard.Stacks["S-06"] with { ReservedFor = "O-303" }) };

        var orders = Assert.IsType<Boardwright.Quantities.Outcome<PlanYard>.Done>(PlanYard.Of(kept, 42)).Value.Input.Orders;

        Assert.Contains(orders.Single(order => order.Id == "O-303").Wood, wood => wood.Stack == "S-06");
        Assert.All(orders.Where(order => order.Id != "O-303"), order => Assert.DoesNotContain(order.Wood, wood => wood.Stack == "S-06"));
    }

    /// <summary>Kept wood that is ready stands behind its order though the plan needs nothing of it; what comes later does not.</summary>
    [Fact]
    public void Ready_stack_kept_for_an_order_counts_towards_enough()
    {
        var orders = Enumerable.Range(0, Made.Input.Orders.Count).Where(order => Made.SpareBf(order) is not null).ToList();
        var found = (from order in orders
                     from stack in Made.Yard.Yields.Keys
                     where !Made.ServedBy(order).Contains(stack)
                     let ready = WorkedReady.Of(Made, order, new(stack, true, 0m))
                     where ready is { InPlan: true, On: not null, SpareBf: > 1.0 }
                     select (order, ready)).ToList();
        var (soon, early) = found.First(one => one.ready.On <= Made.Answer.Outlook.Orders[one.order].ReadyHalf);
        var (later, late) = found.First(one => one.ready.On > Made.Answer.Outlook.Orders[one.order].ReadyHalf && one.ready.LateDays > 0);

        Assert.Equal(Made.SpareBf(soon)!.Value + early.SpareBf, Keeping(soon, early.Stack).SpareBf(soon)!.Value, 6);
        Assert.Equal(Made.SpareBf(later)!.Value, Keeping(later, late.Stack).SpareBf(later)!.Value, 6);
    }

    private static PlanMade Keeping(int index, string stack) => Made with
    {
        Yard = Made.Yard with { Lines = [.. Made.Yard.Lines.Select((line, at) => at == index ? line with { Kept = [stack] } : line)] },
        Input = Made.Input with { Orders = [.. Made.Input.Orders.Select((order, at) => at == index ? order with { Wood = [.. order.Wood, new(stack, true, 0m)] } : order)] },
    };

    [Fact]
    public void Wood_kept_for_an_order_and_the_rest_of_a_shaky_one_are_promised_to_no_stranger()
    {
        var kept = Yard with { Stacks = Yard.Stacks.SetItem("S-06", Yard.Stacks["S-06"] with { ReservedFor = "O-303" }) };
        IEnumerable<string> Offered(YardState state) => Assert.IsType<Boardwright.Quantities.Outcome<PromiseAnswer>.Done>(PromiseAnswer.Of(state, Made, "northern red oak", "4/4", "100", "2026-12-10")).Value.Stacks.Select(one => one.Stack);

        Assert.True(Made.Enough[Index("O-303")] < 0.85);
        Assert.Contains("S-06", Offered(Yard));
        Assert.Contains("S-06 is the stack to put behind O-303", Assert.IsType<Boardwright.Quantities.Outcome<PromiseAnswer>.Done>(PromiseAnswer.Of(Yard, Made, "northern red oak", "4/4", "100", "2026-12-10")).Value.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("S-06", Offered(kept));
        Assert.DoesNotContain("S-10", Offered(Yard));
    }

    [Fact]
    public void Stack_advised_for_one_order_is_offered_to_no_other()
    {
        var advised = Season.Covers.Values.Select(cover => cover.Stack).ToList();

        Assert.Equal(advised.Distinct(), advised);
        Assert.All(Season.Sheet!.Promises, promise => Assert.DoesNotContain(
            WaysOut.Of(Yard, Made, promise.Line.Id, Season.Covers), way => Season.Covers.Values.Any(cover => cover.Order != promise.Line.Id && way.Do.Contains($" from {cover.Stack}.", StringComparison.Ordinal))));
    }

    [Fact]
    public void Other_wood_offered_is_ready_by_the_worked_plan_where_that_loads_it()
    {
        foreach (var promise in Season.Sheet!.Promises)
        {
            foreach (var way in WaysOut.Of(Yard, Made, promise.Line.Id, Season.Covers).Where(way => way.Do.Contains(" from S-", StringComparison.Ordinal)))
            {
                var stack = way.Do[(way.Do.IndexOf(" from S-", StringComparison.Ordinal) + 6)..^1];

                Assert.True(Season.ChargeOf(stack) is not { } charge || charge.Out.Day() <= promise.Due, $"{promise.Line.Id}: {way.Do}");
            }
        }
    }

    private static int Index(string order) => Made.Input.Orders.ToList().FindIndex(one => one.Id == order);
}
