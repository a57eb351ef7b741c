namespace Boardwright.Numerics.Tests;

public sealed class RandomSequenceTests
{
    private const int Draws = 200_000;

    [Fact]
    public void Seed_0_gives_the_stream_of_the_published_generator()
    {
        // xoshiro256** from SplitMix64 of 0, worked out apart from this program in arithmetic of unlimited length.
        var random = new RandomSequence(0);

        Assert.Equal(
            [11091344671253066420UL, 13793997310169335082UL, 1900383378846508768UL, 7684712102626143532UL],
            Enumerable.Range(0, 4).Select(_ => random.NextBits()));
    }

    [Fact]
    public void The_same_seed_and_branch_give_the_same_stream_and_others_do_not()
    {
        static ulong[] Stream(ulong seed, ulong branch)
        {
            var random = new RandomSequence(seed, branch);
            return [.. Enumerable.Range(0, 100).Select(_ => random.NextBits())];
        }

        Assert.Equal(Stream(7, 3), Stream(7, 3));
        Assert.Empty(Stream(7, 3).Intersect(Stream(7, 4)));
        Assert.Empty(Stream(7, 3).Intersect(Stream(8, 3)));
    }

    [Fact]
    public void Uniform_numbers_fill_zero_to_one_evenly()
    {
        var random = new RandomSequence(20261102);
        var bins = new int[100];
        for (var draw = 0; draw < Draws; draw++)
        {
            var uniform = random.NextUniform();
            Assert.InRange(uniform, 0.0, 1.0 - 1e-16);
            bins[(int)(uniform * bins.Length)]++;
        }

        // Chi squared with 99 degrees of freedom exceeds 160 once in ten thousand sequences.
        Assert.InRange(ChiSquared(bins), 45.0, 160.0);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(6)]
    [InlineData(97)]
    public void Whole_numbers_are_equally_likely(int bound)
    {
        var random = new RandomSequence(4, (ulong)bound);
        var counts = new int[bound];
        for (var draw = 0; draw < Draws; draw++)
            counts[random.NextIndex(bound)]++;

        // Mean of chi squared is its degrees of freedom, its standard deviation the root of twice as many.
        Assert.InRange(ChiSquared(counts), 0.0, bound - 1 + 5.0 * Math.Sqrt(2.0 * (bound - 1)) + 5.0);
    }

    [Fact]
    public void Normal_deviates_have_the_moments_and_the_tails_of_the_normal()
    {
        var random = new RandomSequence(11);
        var deviates = Enumerable.Range(0, Draws).Select(_ => random.NextNormal()).ToArray();

        // Five standard errors of each statistic.
        Assert.Equal(0.0, deviates.Average(), 5.0 / Math.Sqrt(Draws));
        Assert.Equal(1.0, deviates.Average(z => z * z), 5.0 * Math.Sqrt(2.0 / Draws));
        Assert.Equal(0.0, deviates.Average(z => z * z * z), 5.0 * Math.Sqrt(15.0 / Draws));
        Assert.Equal(3.0, deviates.Average(z => z * z * z * z), 5.0 * Math.Sqrt(96.0 / Draws));
        Assert.Equal(0.025, deviates.Count(z => z > 1.959964) / (double)Draws, 5.0 * Math.Sqrt(0.025 * 0.975 / Draws));
    }

    [Fact]
    public void Successive_numbers_are_not_related()
    {
        var random = new RandomSequence(5);
        var products = 0.0;
        var before = random.NextUniform() - 0.5;
        for (var draw = 0; draw < Draws; draw++)
        {
            var now = random.NextUniform() - 0.5;
            products += before * now;
            before = now;
        }

        // The correlation of independent numbers has a standard error of 1/sqrt(n).
        Assert.Equal(0.0, products / Draws * 12.0, 5.0 / Math.Sqrt(Draws));
    }

    [Fact]
    public void A_bound_below_one_is_our_mistake() => Assert.Throws<ArgumentOutOfRangeException>(() => new RandomSequence(1).NextIndex(0));

    private static double ChiSquared(int[] counts)
    {
        var expected = counts.Sum() / (double)counts.Length;
        return counts.Sum(count => (count - expected) * (count - expected) / expected);
    }
}
