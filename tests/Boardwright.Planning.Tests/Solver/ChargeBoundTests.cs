using Boardwright.Planning.Solver;

namespace Boardwright.Planning.Tests;

public sealed class ChargeBoundTests
{
    private const ulong Yards = 300;
    private const int Steps = 400;

    /// <summary>The best of all plans is found by trying them; no bound may be above it, whatever plan it is told of.</summary>
    [Fact]
    public void No_plan_of_a_tiny_yard_is_below_the_bound()
    {
        var (reached, aboveAlone) = (0, 0);
        for (ulong seed = 1; seed <= Yards; seed++)
        {
            var input = TinyYards.Make(seed);
            var tables = new PlanTables(input);
            var best = TinyYardSearch.Best(input)!.Value.Score;

            var late = ChargeBound.Of(tables, false, () => best.LateCents + 100, steps => steps < Steps);
            var risk = ChargeBound.Of(tables, true, () => best.RiskCents + 100, steps => steps < Steps);

            Assert.True(late <= best.LateCents && risk <= best.RiskCents, $"seed {seed}: {late}, {risk}; {best}");
            reached += late == best.LateCents ? 1 : 0;
            aboveAlone += late > tables.Orders.Sum(order => AloneInYard.DaysLate(tables, order, false) * order.CentsPerDay) ? 1 : 0;
        }

        Assert.InRange(reached, (int)Yards / 2, (int)Yards);
        Assert.InRange(aboveAlone, 10, (int)Yards);
    }

    [Fact]
    public void Without_time_the_bound_is_weak_but_true()
    {
        var tables = new PlanTables(SeasonYard.Input);

        Assert.Equal(0, ChargeBound.Of(tables, false, () => 1_000_000, _ => false));
        Assert.InRange(ChargeBound.Of(tables, false, () => 1_000_000, steps => steps < 50), 0, 12_000); // 120.00 money is the proven best of this yard
    }

    [Fact]
    public void Bounds_only_rise_and_repeat()
    {
        var tables = new PlanTables(SeasonYard.Input);
        var (first, second) = (new List<long>(), new List<long>());

        _ = ChargeBound.Of(tables, true, () => 30_000, steps => steps < 600, first.Add);
        _ = ChargeBound.Of(tables, true, () => 30_000, steps => steps < 600, second.Add);

        Assert.Equal(first, second);
        Assert.All(first.Zip(first.Skip(1)), pair => Assert.True(pair.First < pair.Second));
    }
}
