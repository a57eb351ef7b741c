using CsCheck;

namespace Boardwright.Numerics.Tests;

public class TridiagonalBatchTests
{
    [Fact]
    public void Solution_put_back_gives_the_right_side()
    {
        var cases = Gen.Select(Gen.Int[1, 19], Gen.Int[1, 40], Gen.ULong, (systems, rows, seed) => (systems, rows, seed));
        cases.Sample(
            c =>
            {
                var (lower, diagonal, upper, right) = Dominant(c.systems, c.rows, c.seed);
                var x = (double[])right.Clone();

                TridiagonalBatch.Solve(c.systems, lower, diagonal, upper, x, new double[x.Length]);

                for (var i = 0; i < x.Length; i++)
                {
                    var row = i / c.systems;
                    var left = diagonal[i] * x[i]
                        + (row > 0 ? lower[i] * x[i - c.systems] : 0.0)
                        + (row < c.rows - 1 ? upper[i] * x[i + c.systems] : 0.0);
                    Assert.Equal(right[i], left, 1e-12);
                }
            },
            iter: 200,
            seed: "0000000000000");
    }

    [Fact]
    public void Systems_side_by_side_do_not_disturb_each_other()
    {
        const int rows = 12;
        var (lower, diagonal, upper, right) = Dominant(7, rows, 3);
        var together = (double[])right.Clone();
        TridiagonalBatch.Solve(7, lower, diagonal, upper, together, new double[together.Length]);

        for (var s = 0; s < 7; s++)
        {
            double[] Column(double[] all) => [.. Enumerable.Range(0, rows).Select(r => all[r * 7 + s])];
            var alone = Column(right);
            TridiagonalBatch.Solve(1, Column(lower), Column(diagonal), Column(upper), alone, new double[rows]);

            for (var r = 0; r < rows; r++)
            {
                Assert.Equal(alone[r], together[r * 7 + s], 1e-14);
            }
        }
    }

    [Fact]
    public void Second_difference_matrix_has_its_known_solution()
    {
        // -x[r-1] + 2 x[r] - x[r+1] = 1 with zeros outside: x[r] = (r+1)(n-r)/2.
        const int rows = 9;
        const int systems = 5;
        var lower = Enumerable.Repeat(-1.0, rows * systems).ToArray();
        var diagonal = Enumerable.Repeat(2.0, rows * systems).ToArray();
        var x = Enumerable.Repeat(1.0, rows * systems).ToArray();

        TridiagonalBatch.Solve(systems, lower, diagonal, lower, x, new double[x.Length]);

        for (var i = 0; i < x.Length; i++)
        {
            var r = i / systems;
            Assert.Equal((r + 1) * (rows - r) / 2.0, x[i], 1e-12);
        }
    }

    [Fact]
    public void Solving_allocates_nothing()
    {
        var (lower, diagonal, upper, right) = Dominant(64, 20, 1);
        var scratch = new double[right.Length];
        TridiagonalBatch.Solve(64, lower, diagonal, upper, right, scratch);

        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++)
        {
            TridiagonalBatch.Solve(64, lower, diagonal, upper, right, scratch);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Spans_of_unequal_length_are_a_mistake() =>
        Assert.Throws<ArgumentException>(() => TridiagonalBatch.Solve(2, new double[4], new double[4], new double[4], new double[6], new double[4]));

    private static (double[] Lower, double[] Diagonal, double[] Upper, double[] Right) Dominant(int systems, int rows, ulong seed)
    {
        var random = new RandomSequence(seed);
        double[] Fill(Func<double> next) => [.. Enumerable.Range(0, systems * rows).Select(_ => next())];
        return (
            Fill(() => -random.NextUniform()),
            Fill(() => 2.0 + random.NextUniform()),
            Fill(() => -random.NextUniform()),
            Fill(() => random.NextNormal()));
    }
}
