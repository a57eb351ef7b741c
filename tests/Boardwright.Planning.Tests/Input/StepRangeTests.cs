namespace Boardwright.Planning.Tests;

public sealed class StepRangeTests
{
    [Fact]
    public void Stretches_that_touch_are_joined_and_hold_the_same_steps()
    {
        StepRange[] down = [new(8, 12), new(2, 5), new(4, 6), new(6, 6), new(3, 4), new(12, 14)];

        var joined = StepRange.Joined(down);

        Assert.Equal([new(2, 6), new(8, 14)], joined);
        Assert.Equal(
            Enumerable.Range(0, 20).Where(step => down.Any(stretch => stretch.From <= step && step < stretch.To)),
            Enumerable.Range(0, 20).Where(step => joined.Any(stretch => stretch.From <= step && step < stretch.To)));
    }
}
