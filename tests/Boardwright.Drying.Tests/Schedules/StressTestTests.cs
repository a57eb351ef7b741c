using Boardwright.Drying.Schedules;
using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Schedules;

public class StressTestTests
{
    [Theory]
    [InlineData(8.0, 3.5, 4.5, ProngTurn.In)]
    [InlineData(8.0, 6.0, 2.0, ProngTurn.SlightlyIn)]
    [InlineData(8.0, 7.5, 0.5, ProngTurn.Straight)]
    [InlineData(8.0, 9.0, -1.0, ProngTurn.Straight)]
    [InlineData(8.0, 10.0, -2.0, ProngTurn.Out)]
    public void Measured_tips_make_the_word(double sawn, double read, double index, ProngTurn turn)
    {
        var found = StressTest.Index(Length.FromMillimetres(100.0), Length.FromMillimetres(sawn), Length.FromMillimetres(read));

        Assert.Equal(index, found, 1e-9);
        Assert.Equal(turn, StressTest.Turn(index));
    }
}
