using Boardwright.Drying.Schedules;
using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Schedules;

public class KilnFinishTests
{
    [Theory]
    [InlineData(4.9)]
    [InlineData(12.1)]
    [InlineData(0.0)]
    public void Target_outside_the_printed_rules_is_refused(double percent) =>
        Assert.IsType<Outcome<KilnFinish>.Refused>(KilnFinish.For(Given.Moisture(percent), FinishRule.Ah188));
}
