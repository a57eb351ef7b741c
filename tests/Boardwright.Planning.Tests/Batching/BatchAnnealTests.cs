using Boardwright.Numerics;
using Boardwright.Planning.Batching;
using Boardwright.Planning.Solver;
using Boardwright.Planning.Solver.Batching;
using Boardwright.Quantities;

namespace Boardwright.Planning.Tests.Batching;

public sealed class BatchAnnealTests
{
    private const int Looks = 12;

    [Fact]
    public void Annealing_alone_finds_the_best_of_all_on_tiny_instances()
    {
        var (best, tried) = (0, 0);
        for (ulong seed = 1; seed <= 100; seed++)
        {
            var instance = RandomInstance.Tiny(new RandomSequence(seed));
            if (BatchStart.Build(instance) is not { } start)
            {
                continue;
            }

            var found = Improved(instance, start, seed);
            var least = BatchSearch.LeastCost(instance);
            Assert.Empty(BatchCheck.Faults(instance, found));
            Assert.True(BatchCost.Of(instance, found) >= least, $"seed {seed} is better than the best of all");
            best += BatchCost.Of(instance, found) == least ? 1 : 0;
            tried++;
        }

        Assert.True(tried > 60 && best == tried, $"{best} of {tried}");
    }

    [Fact]
    public void Same_seed_gives_the_same_schedule_and_no_worse_one_than_the_start()
    {
        for (ulong seed = 1; seed <= 10; seed++)
        {
            var instance = RandomInstance.Of(new RandomSequence(seed), 30, 3);
            var start = BatchStart.Build(instance);
            Assert.NotNull(start);

            var (one, two) = (Improved(instance, start, seed), Improved(instance, start, seed));

            Assert.Empty(BatchCheck.Faults(instance, one));
            Assert.True(BatchCost.Of(instance, one) <= BatchCost.Of(instance, start));
            Assert.Equal(Text(one), Text(two));
        }
    }

    [Fact]
    public void Each_better_schedule_told_is_sound_and_costs_what_is_said()
    {
        var instance = RandomInstance.Of(new RandomSequence(3), 40, 3);
        var costs = new List<long>();

        BatchAnneal.Improve(instance, BatchStart.Build(instance)!, 1, Spent(Looks), (batches, cost) =>
        {
            Assert.Empty(BatchCheck.Faults(instance, batches));
            Assert.Equal(BatchCost.Of(instance, batches), cost);
            costs.Add(cost);
        });

        Assert.True(costs.Count > 3);
        Assert.Equal(costs.OrderDescending(), costs);
    }

    [Fact]
    public void Bound_is_never_above_the_best_of_all()
    {
        var close = 0;
        for (ulong seed = 101; seed <= 180; seed++)
        {
            var instance = RandomInstance.Tiny(new RandomSequence(seed));
            if (BatchSearch.LeastCost(instance) is { } least)
            {
                var bound = BatchSolver.Relaxed(instance, new SolverLimits(600, 1, RepeatableWork: 1));
                Assert.True(bound <= least, $"seed {seed}: bound {bound}, best {least}");
                Assert.True(BatchFloor.Cost(instance) <= bound, $"seed {seed}: counting says {BatchFloor.Cost(instance)}, the relaxation {bound}");
                Assert.True(BatchSolver.Relaxed(instance, new SolverLimits(600, 1, RepeatableWork: 1), startsMost: 0) <= bound, $"seed {seed}: without starts the bound is above that with them");
                close += bound > 0.9 * least ? 1 : 0;
            }
        }

        Assert.True(close > 30, $"{close} bounds within a tenth");
    }

    [Fact]
    public void One_worker_with_counted_work_gives_the_same_answer_twice()
    {
        var instance = RandomInstance.Of(new RandomSequence(11), 25, 3);
        BatchAnswer Answer() => Assert.IsType<Outcome<BatchAnswer>.Done>(BatchSolver.Solve(instance, new SolverLimits(600, 1, RepeatableWork: 0.02), TimeProvider.System, cancel: TestContext.Current.CancellationToken)).Value;

        var (one, two) = (Answer(), Answer());

        Assert.Equal((one.Cost, one.Bound), (two.Cost, two.Bound));
        Assert.Equal(Text(one.Batches), Text(two.Batches));
    }

    [Fact]
    public void Two_workers_prove_what_one_proves()
    {
        var proven = 0;
        for (ulong seed = 201; seed <= 212; seed++)
        {
            var instance = RandomInstance.Tiny(new RandomSequence(seed));
            if (BatchSearch.LeastCost(instance) is { } least)
            {
                var answer = Assert.IsType<Outcome<BatchAnswer>.Done>(BatchSolver.Solve(instance, new SolverLimits(600, 2, RepeatableWork: 1), TimeProvider.System, cancel: TestContext.Current.CancellationToken)).Value;
                Assert.Equal((least, least), (answer.Cost, answer.Bound));
                proven++;
            }
        }

        Assert.True(proven > 6, $"{proven}");
    }

    [Fact]
    public void Search_ended_at_any_moment_leaves_a_sound_schedule()
    {
        var instance = RandomInstance.Of(new RandomSequence(5), 40, 3);
        for (var most = 0; most < 12; most++)
        {
            using var stop = new CancellationTokenSource();
            var told = 0;
            var outcome = BatchSolver.Solve(instance, new SolverLimits(600, 1, RepeatableWork: 0.02), TimeProvider.System, _ =>
            {
                if (told++ == most)
                {
                    stop.Cancel();
                }
            }, stop.Token);

            Assert.Empty(BatchCheck.Faults(instance, Assert.IsType<Outcome<BatchAnswer>.Done>(outcome).Value.Batches));
        }
    }

    private static IReadOnlyList<Batch> Improved(BatchInstance instance, IReadOnlyList<Batch> start, ulong seed) => BatchAnneal.Improve(instance, start, seed, Spent(Looks));

    private static string Text(IReadOnlyList<Batch> batches) => string.Join("; ", batches.Select(batch => $"{batch.Oven} {batch.Start} {string.Join(",", batch.Jobs)}"));

    private static Func<double> Spent(int looks)
    {
        var asked = 0;
        return () => (double)asked++ / looks;
    }
}
