using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Sawing.Tests.Size;

public sealed class DressingTests
{
    private const string Table = "control-chart";

    public static IEnumerable<object[]> Factors => PublishedTable.Theory(Table);

    [Theory, MemberData(nameof(Factors))]
    public void Factors_of_the_chart_agree_with_the_printed_table(PublishedRow row)
    {
        var c4 = ThicknessChart.MeanOfDeviation((int)row["n"]);
        var part = 3.0 * Math.Sqrt(1.0 - (c4 * c4)) / c4;

        row.Agrees(row.Quantity switch { "c4" => c4, "b3" => Math.Max(0.0, 1.0 - part), _ => 1.0 + part });
    }

    [Fact]
    public void Factors_would_notice_a_one_percent_error() => Expect.NoticesOnePercent(Table, "c4", "b4");

    // By hand: means 10, 12, 11, 13 mm; moving ranges 2, 1, 2; sigma = (5/3)/1.128.
    [Fact]
    public void Limits_come_from_the_moving_range_of_the_means()
    {
        var chart = Expect.Done(ThicknessChart.Of(Boards(10, 12, 11, 13)));

        Assert.Equal(11.5, chart.Centre.Millimetres, 1e-9);
        Assert.Equal(5.0 / 3.0 / 1.128379, chart.Sigma.Millimetres, 1e-6);
        Assert.Equal(0.1 * Math.Sqrt(2.0), chart.SpreadCentre.Millimetres, 1e-9);
    }

    [Theory]
    [InlineData(new[] { 0.0, 3.1 }, ChartSignal.BeyondThree)]
    [InlineData(new[] { 2.1, 0.5, 2.2 }, ChartSignal.TwoOfThreeBeyondTwo)]
    [InlineData(new[] { 1.1, 1.2, 0.4, 1.3, 1.4 }, ChartSignal.FourOfFiveBeyondOne)]
    [InlineData(new[] { -0.1, -0.2, -0.3, -0.1, -0.2, -0.3, -0.1, -0.9 }, ChartSignal.EightOnOneSide)]
    public void A_test_speaks_at_the_board_that_fulfils_it(double[] deviations, ChartSignal expected)
    {
        Assert.Equal([expected], ThicknessChart.Signals(deviations));
        Assert.Equal([expected], ThicknessChart.Signals([.. deviations.Select(value => -value)]));
    }

    [Theory]
    [InlineData(new[] { 2.1, 0.5, -2.2 })]
    [InlineData(new[] { 0.0, 3.0 })]
    [InlineData(new[] { -0.1, -0.2, -0.3, -0.1, -0.2, -0.3, 0.1, -0.9 })]
    public void Points_on_both_sides_or_on_the_limit_say_nothing(double[] deviations) => Assert.Empty(ThicknessChart.Signals(deviations));

    [Fact]
    public void A_setting_that_shifts_is_seen_and_a_steady_one_is_not()
    {
        double[] steady = [28.60, 28.52, 28.66, 28.58, 28.49, 28.63, 28.55, 28.61, 28.53, 28.64, 28.57, 28.60];

        Assert.All(Expect.Done(ThicknessChart.Of(Boards(steady))).Points, point => Assert.Empty(point.Signals));
        Assert.Contains(Expect.Done(ThicknessChart.Of(Boards([.. steady, .. steady.Select(mean => mean + 0.3)]))).Points, point => point.Signals.Contains(ChartSignal.EightOnOneSide));
    }

    [Fact]
    public void Two_boards_make_no_chart() => Assert.Equal("boards", Expect.Refused(ThicknessChart.Of(Boards(28, 29))).What);

    // Common practice, no source: rough inch stock kiln dried to 6 to 7 % dresses to 23 mm. The saw is the invented one of X-27, set at 1-1/8 in.
    [Theory, InlineData(6.0), InlineData(7.0)]
    public void Rough_inch_stock_kiln_dried_dresses_to_23_mm(double moisturePercent)
    {
        var lumber = Lumber(1.125, moisturePercent);

        Assert.InRange(lumber.To(Length.FromMillimetres(23.0), Expect.Inches(1.0 / 16.0), 8).CleanUp.Percent, 99.0, 100.0);
        Assert.InRange(lumber.To(Length.FromMillimetres(26.5), Expect.Inches(1.0 / 16.0), 8).CleanUp.Percent, 0.0, 25.0);
    }

    // One place and no scatter between boards: the plain normal share.
    [Fact]
    public void One_place_is_the_normal_share()
    {
        var lumber = new Dressing(Length.FromMillimetres(25.0), Length.FromMillimetres(0.5), default);

        Assert.Equal(84.1345, lumber.To(Length.FromMillimetres(24.5), default, 1).CleanUp.Percent, 1e-3);
        Assert.Equal(50.0, new Dressing(Length.FromMillimetres(25.0), Length.FromMillimetres(0.3), Length.FromMillimetres(0.4)).To(Length.FromMillimetres(25.0), default, 1).CleanUp.Percent, 1e-6);
    }

    // Simulated boards, another way to the same share: 40,000 boards of 8 places, standard error 0.2 %.
    [Fact]
    public void Share_agrees_with_boards_thrown_by_chance()
    {
        var lumber = Lumber(1.0625, 7.0);
        var random = new Random(7);
        double Normal() => Math.Sqrt(-2.0 * Math.Log(1.0 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());
        var finished = Length.FromMillimetres(24.5);

        var clean = Enumerable.Range(0, 40_000).Count(_ =>
        {
            var board = lumber.Dry.Millimetres + (lumber.Between.Millimetres * Normal());
            return Enumerable.Range(0, 8).All(_ => board + (lumber.Within.Millimetres * Normal()) >= finished.Millimetres + 0.5);
        });

        Assert.Equal(clean / 400.0, lumber.To(finished, Length.FromMillimetres(0.5), 8).CleanUp.Percent, 1.0);
    }

    [Fact]
    public void Thicker_finish_deeper_cut_and_more_places_clean_up_less()
    {
        var lumber = Lumber(1.0625, 7.0);
        double Clean(double finishedMm, double cutMm, int places) => lumber.To(Length.FromMillimetres(finishedMm), Length.FromMillimetres(cutMm), places).CleanUp.Fraction;

        Assert.True(Clean(24.0, 0.5, 8) > Clean(24.5, 0.5, 8));
        Assert.True(Clean(24.0, 0.5, 8) > Clean(24.0, 0.8, 8));
        Assert.True(Clean(24.0, 0.5, 8) > Clean(24.0, 0.5, 10));
        var thickest = lumber.ThickestFor(Share.FromPercent(95.0), Length.FromMillimetres(0.5), 8);
        Assert.Equal(95.0, lumber.To(thickest, Length.FromMillimetres(0.5), 8).CleanUp.Percent, 1e-6);
    }

    // Published: each 1/32 in too much costs 2 to 3 % of the yield.
    [Fact]
    public void A_sixteenth_too_thick_costs_four_to_six_percent()
    {
        var loss = ThicknessLoss.Of(Expect.Inches(0.0625), Share.FromPercent(90.0), BoardFeet.From(1000), 3.0, 2.0);

        Assert.Equal((120.0, 180.0, 100.0), (Math.Round(loss.TooThickLow, 6), Math.Round(loss.TooThickHigh, 6), Math.Round(loss.Skipped, 6)));
    }

    private static Dressing Lumber(double greenIn, double moisturePercent) => Expect.Done(Dressing.Of(
        Expect.Inches(greenIn), Expect.Inches(0.0139), Expect.Inches(0.0168), Expect.Species("northern red oak"), MoistureContent.FromPercent(moisturePercent), default));

    private static List<ThicknessReading> Boards(params double[] meansMm) =>
        [.. meansMm.SelectMany((mean, board) => new[] { -0.1, 0.1 }.Select(off => new ThicknessReading($"{board + 1}", Length.FromMillimetres(mean + off))))];
}
