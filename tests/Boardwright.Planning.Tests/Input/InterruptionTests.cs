using Boardwright.Quantities;

namespace Boardwright.Planning.Tests;

public sealed class InterruptionTests
{
    [Theory]
    [InlineData("K1")]
    [InlineData("K1:2026-11-09")]
    [InlineData("K1:2026-11-09..")]
    [InlineData("K1:2026-11-16..2026-11-09")]
    [InlineData("K1:9 Nov..16 Nov")]
    [InlineData(":2026-11-09..2026-11-16")]
    public void Text_of_another_form_is_refused(string text)
    {
        var refused = Assert.IsType<Outcome<Interruption>.Refused>(Interruption.Read("--without", text));

        Assert.Equal(("--without", text), (refused.Reasons[0].What, refused.Reasons[0].Given));
    }

    [Fact]
    public void A_boiler_without_some_days_gives_no_heat_in_them()
    {
        var without = Applied("B2:2026-11-03..2026-11-04");

        Assert.Equal([new StepRange(24, 72)], without.Heat.Boilers[1].Outages);
        Assert.Equal(SmallYard.Input.Heat.Boilers[0], without.Heat.Boilers[0]);
    }

    [Fact]
    public void A_kiln_without_some_days_stops_the_clock_of_the_charge_in_it()
    {
        var without = Applied("K2:2026-11-03..2026-11-03");

        Assert.Equal([new StepRange(24, 48)], without.Kilns[1].Outages);
        Assert.Equal((84.0, 114.0), (without.Started[0].DryHalf.Hours, without.Started[0].DryMost.Hours));
    }

    [Fact]
    public void A_charge_that_is_dry_before_is_not_stopped() => Assert.Equal(60.0, Applied("K2:2026-11-05..2026-11-06").Started[0].DryHalf.Hours);

    [Fact]
    public void Equipment_that_the_yard_does_not_have_is_refused_with_what_it_has()
    {
        var refused = Assert.IsType<Outcome<PlanInput>.Refused>(new Interruption("K9", SmallYard.Monday, SmallYard.Monday).ApplyTo(SmallYard.Input));

        Assert.Equal("K1, K2, K3, B1, B2", refused.Reasons[0].Accepted);
    }

    private static PlanInput Applied(string text) =>
        Assert.IsType<Outcome<PlanInput>.Done>(Interruption.Read("--without", text).Then(interruption => interruption.ApplyTo(SmallYard.Input))).Value;
}
