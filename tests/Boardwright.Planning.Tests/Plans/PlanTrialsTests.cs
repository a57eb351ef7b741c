using Boardwright.Numerics;
using Boardwright.Quantities;

namespace Boardwright.Planning.Tests.Plans;

/// <summary>Plans played through many times, against the plan itself, the distribution it draws from, and yards small enough to reckon by hand (invented).</summary>
public sealed class PlanTrialsTests
{
    private const int Yards = 1000;
    private const double TenPercentQuantile = 1.2815515655446004; // standard normal, 0.9

    [Fact]
    public void Where_every_forecast_is_certain_each_order_is_ready_on_the_plans_day()
    {
        for (ulong seed = 1; seed <= Yards; seed++)
        {
            var input = Certain(TinyYards.Make(seed));
            var tables = new PlanTables(input);
            var plan = GreedyPlan.Build(tables);
            var outlook = PlanOutlook.Of(tables, plan);
            var ready = PlanTrials.ReadyDays(tables, plan, 2);

            for (var order = 0; order < ready.Length; order++)
            {
                Assert.True(outlook.Orders[order].Met ? ready[order].All(day => tables.Calendar.DateOf(day) == outlook.Orders[order].ReadyHalf) : ready[order].Length == 0, $"seed {seed}, order {order}");
            }
        }
    }

    [Fact]
    public void Days_of_a_promise_are_in_order_in_thousands_of_yards()
    {
        for (ulong seed = 1; seed <= Yards; seed++)
        {
            var input = TinyYards.Make(seed);
            var plan = GreedyPlan.Build(new PlanTables(input));

            Assert.All(Promise.Of(input, plan).Where(promise => promise.Likely is not null), promise =>
            {
                Assert.True(promise.Early <= promise.Likely && promise.Likely <= promise.Late);
                Assert.InRange(promise.OnTime, 0.0, 1.0);
            });
        }
    }

    // The published distribution function is the check: ln(time) is normal, its median p50, its ninth decile p90.
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(8)]
    public void Share_in_time_of_one_charge_is_the_log_normals_to_one_trial(int dueDay)
    {
        var (half, most) = (60.0, 90.0);
        var input = Yard([("A", half, most)], [new("O-1", SmallYard.Monday.AddDays(dueDay), BoardFeet.From(100), [new("A", true, 0m)], 0, 1, 1m)]);
        var tables = new PlanTables(input);
        var plan = Plan(tables, ["A"]);
        var charge = PlanOutlook.Timed(tables, plan.Charges[0]);

        var share = PlanTrials.ReadyDays(tables, plan)[0].Count(day => day <= dueDay) / (double)PlanTrials.Usual;

        var last = tables.Kilns[0].UnloadStarts.Last(step => tables.Calendar.DayOf(step) <= dueDay);
        var there = last - charge.WarmEnd;
        var expected = there <= 0 ? 0.0 : Distributions.NormalProbability(Math.Log(there / half) / (Math.Log(most / half) / TenPercentQuantile));
        Assert.InRange(share, expected - 1.0 / PlanTrials.Usual, expected + 1.0 / PlanTrials.Usual);
    }

    [Fact]
    public void Slow_charge_makes_the_next_one_in_its_kiln_late()
    {
        Order[] orders = [new("O-1", SmallYard.Monday.AddDays(9), BoardFeet.From(100), [new("B", true, 0m)], 0, 1, 1m)];
        double Share(double mostOfFirst)
        {
            var input = Yard([("A", 60.0, mostOfFirst), ("B", 60.0, 60.0)], orders);
            var tables = new PlanTables(input);
            return Promise.Of(input, Plan(tables, ["A", "B"])).Single().OnTime;
        }

        Assert.Equal(1.0, Share(60.0));
        Assert.InRange(Share(120.0), 0.5, 0.95);
        Assert.True(Share(240.0) < Share(120.0));
    }

    // By hand: A is loaded Monday 08:00 to 11:00, warm at 19:00 (steps 11 and 19). B is certain: 60 h after its own warm-up. It is late when A comes out after the last hour at which B still makes it.
    [Fact]
    public void Chance_of_the_second_charge_is_that_of_the_first_being_out_in_time()
    {
        var input = Yard([("A", 60.0, 90.0), ("B", 60.0, 60.0)], [new("O-1", SmallYard.Monday.AddDays(9), BoardFeet.From(100), [new("B", true, 0m)], 0, 1, 1m)]);
        var tables = new PlanTables(input);
        var plan = Plan(tables, ["A", "B"]);
        var second = PlanOutlook.Timed(tables, plan.Charges[1]);
        var first = PlanOutlook.Timed(tables, plan.Charges[0]);
        var lastUnload = tables.Kilns[0].UnloadStarts.Last(step => tables.Calendar.DayOf(step) <= 9);
        var lastLoad = tables.Kilns[0].LoadStarts.Last(step => step + (second.WarmEnd - second.Load) + 60 <= lastUnload);
        var lastOut = tables.Kilns[0].UnloadStarts.Last(step => step + tables.Kilns[0].Unloading <= lastLoad);
        var expected = Distributions.NormalProbability(Math.Log((lastOut - first.WarmEnd) / 60.0) / (Math.Log(90.0 / 60.0) / TenPercentQuantile));

        Assert.InRange(Promise.Of(input, plan).Single().OnTime, expected - 1.0 / PlanTrials.Usual, expected + 1.0 / PlanTrials.Usual);
    }

    [Fact]
    public void Charge_does_not_dry_while_its_kiln_is_out_of_use_after_the_planned_end()
    {
        var input = Yard([("A", 60.0, 200.0)], [new("O-1", SmallYard.Monday.AddDays(13), BoardFeet.From(100), [new("A", true, 0m)], 0, 1, 1m)]);
        var plan = Plan(new PlanTables(input), ["A"]);
        var down = input with { Kilns = [input.Kilns[0] with { Outages = [new(5 * 24, 9 * 24)] }] };

        Assert.True(Promise.Of(down, plan).Single().Late > Promise.Of(input, plan).Single().Late);
    }

    [Fact]
    public void Two_runs_give_the_same_days()
    {
        var tables = new PlanTables(SeasonYard.Input);
        var plan = GreedyPlan.Build(tables);

        Assert.Equal(PlanTrials.ReadyDays(tables, plan), PlanTrials.ReadyDays(tables, plan));
    }

    private static PlanInput Yard((string Id, double Half, double Most)[] stacks, Order[] orders) => SmallYard.Input with
    {
        Kilns = [SmallYard.Input.Kilns[0]],
        Stacks = [.. stacks.Select(stack => SmallYard.Stack(stack.Id) with { DryingTimes = [SmallYard.Drying("conventional", stack.Half, stack.Most) with { HalfByDay = [Elapsed.FromHours(stack.Half)], MostByDay = [Elapsed.FromHours(stack.Most)] }] })],
        Started = [],
        Orders = orders,
        Heat = SmallYard.Input.Heat with { Boilers = [new("B1", Power.FromKilowatts(500), [])] },
    };

    // Each stack a charge of its own, one after the other as early as may be.
    private static Plan Plan(PlanTables tables, string[] stacks)
    {
        var timetable = new Timetable(tables);
        timetable.Clear();
        foreach (var stack in stacks)
        {
            timetable.Add(timetable.First(0, [Array.FindIndex(tables.Stacks, one => one.Stack.Id == stack)])!);
        }

        return PlanBuilder.Build(tables, timetable.Charges, [.. tables.Orders.Select(_ => 1)]);
    }

    private static PlanInput Certain(PlanInput input) => input with
    {
        Stacks = [.. input.Stacks.Select(stack => stack with { DryingTimes = [.. stack.DryingTimes.Select(time => time with { MostByDay = time.HalfByDay })] })],
        Started = [.. input.Started.Select(charge => charge with { DryMost = charge.DryHalf })],
    };
}
