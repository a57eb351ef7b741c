using BenchmarkDotNet.Attributes;
using Boardwright.Numerics;

namespace Boardwright.Bench.Numerics;

/// <summary>The heart of a diffusion step: one implicit solve of every board. Plain: board after board; ours: boards side by side.</summary>
public class TridiagonalBench
{
    private const int Rows = 40;
    private double[] lower = [];
    private double[] diagonal = [];
    private double[] upper = [];
    private double[] right = [];
    private double[] work = [];
    private double[] scratch = [];

    [Params(1, 64, 512)]
    public int Boards { get; set; }

    [GlobalSetup]
    public void SetUp()
    {
        var length = Rows * Boards;
        (lower, upper) = ([.. Enumerable.Repeat(-0.5, length)], [.. Enumerable.Repeat(-0.5, length)]);
        diagonal = [.. Enumerable.Repeat(2.0, length)];
        right = [.. Enumerable.Range(0, length).Select(i => 0.3 + (0.001 * (i % 97)))];
        (work, scratch) = (new double[length], new double[length]);
    }

    [Benchmark(Baseline = true)]
    public double Plain()
    {
        right.CopyTo(work, 0);
        for (var board = 0; board < Boards; board++)
            SolveOne(board * Rows);

        return work[^1];
    }

    [Benchmark]
    public double SideBySide()
    {
        right.CopyTo(work, 0);
        TridiagonalBatch.Solve(Boards, lower, diagonal, upper, work, scratch);
        return work[^1];
    }

    private void SolveOne(int first)
    {
        scratch[first] = upper[first] / diagonal[first];
        work[first] /= diagonal[first];
        for (var i = first + 1; i < first + Rows; i++)
        {
            var pivot = diagonal[i] - (lower[i] * scratch[i - 1]);
            scratch[i] = upper[i] / pivot;
            work[i] = (work[i] - (lower[i] * work[i - 1])) / pivot;
        }

        for (var i = first + Rows - 2; i >= first; i--)
            work[i] -= scratch[i] * work[i + 1];
    }
}
