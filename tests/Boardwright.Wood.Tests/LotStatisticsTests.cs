using Boardwright.Numerics;
using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Wood.Tests;

public sealed class LotStatisticsTests
{
    [Fact]
    public void A_spread_of_0_6_about_7_holds_nine_boards_in_ten_within_a_point() =>
        Assert.Equal(0.904, new LotStatistics(30, 7.0, 0.6, 6.8, 7.2).ShareWithin(6.0, 8.0)!.Value, 0.0005);

    [Fact]
    public void The_count_is_the_smallest_that_will_do() => Gen.Select(Gen.Double[0.1, 4.0], Gen.Double[0.1, 2.0]).Always(
        (deviation, half) =>
        {
            var boards = LotStatistics.BoardsFor(deviation, half);
            double HalfWidth(int count) => Distributions.StudentQuantile(0.975, count - 1) * deviation / Math.Sqrt(count);
            Assert.True(HalfWidth(boards) <= half);
            Assert.True(boards == 2 || HalfWidth(boards - 1) > half);
        },
        draws: 300);

    [Fact]
    public void Nineteen_intervals_in_twenty_hold_the_true_mean()
    {
        var random = new RandomSequence(20261102, 7);
        var held = 0;
        const int Lots = 4000;
        for (var lot = 0; lot < Lots; lot++)
        {
            var readings = Readings([.. Enumerable.Range(0, 8).Select(_ => 12.0 + 0.8 * random.NextNormal())]);
            var found = Expect.Done(LotStatistics.Of(readings));
            held += found.MeanLowPercent <= 12.0 && found.MeanHighPercent >= 12.0 ? 1 : 0;
        }

        // Five standard deviations of a count of 4000 at 0.95.
        Assert.InRange(held / (double)Lots, 0.95 - 0.0172, 0.95 + 0.0172);
    }

    [Fact]
    public void One_board_has_a_mean_and_no_spread()
    {
        var lot = Expect.Done(LotStatistics.Of(Readings(9.5)));

        Assert.Equal(9.5, lot.MeanPercent, 1e-12);
        Assert.Null(lot.StandardDeviationPercent);
        Assert.Null(lot.MeanLowPercent);
        Assert.Null(lot.ShareWithin(8.5, 10.5));
        Assert.Null(lot.BoardsToMeasure(0.5));
    }

    [Fact]
    public void Equal_boards_have_no_width()
    {
        var lot = Expect.Done(LotStatistics.Of(Readings(8.0, 8.0, 8.0)));

        Assert.Equal(lot.MeanPercent, lot.MeanHighPercent!.Value, 1e-12);
        Assert.Equal(1.0, lot.ShareWithin(7.0, 9.0));
        Assert.Equal(2, lot.BoardsToMeasure(0.5));
    }

    [Fact]
    public void No_readings_are_refused() => Assert.Equal("readings", Expect.Refused(LotStatistics.Of([])).What);

    private static MoistureContent[] Readings(params double[] percents) => [.. percents.Select(MoistureContent.FromPercent)];
}
