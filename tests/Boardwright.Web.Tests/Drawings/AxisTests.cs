using Boardwright.Web.Drawings;

namespace Boardwright.Web.Tests.Drawings;

public sealed class AxisTests
{
    [Fact]
    public void Ratio_scale_gives_equal_ratios_equal_distances()
    {
        var scale = new RatioScale(5, 80, 300, 0);

        Assert.Equal(scale.At(10) - scale.At(20), scale.At(20) - scale.At(40), 1e-9);
        Assert.Equal(300, scale.At(5), 1e-9);
        Assert.Equal(0, scale.At(80), 1e-9);
    }

    [Fact]
    public void Ratio_ticks_keep_their_distance()
    {
        var scale = new RatioScale(5, 120, 300, 0);
        var ticks = scale.Ticks(20).Select(scale.At).ToList();

        Assert.All(ticks.Zip(ticks.Skip(1)), pair => Assert.True(pair.First - pair.Second >= 20));
        Assert.Equal(5, scale.Ticks(20).First());
    }

    [Fact]
    public void Straight_ticks_are_round_and_inside() => Assert.Equal([0, 20, 40, 60, 80], new Scale(0, 80, 0, 1).Ticks(5));

    [Theory]
    [InlineData("2026-05-28", "2027-01-20", 980, "Jun,Jul,Aug,Sep,Oct,Nov,Dec,Jan")]
    [InlineData("2026-10-26", "2026-12-14", 288, "26 Oct,2 Nov,9,16,23,30,7 Dec,14")]
    public void Time_ticks_suit_the_span(string from, string to, double width, string expected) =>
        Assert.Equal(expected, string.Join(',', new TimeScale(DateTime.Parse(from), DateTime.Parse(to), 0, width).Ticks().Select(tick => tick.Label)));
}
