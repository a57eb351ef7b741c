using Boardwright.Planning.Solver;

namespace Boardwright.Planning.Tests;

public sealed class DayBoundTests
{
    private const ulong Yards = 200;

    /// <summary>The best of all plans is found by trying them; no bound may be above it.</summary>
    [Fact]
    public void No_plan_of_a_tiny_yard_is_below_the_bound()
    {
        var (reached, aboveAlone) = (0, 0);
        for (ulong seed = 1; seed <= Yards; seed++)
        {
            var input = TinyYards.Make(seed);
            var tables = new PlanTables(input);
            var best = TinyYardSearch.Best(input)!.Value.Score;

            var (late, risk) = (DayBound.Of(tables, false, 60, TestContext.Current.CancellationToken), DayBound.Of(tables, true, 60, TestContext.Current.CancellationToken));

            Assert.True(late <= best.LateCents && risk <= best.RiskCents, $"seed {seed}: {late}, {risk}; {best}");
            reached += late == best.LateCents ? 1 : 0;
            aboveAlone += late > tables.Orders.Sum(order => AloneInYard.DaysLate(tables, order, false) * order.CentsPerDay) ? 1 : 0;
        }

        Assert.InRange(reached, 80, (int)Yards);
        Assert.InRange(aboveAlone, 5, (int)Yards);
    }

    [Fact]
    public void A_linear_program_is_bounded_by_its_value()
    {
        // least of -3x - 2y with x + y at most 1, 2x at most 1: x = y = 1/2, -2.5 by hand
        var program = new LinearProgram();
        var (x, y) = (program.Variable(-3), program.Variable(-2));
        program.AtMost(1, [(x, 1), (y, 1)]);
        program.AtMost(1, [(x, 2)]);

        Assert.Equal(-2.5, program.Bound(60, _ => false, TestContext.Current.CancellationToken), 6);
    }

    [Fact]
    public void Without_an_end_of_the_solver_the_bound_is_weak_but_true()
    {
        var program = new LinearProgram();
        var (x, y) = (program.Variable(-3), program.Variable(-2));
        program.AtMost(1, [(x, 1), (y, 1)]);
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();

        Assert.InRange(program.Bound(60, _ => false, cancel.Token), -5.0, -3.0);
    }
}
