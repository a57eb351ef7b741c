using Boardwright.Quantities;

namespace Boardwright.Sawing.Tests.Scaling;

/// <summary>A butt log from the girth of its tree.</summary>
public class StandingTreeTests
{
    // Bark 0.921 (0.029) and taper 0.70 (0.35) in per 4 ft: lenhart-sweetgum, computed; worked by hand for 94 in and 8 ft: 29.92 over bark, 27.56 - 0.79 = 26.77, deviation sqrt(0.868^2 + 0.394^2 + 0.827^2) = 1.262.
    [Fact]
    public void A_girth_gives_the_small_end_with_its_spread()
    {
        var tree = Done(94.0, 8.0);

        Assert.Equal(29.92, tree.OverBark.Inches, 0.01);
        Assert.Equal(26.77, tree.Likely.Inches, 0.01);
        Assert.Equal((26.77 - 1.617, 26.77 + 1.617), (tree.Low.Inches, tree.High.Inches), (a, b) => Math.Abs(a.Item1 - b.Item1) < 0.02 && Math.Abs(a.Item2 - b.Item2) < 0.02);
    }

    [Fact]
    public void A_longer_log_ends_thinner_and_is_known_less_well()
    {
        var (shorter, longer) = (Done(94.0, 8.0), Done(94.0, 16.0));

        Assert.Equal(8.0 * 0.70 / 4.0, shorter.Likely.Inches - longer.Likely.Inches, 1e-9);
        Assert.True(longer.High - longer.Low > shorter.High - shorter.Low);
    }

    [Theory]
    [InlineData(10.0, 8.0, "girth")]
    [InlineData(400.0, 8.0, "girth")]
    [InlineData(94.0, 2.0, "length")]
    [InlineData(94.0, 30.0, "length")]
    public void What_is_no_sawlog_is_refused(double girthIn, double feet, string what) =>
        Assert.Equal(what, Assert.IsType<Outcome<StandingTree>.Refused>(StandingTree.Of(Length.FromInches(girthIn), Length.FromFeet(feet))).Reasons[0].What);

    private static StandingTree Done(double girthIn, double feet) => Assert.IsType<Outcome<StandingTree>.Done>(StandingTree.Of(Length.FromInches(girthIn), Length.FromFeet(feet))).Value;
}
