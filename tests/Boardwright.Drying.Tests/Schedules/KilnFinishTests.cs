using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests.Schedules;

public class KilnFinishTests
{
    public static IEnumerable<object[]> Rules => PublishedTable.Theory(
        "schedules", "equalize_from_driest_pct", "equalize_emc_pct", "equalize_until_wettest_pct", "condition_emc_pct");

    public static IEnumerable<object[]> Air => PublishedTable.Theory("schedules", "finish_air_emc_pct");

    [Theory, MemberData(nameof(Rules))]
    public void Finish_follows_the_rule_of_the_source(PublishedRow row)
    {
        var rule = row.Has("rule") && row.Text("rule") == "GTR57" ? FinishRule.Gtr57 : FinishRule.Ah188;
        var softwood = row.Has("wood") && row.Text("wood") == "softwood";

        var finish = Given.Done(KilnFinish.For(Given.Moisture(row["target_mc_pct"]), rule, softwood));

        var actual = row.Quantity switch
        {
            "equalize_from_driest_pct" => finish.EqualizeFromDriest,
            "equalize_emc_pct" => finish.EqualizeEmc,
            "equalize_until_wettest_pct" => finish.EqualizeUntilWettest,
            _ => finish.ConditionEmc,
        };
        Assert.Equal(row.ExpectedNumber, actual.Percent, 1e-9);
    }

    [Theory, MemberData(nameof(Air))]
    public void Printed_finishing_air_holds_the_equilibrium_of_the_rule(PublishedRow row)
    {
        var air = Given.Done(AirState.FromWetBulb(
            Temperature.FromFahrenheit(row["dry_bulb_f"]), Temperature.FromFahrenheit(row["wet_bulb_f"]), AirState.StandardPressure));

        Assert.InRange(air.Emc!.Value.Percent, row.Low, row.High);
    }

    [Theory]
    [InlineData(4.9)]
    [InlineData(12.1)]
    [InlineData(0.0)]
    public void Target_outside_the_printed_rules_is_refused(double percent) =>
        Assert.IsType<Outcome<KilnFinish>.Refused>(KilnFinish.For(Given.Moisture(percent), FinishRule.Ah188));
}
