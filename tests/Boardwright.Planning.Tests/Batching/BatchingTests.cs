using Boardwright.Numerics;
using Boardwright.Planning.Batching;
using Boardwright.Planning.Solver;
using Boardwright.Planning.Solver.Batching;
using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Planning.Tests.Batching;

public sealed class BatchingTests
{
    private static readonly SolverLimits Limits = new(600, 1, RepeatableWork: 0.02);

    private static BatchInstance Example => Assert.IsType<Outcome<BatchInstance>.Done>(DznText.Read("example", File.ReadAllText(Repository.PathOf("demo/examples/batching-small.dzn")))).Value;

    [Fact]
    public void Example_is_read_as_it_is_written()
    {
        var example = Example;

        Assert.Equal((6, 2), (example.Jobs.Count, example.Ovens.Count));
        Assert.Equal([(0, 24), (26, 50)], example.Ovens[1].Open);
        Assert.Equal([0, 1], example.Jobs[0].Ovens);
        Assert.Equal((5, 4), (example.SetupCosts[0, 1], example.SetupCosts[1, 0]));
        Assert.Equal(new BatchWeights(4, 100, 1, 1, 3000), example.Weights);
    }

    [Fact]
    public void Proven_schedule_of_tiny_instances_is_the_best_of_all_and_sound()
    {
        var found = 0;
        for (ulong seed = 1; seed <= 60; seed++)
        {
            var instance = RandomInstance.Tiny(new RandomSequence(seed));
            var least = BatchSearch.LeastCost(instance);
            var outcome = BatchSolver.Solve(instance, Limits, TimeProvider.System, cancel: TestContext.Current.CancellationToken);
            if (least is null)
            {
                Assert.IsType<Outcome<BatchAnswer>.NoAnswer>(outcome);
                continue;
            }

            var answer = Assert.IsType<Outcome<BatchAnswer>.Done>(outcome).Value;
            Assert.Empty(BatchCheck.Faults(instance, answer.Batches));
            Assert.Equal((least.Value, least.Value), (answer.Cost, answer.Bound));
            found++;
        }

        Assert.InRange(found, 40, 60);
    }

    [Fact]
    public void Example_is_solved_to_its_best()
    {
        var answer = Assert.IsType<Outcome<BatchAnswer>.Done>(BatchSolver.Solve(Example, Limits, TimeProvider.System, cancel: TestContext.Current.CancellationToken)).Value;

        Assert.Empty(BatchCheck.Faults(Example, answer.Batches));
        Assert.Equal(BatchSearch.LeastCost(Example), answer.Cost);
    }

    [Fact]
    public void Checker_names_each_rule_that_is_broken()
    {
        var sound = Assert.IsType<Outcome<BatchAnswer>.Done>(BatchSolver.Solve(Example, Limits, TimeProvider.System, cancel: TestContext.Current.CancellationToken)).Value.Batches;
        string Words(IReadOnlyList<Batch> batches) => string.Join("; ", BatchCheck.Faults(Example, batches));

        Assert.Contains("is in 0 batches", Words([.. sound.Skip(1)]), StringComparison.Ordinal);
        Assert.Contains("may not be in oven", Words([new(1, 10, 7, [1])]), StringComparison.Ordinal);
        Assert.Contains("is asked", Words([new(0, 10, 3, [1])]), StringComparison.Ordinal);
        Assert.Contains("at the earliest", Words([new(0, 1, 9, [2])]), StringComparison.Ordinal);
        Assert.Contains("mixes attributes", Words([new(0, 10, 10, [2, 4])]), StringComparison.Ordinal);
        Assert.Contains("too full", Words([new(1, 10, 9, [0, 2])]), StringComparison.Ordinal);
        Assert.Contains("before the one before it", Words([new(0, 1, 8, [0]), new(0, 9, 7, [1])]), StringComparison.Ordinal);
        Assert.Contains("one open interval", Words([new(0, 25, 8, [0])]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("n=6", "n=7", "7 whole numbers")]
    [InlineData("attribute = [1,", "attribute = [9,", "1 to 2")]
    [InlineData("{1, 2}, {1}, ", "{1}, ", "6 sets")]
    [InlineData("l = 60; a = 2;", "l = 60;", "1 whole number")]
    [InlineData("m = 2;", "m = 65;", "1 to 64")]
    [InlineData("max_time = [12,", "max_time = [7,", "8 to 100000000")]
    [InlineData("min_time = [8,", "min_time = [0,", "1 to 100000000")]
    [InlineData("size = [9,", "size = [99999999999,", "whole numbers from")]
    [InlineData("{1, 2}, {1}, {1, 2}, {2}", "{1, 2}, 1..999999999, {1, 2}, {2}", "a range of at most 64")]
    public void Faulty_file_is_refused_by_name(string old, string with, string accepted)
    {
        var text = File.ReadAllText(Repository.PathOf("demo/examples/batching-small.dzn")).Replace("n = 6", "n=6", StringComparison.Ordinal).Replace(old, with, StringComparison.Ordinal);

        var refused = Assert.IsType<Outcome<BatchInstance>.Refused>(DznText.Read("FILE.dzn", text));

        Assert.Contains(refused.Reasons, reason => reason.Accepted.Contains(accepted, StringComparison.Ordinal));
    }
}
