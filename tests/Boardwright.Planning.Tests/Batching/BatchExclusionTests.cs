using Boardwright.Numerics;
using Boardwright.Planning.Batching;
using Boardwright.Planning.Solver.Batching;

namespace Boardwright.Planning.Tests.Batching;

public sealed class BatchExclusionTests
{
    private const int Attributes = 3;

    [Fact]
    public void Rows_hold_every_two_batches_that_exclude_each_other_and_no_other_two()
    {
        var (rowsInAll, pairsInAll) = (0, 0);
        for (ulong seed = 1; seed <= 40; seed++)
        {
            var chance = new RandomSequence(seed);
            var exclusion = new BatchExclusion(new BatchGaps(RandomInstance.Of(chance, 12, Attributes)), Attributes);
            var batches = Enumerable.Range(0, 40).Select(_ => (Attribute: chance.NextIndex(Attributes), Start: chance.NextIndex(30), Length: 1 + chance.NextIndex(6))).Distinct()
                .Select(one => (one.Attribute, one.Start, End: one.Start + one.Length)).ToList();

            var rows = exclusion.Rows(batches);

            var said = new HashSet<(int, int)>(from row in rows from one in row from two in row where one < two select (one, two));
            var asked = new HashSet<(int, int)>(from one in Enumerable.Range(0, batches.Count) from two in Enumerable.Range(0, batches.Count) where one < two && exclusion.Exclude(batches[one], batches[two]) select (one, two));
            Assert.Equal(asked.Order(), said.Order());
            (rowsInAll, pairsInAll) = (rowsInAll + rows.Count, pairsInAll + asked.Count);
        }

        Assert.True(rowsInAll < pairsInAll / 2, $"{rowsInAll} rows say {pairsInAll} pairs");
    }

    [Fact]
    public void Least_gap_is_that_of_the_best_row_of_batches_between()
    {
        BatchJob Job(int attribute, int least) => new(attribute, 1, least, 9, 0, 9, [0]);
        var instance = new BatchInstance([new(5, 0, [(0, 10), (20, 40)])], [Job(0, 4), Job(1, 2), Job(2, 7)], new[,] { { 1, 0, 9 }, { 9, 3, 1 }, { 2, 2, 2 } }, new int[3, 3], new(1, 1, 1, 1, 1));
        var gaps = new BatchGaps(instance);

        // From attribute 0 to 2: set-up 9, or set-up 0, a batch of 2 of attribute 1, set-up 1.
        Assert.Equal((3, 1, 3), (gaps.Between(0, 2), gaps.Between(0, 0), gaps.Between(1, 1)));
        // First interval: the oven was last used for attribute 0. Second: the batch of attribute 1 may have run before.
        Assert.Equal((1, 0, 3), (gaps.Earliest(0, 0, 0), gaps.Earliest(0, 0, 1), gaps.Earliest(0, 0, 2)));
        Assert.Equal((21, 20, 21), (gaps.Earliest(0, 1, 0), gaps.Earliest(0, 1, 1), gaps.Earliest(0, 1, 2)));
    }
}
