using Boardwright.Numerics;

namespace Boardwright.Sawing.Tests;

public class SawnYieldTests
{
    private static readonly YieldPrior Prior = new(1.06);

    [Fact]
    public void Without_logs_the_prior_stands_with_all_its_spread()
    {
        var next = SawnYield.Of(Prior, []).Next("white oak", "Ann");

        Assert.Equal(1.06, next.Ratio);
        Assert.Equal(Math.Sqrt((0.10 * 0.10) + (0.05 * 0.05) + (0.04 * 0.04)), next.MeanSd, 12);
        Assert.Equal((0, 0.0, 0.10), (next.Logs, Math.Round(next.OwnWeight, 12), Math.Round(next.LogSd, 12)));
        Assert.Null(next.OwnRatio);
    }

    // Bühlmann 1967 (M): one group of n has the weight n/(n + k), k = variance of one over variance of the group's mean before.
    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(60)]
    public void One_wood_and_sawyer_is_weighed_by_the_formula_of_credibility(int count)
    {
        var ratios = Enumerable.Range(0, count).Select(i => 0.9 + (0.2 * i / count)).ToArray();
        var learned = SawnYield.Of(Prior, ratios.Select(ratio => new SawnRatio("ash", "Ann", ratio)));
        var before = (0.10 * 0.10) + (0.05 * 0.05) + (0.04 * 0.04);
        var weight = count / (count + (learned.LogSd * learned.LogSd / before));

        var next = learned.Next("ash", "Ann");

        Assert.Equal(weight, next.OwnWeight, 10);
        Assert.Equal((weight * ratios.Average()) + ((1.0 - weight) * 1.06), next.Ratio, 10);
    }

    // The worked example of docs/methods/sawn-yield.md, by hand.
    [Fact]
    public void Four_logs_of_ash_move_the_record_of_the_house()
    {
        var next = SawnYield.Of(Prior, new[] { 1.00, 1.02, 0.98, 1.00 }.Select(ratio => new SawnRatio("ash", "Ann", ratio))).Next("ash", "Ann");

        Assert.Equal((1.007, 0.885, 0.886, 1.128), (Math.Round(next.Ratio, 3), Math.Round(next.OwnWeight, 3), Math.Round(next.Low, 3), Math.Round(next.High, 3)));
    }

    [Fact]
    public void A_wood_never_sawn_learns_from_the_sawyer_and_a_new_sawyer_from_the_wood()
    {
        var learned = SawnYield.Of(Prior, Enumerable.Repeat(new SawnRatio("ash", "Ann", 1.25), 20).Concat(Enumerable.Repeat(new SawnRatio("oak", "Ben", 0.95), 20)));

        Assert.InRange(learned.Next("elm", "Ann").Ratio, learned.Next("elm", "Ben").Ratio + 0.01, 1.25);
        Assert.InRange(learned.Next("ash", null).Ratio, learned.Next("elm", null).Ratio + 0.01, 1.25);
        Assert.True(learned.Next("ash", "Ben").MeanSd > learned.Next("ash", "Ann").MeanSd);
    }

    [Fact]
    public void More_logs_narrow_the_mean_and_never_the_log()
    {
        SawnYield Of(int count) => SawnYield.Of(Prior, Enumerable.Range(0, count).Select(i => new SawnRatio("ash", "Ann", i % 2 == 0 ? 1.0 : 1.2)));

        Assert.True(Of(40).Next("ash", "Ann").MeanSd < Of(10).Next("ash", "Ann").MeanSd);
        Assert.InRange(Of(400).Next("ash", "Ann").NextSd, 0.0995, 0.1005);
        Assert.InRange(Of(400).Next("ash", "Ann").Ratio, 1.0995, 1.1);
    }

    [Fact]
    public void The_order_of_the_logs_does_not_matter_and_what_is_no_yield_does_not_teach()
    {
        SawnRatio[] sawn = [new("ash", "Ann", 1.02), new("oak", "Ben", 1.11), new("ash", "Ben", 0.97), new("elm", "Ann", 0.15), new("elm", "Ann", 7.0)];

        Assert.Equal(SawnYield.Of(Prior, sawn).Next("ash", "Ann"), SawnYield.Of(Prior, sawn.Reverse()).Next("ash", "Ann"));
        Assert.Equal(3, SawnYield.Of(Prior, sawn).Count);
    }

    // Calibration on mills drawn from the model itself: 8 of 10 next logs lie between low and high.
    [Fact]
    public void Eight_in_ten_of_the_next_logs_lie_in_the_band()
    {
        var (chance, inside, drawn) = (new RandomSequence(20261102UL), 0, 0);
        for (var mill = 0; mill < 400; mill++)
        {
            var ofMill = 0.10 * chance.NextNormal();
            var woods = Enumerable.Range(0, 3).Select(_ => 0.05 * chance.NextNormal()).ToArray();
            var hands = Enumerable.Range(0, 2).Select(_ => 0.04 * chance.NextNormal()).ToArray();
            double Log(int wood, int hand) => 1.06 + ofMill + woods[wood] + hands[hand] + (0.10 * chance.NextNormal());
            var sawn = Enumerable.Range(0, mill % 30).Select(i => new SawnRatio($"{i % 3}", $"{i % 2}", Log(i % 3, i % 2))).ToList();
            var learned = SawnYield.Of(Prior, sawn);
            for (var next = 0; next < 6; next++, drawn++)
            {
                var band = learned.Next($"{next % 3}", $"{next % 2}");
                inside += Log(next % 3, next % 2) is var ratio && ratio >= band.Low && ratio <= band.High ? 1 : 0;
            }
        }

        Assert.InRange((double)inside / drawn, 0.775, 0.825);
    }
}
