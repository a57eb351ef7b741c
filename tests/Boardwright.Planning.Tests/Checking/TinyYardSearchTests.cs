using Boardwright.Quantities;

namespace Boardwright.Planning.Tests;

public sealed class TinyYardSearchTests
{
    public static TheoryData<ulong> Seeds() => [.. Enumerable.Range(1, 12).Select(i => (ulong)i)];

    [Theory, MemberData(nameof(Seeds))]
    public void The_best_plan_of_a_tiny_yard_breaks_no_rule(ulong seed)
    {
        var input = TinyYards.Make(seed);
        Assert.Empty(PlanInputCheck.Refusals(input));

        if (TinyYardSearch.Best(input) is { } best)
        {
            var outlook = PlanOutlook.Of(input, best.Plan);
            Assert.Empty(PlanCheck.Faults(input, best.Plan, outlook));
            Assert.Equal(best.Score, outlook.Score);
        }
    }

    [Fact]
    public void Two_stacks_for_two_orders_ride_together_when_apart_would_be_late()
    {
        // Both must be out by Friday; 2 days of drying each, so only a shared charge or two kilns make it.
        var input = SmallYard.Input with
        {
            Calendar = new(SmallYard.Monday, 6, 4, [.. Enumerable.Range(0, 6).Select(day => new StepRange(day * 4 + 1, day * 4 + 3))], 1, []),
            Kilns = [SmallYard.Kiln("K1", "conventional", 2000, 14, 65, null, 17, [6])],
            Stacks = [.. new[] { "S-1", "S-2" }.Select(id => SmallYard.Stack(id) with { DryingTimes = [SmallYard.Drying("conventional", 48, 48)] })],
            Started = [],
            Orders = [.. new[] { "S-1", "S-2" }.Select(id => new Order("O-" + id, SmallYard.Monday.AddDays(3), BoardFeet.From(400), [new(id, true, 0m)], 0, 3, 10m))],
            Heat = SmallYard.Input.Heat with { PeriodSteps = 4, Shop = SmallYard.Steady(6, 0), Boilers = [] },
        };
        input = input with { Kilns = [input.Kilns[0] with { Holding = SmallYard.Steady(6, 5) }] };

        var best = TinyYardSearch.Best(input)!.Value;

        var charge = Assert.Single(best.Plan.Charges);
        Assert.Equal(["S-1", "S-2"], charge.Stacks);
        Assert.Equal(new PlanScore(0, 0, 0).LateCents, best.Score.LateCents);
    }
}
