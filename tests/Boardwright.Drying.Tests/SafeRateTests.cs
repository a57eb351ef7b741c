using Boardwright.Quantities;

namespace Boardwright.Drying.Tests;

public class SafeRateTests
{
    [Fact]
    public void Ratio_of_8_4_to_4_4_is_the_power_minus_1_33_for_every_wood()
    {
        foreach (var name in new[] { "white ash", "American beech", "yellow birch", "black cherry", "sugar maple", "red maple", "northern red oak", "white oak", "black walnut" })
        {
            double Rate(string thickness) => Given.Done(SafeRate.For(Given.Species(name), Given.Thickness(thickness))).DailyLossPercent;
            Assert.InRange(Math.Log2(Rate("8/4") / Rate("4/4")), -1.37, -1.30);
        }
    }

    [Fact]
    public void Thicker_wood_never_dries_faster()
    {
        var maple = Given.Species("sugar maple");
        var last = double.MaxValue;
        for (var quarters = 1; quarters <= 40; quarters++)
        {
            var rate = Given.Done(SafeRate.For(maple, Length.FromInches(quarters / 4.0))).DailyLossPercent;
            Assert.True(rate <= last);
            last = rate;
        }
    }

    [Fact]
    public void Extrapolated_thickness_is_marked_so() =>
        Assert.Equal("C", Given.Done(SafeRate.For(Given.Species("northern red oak"), Given.Thickness("12/4"))).Mark);

    [Fact]
    public void Wood_without_a_printed_rate_has_no_answer() =>
        Assert.IsType<Outcome<SafeRate>.NoAnswer>(SafeRate.For(Given.Species("hackberry"), Given.Thickness("4/4")));

    [Fact]
    public void Impossible_thickness_is_refused() =>
        Assert.IsType<Outcome<SafeRate>.Refused>(SafeRate.For(Given.Species("white ash"), Length.FromInches(20.0)));
}
