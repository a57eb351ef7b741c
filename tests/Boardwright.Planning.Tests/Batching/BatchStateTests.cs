using Boardwright.Numerics;
using Boardwright.Planning.Batching;

namespace Boardwright.Planning.Tests.Batching;

public sealed class BatchStateTests
{
    [Fact]
    public void Cost_of_each_change_is_that_of_the_whole_schedule_and_taking_back_leaves_no_trace()
    {
        var (kept, refused) = (0, 0);
        for (ulong seed = 1; seed <= 40; seed++)
        {
            var instance = RandomInstance.Of(new RandomSequence(seed), 12, 3);
            if (BatchStart.Build(instance) is not { } start)
            {
                continue;
            }

            var state = new BatchState(new BatchTables(instance), start);
            var chance = new RandomSequence(seed, 1);
            var moves = new BatchMoves(new BatchTables(instance), state, chance);
            Assert.Equal(BatchCost.Of(instance, start), state.Cost);
            for (var step = 0; step < 250; step++)
            {
                var before = Text(state.Read());
                var change = moves.Try() ? state.Settle() : null;
                if (change is null || chance.NextIndex(3) == 0)
                {
                    state.TakeBack();
                    Assert.Equal(before, Text(state.Read()));
                    refused++;
                    continue;
                }

                var expected = state.Cost + change.Value;
                state.Keep();
                Assert.Equal(BatchCost.Of(instance, state.Read()), expected);
                Assert.Equal(expected, state.Cost);
                Assert.Empty(BatchCheck.Faults(instance, state.Read()));
                kept++;
            }
        }

        Assert.True(kept > 1500 && refused > 1500, $"{kept} kept, {refused} refused: the moves are not what they were");
    }

    private static string Text(IReadOnlyList<Batch> batches) => string.Join(";", batches.Select(batch => $"{batch.Oven} {batch.Start} {batch.Length} {string.Join(",", batch.Jobs.Order())}"));
}
