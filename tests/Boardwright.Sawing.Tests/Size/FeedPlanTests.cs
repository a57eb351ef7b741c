using Boardwright.Quantities;

namespace Boardwright.Sawing.Tests.Size;

public sealed class FeedPlanTests
{
    private static readonly Dressing Lumber = new(Length.FromInches(1.09), Length.FromInches(0.012), Length.FromInches(0.016));

    // By hand: sqrt(0.012² + 0.016²) = 0.020; 1.09 + 3.09 x 0.020 = 1.1518; 0.3393 over 0.8125 in three passes of 0.1131.
    [Fact]
    public void Passes_are_equal_none_takes_more_than_it_may_and_the_last_is_the_finish()
    {
        var plan = FeedPlan.Of(Lumber, Length.FromInches(0.8125), Length.FromInches(0.125));

        Assert.Equal(1.1518, plan.Thickest.Inches, 1e-9);
        Assert.Equal([1.0387, 0.9256, 0.8125], plan.Openings.Select(opening => Math.Round(opening.Inches, 9)));
    }

    [Fact]
    public void Nothing_is_fed_where_nothing_has_to_come_off()
    {
        Assert.Empty(FeedPlan.Of(Lumber, Length.FromInches(1.2), Length.FromInches(0.125)).Openings);
        Assert.Single(FeedPlan.Of(Lumber, Length.FromInches(1.1518 - 0.125), Length.FromInches(0.125)).Openings);
    }
}
