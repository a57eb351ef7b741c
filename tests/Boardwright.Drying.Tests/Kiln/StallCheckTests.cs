using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Kiln;

public class StallCheckTests
{
    [Fact]
    public void Hand_bulb_that_agrees_speaks_against_wick_and_water()
    {
        var checks = StallCheck.Of(Known() with { EmcSet = Given.Moisture(4.0), EmcFound = Given.Moisture(4.2) });

        Assert.Equal(StallStanding.Unlikely, Standing(checks, "Wet-bulb wick"));
        Assert.Equal(StallStanding.Unlikely, Standing(checks, "Water comes in"));
        Assert.Equal(StallStanding.Unlikely, Standing(checks, "The air that is set"));
    }

    /// <summary>A dry wick reads too high, so the controller takes the air for wetter than it is and dries on: air found wetter than set clears it. Common practice, no source.</summary>
    [Theory]
    [InlineData(9.1, StallStanding.Unlikely, StallStanding.Likely)]
    [InlineData(2.8, StallStanding.Likely, StallStanding.Unlikely)]
    public void Air_found_wetter_points_to_water_and_drier_to_the_wick(double found, StallStanding wick, StallStanding water)
    {
        var checks = StallCheck.Of(Known() with { EmcSet = Given.Moisture(4.0), EmcFound = Given.Moisture(found) });

        Assert.Equal(wick, Standing(checks, "Wet-bulb wick"));
        Assert.Equal(water, Standing(checks, "Water comes in"));
    }

    [Fact]
    public void Air_that_holds_the_wood_where_it_is_comes_first()
    {
        var checks = StallCheck.Of(Known() with { EmcSet = Given.Moisture(8.8), EmcFound = Given.Moisture(8.9) });

        Assert.StartsWith("The air that is set", checks[0].Cause, StringComparison.Ordinal);
        Assert.Equal(StallStanding.Likely, checks[0].Standing);
    }

    [Fact]
    public void Hot_wood_points_to_the_meter_and_weights_clear_it()
    {
        Assert.Equal(StallStanding.Likely, Standing(StallCheck.Of(Known() with { MeterIn = Temperature.FromFahrenheit(118.0) }), "The meter"));
        Assert.Equal(StallStanding.Open, Standing(StallCheck.Of(Known() with { MeterIn = Temperature.FromFahrenheit(72.0) }), "The meter"));
        Assert.Equal(StallStanding.Unlikely, Standing(StallCheck.Of(Known()), "The meter"));
        Assert.Equal(StallStanding.Open, Standing(StallCheck.Of(Known()), "The sample’s"));
    }

    [Fact]
    public void Dry_bulb_below_its_setting_points_to_cold_wood() =>
        Assert.Equal(StallStanding.Likely, Standing(StallCheck.Of(Known() with { DryBulbs = (Temperature.FromFahrenheit(150.0), Temperature.FromFahrenheit(138.0)) }), "The wood is colder"));

    [Fact]
    public void Without_readings_every_cause_is_named_with_its_test()
    {
        var checks = StallCheck.Of(new(Given.Moisture(9.0), Given.Moisture(7.0), null));

        Assert.Equal(10, checks.Count);
        Assert.Equal(10, checks.Select(check => check.Cause).Distinct().Count());
        Assert.DoesNotContain(checks, check => check.Standing == StallStanding.Likely);
    }

    private static StallEvidence Known() => new(Given.Moisture(9.1), Given.Moisture(7.0), Given.Moisture(4.0));

    private static StallStanding Standing(IReadOnlyList<StallCheck> checks, string cause) => checks.Single(check => check.Cause.StartsWith(cause.Replace('’', '\''), StringComparison.Ordinal)).Standing;
}
