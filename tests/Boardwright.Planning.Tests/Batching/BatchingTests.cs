using Boardwright.Numerics;
using Boardwright.Planning.Batching;
using Boardwright.Planning.Solver;
using Boardwright.Planning.Solver.Batching;
using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Planning.Tests.Batching;

public sealed class BatchingTests
{
    private static readonly SolverLimits Limits = new(60, 1);

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
            var instance = Tiny(new RandomSequence(seed));
            var least = BatchSearch.LeastCost(instance);
            var outcome = BatchSolver.Solve(instance, Limits, TestContext.Current.CancellationToken);
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
        var answer = Assert.IsType<Outcome<BatchAnswer>.Done>(BatchSolver.Solve(Example, Limits, TestContext.Current.CancellationToken)).Value;

        Assert.Empty(BatchCheck.Faults(Example, answer.Batches));
        Assert.Equal(BatchSearch.LeastCost(Example), answer.Cost);
    }

    [Fact]
    public void Checker_names_each_rule_that_is_broken()
    {
        var sound = Assert.IsType<Outcome<BatchAnswer>.Done>(BatchSolver.Solve(Example, Limits, TestContext.Current.CancellationToken)).Value.Batches;
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
    public void Faulty_file_is_refused_by_name(string old, string with, string accepted)
    {
        var text = File.ReadAllText(Repository.PathOf("demo/examples/batching-small.dzn")).Replace("n = 6", "n=6", StringComparison.Ordinal).Replace(old, with, StringComparison.Ordinal);

        var refused = Assert.IsType<Outcome<BatchInstance>.Refused>(DznText.Read("FILE.dzn", text));

        Assert.Contains(refused.Reasons, reason => reason.Accepted.Contains(accepted, StringComparison.Ordinal));
    }

    private static BatchInstance Tiny(RandomSequence chance)
    {
        int Between(int low, int high) => low + chance.NextIndex(high - low + 1);
        var (jobs, ovens, attributes) = (Between(2, 5), Between(1, 2), Between(1, 2));
        int[,] Square(int most)
        {
            var square = new int[attributes, attributes];
            for (var index = 0; index < square.Length; index++)
            {
                square[index / attributes, index % attributes] = Between(0, most);
            }

            return square;
        }

        BatchJob Job()
        {
            var least = Between(1, 6);
            var oven = Between(0, ovens - 1);
            return new(Between(0, attributes - 1), Between(1, 5), least, least + Between(0, 5), Between(0, 4), Between(4, 20), Between(0, 1) == 0 ? [oven] : [.. Enumerable.Range(0, ovens)]);
        }

        return new(
            [.. Enumerable.Range(0, ovens).Select(_ => new BatchOven(Between(5, 10), Between(0, attributes - 1), [(0, Between(6, 14)), (15, Between(24, 40))]))],
            [.. Enumerable.Range(0, jobs).Select(_ => Job())], Square(3), Square(4), new(Between(1, 4), Between(10, 60), Between(0, 2), Between(0, 3), 1000));
    }
}
