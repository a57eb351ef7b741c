using Boardwright.Planning.Solver;
using Boardwright.Quantities;

namespace Boardwright.Planning.Tests;

/// <summary>One kiln, one or two stacks, and one thing at a time in the way.</summary>
public sealed class LateReasonsTests
{
    private static readonly SolverLimits Limits = new(60, 1, 5);

    [Fact]
    public void Too_little_wood_is_no_stock() => Assert.Equal([LateCause.NoStock], Causes(Yard() with { Orders = [Order("S-1", 3) with { Quantity = BoardFeet.From(451) }] }));

    [Fact]
    public void Wood_that_dries_too_long_is_not_dry() => Assert.Equal([LateCause.NotDry], Causes(Yard() with { Orders = [Order("S-1", 1)] }));

    [Fact]
    public void A_boiler_that_is_out_is_heat()
    {
        var yard = Yard();
        Assert.Equal([LateCause.Heat], Causes(yard with { Heat = yard.Heat with { Boilers = [new("B1", Power.FromKilowatts(40), [new(0, 24)])] } }));
    }

    [Fact]
    public void A_long_holiday_is_crew()
    {
        var yard = Yard();
        Assert.Equal([LateCause.Crew], Causes(yard with { Calendar = yard.Calendar with { CrewWindows = [.. yard.Calendar.CrewWindows.Where(w => w.From / 4 is not (2 or 3))] } }));
    }

    [Fact]
    public void A_charge_in_the_way_is_a_full_kiln()
    {
        var yard = Yard();
        var causes = Causes(yard with
        {
            Stacks = [.. yard.Stacks, SmallYard.Stack("S-9") with { DryingTimes = [] }],
            Started = [new("C-1", "K1", ["S-9"], Elapsed.FromDays(3), Elapsed.FromDays(3), Power.FromKilowatts(1))],
        });
        Assert.Equal([LateCause.KilnFull], causes);
    }

    [Fact]
    public void A_weightier_order_for_the_same_kiln_goes_first()
    {
        var yard = Yard();
        var reason = Only(yard with
        {
            Stacks = [.. yard.Stacks, SmallYard.Stack("S-2") with { Family = "softwood", DryingTimes = yard.Stacks[0].DryingTimes }],
            Orders = [yard.Orders[0], Order("S-2", 3) with { LateMoneyPerDay = 100m }],
        });
        Assert.Equal([LateCause.KilnFull, LateCause.OtherOrders], reason.Causes);
        Assert.EndsWith("other orders go first: K1 dries S-2 for O-S-2 before", reason.Words, StringComparison.Ordinal);
    }

    private static IReadOnlyList<LateCause> Causes(PlanInput input) => Only(input).Causes;

    private static LateReason Only(PlanInput input)
    {
        var cancel = TestContext.Current.CancellationToken;
        var answer = YardSolverTests.Done(YardSolver.Solve(input, Limits, cancel: cancel));
        var reason = Assert.Single(LateReasons.Find(input, answer.Plan, Limits, cancel));
        Assert.Equal(answer.Outlook.Orders.First(order => order.LateDays > 0).Order, reason.Order);
        return reason;
    }

    /// <summary>One stack that, loaded on Monday, is out on Thursday, the day its order is due.</summary>
    private static PlanInput Yard()
    {
        var calendar = new PlanCalendar(SmallYard.Monday, 10, 4, [.. Enumerable.Range(0, 10).Select(day => new StepRange(day * 4 + 1, day * 4 + 3))], 1, []);
        return SmallYard.Input with
        {
            Calendar = calendar,
            Kilns = [SmallYard.Kiln("K1", "conventional", 2000, 14, 65, 30, 17, [12]) with { Holding = SmallYard.Steady(10, 5) }],
            Stacks = [SmallYard.Stack("S-1") with { DryingTimes = [SmallYard.Drying("conventional", 40, 40)] }],
            Started = [],
            Orders = [Order("S-1", 3)],
            Heat = new(4, [new("B1", Power.FromKilowatts(40), [])], SmallYard.Steady(10, 2), Power.FromKilowatts(0), 0m),
        };
    }

    private static Order Order(string stack, int due) => new("O-" + stack, SmallYard.Monday.AddDays(due), BoardFeet.From(400), [new(stack, true, 0m)], 0, 3, 10m);
}
