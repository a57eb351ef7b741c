namespace Boardwright.Yard.Tests.Air;

public sealed class AirStateTests
{
    [Theory]
    [InlineData("--wet-bulb 18C")]
    [InlineData("--rh 50.681%")]
    [InlineData("--dew-point 14.072C")]
    public void The_same_air_comes_from_any_of_its_three_readings(string reading)
    {
        var air = Answers.Json("air state --dry-bulb 25C " + reading);

        Assert.Equal(["dry_bulb_c", "wet_bulb_c", "dew_point_c", "rh_pct", "humidity_ratio_kg_per_kg", "vapour_pressure_pa", "enthalpy_kj_per_kg", "emc_pct"], air.Keys());
        Assert.Equal(25.0, air.Number("dry_bulb_c"), 1e-9);
        Assert.Equal(18.0, air.Number("wet_bulb_c"), 0.002);
        Assert.Equal(14.072, air.Number("dew_point_c"), 0.002);
        Assert.Equal(50.681, air.Number("rh_pct"), 0.01);
        Assert.Equal(0.010018, air.Number("humidity_ratio_kg_per_kg"), 2e-6);
        Assert.Equal(1606.2, air.Number("vapour_pressure_pa"), 0.4);
        Assert.Equal(50.670, air.Number("enthalpy_kj_per_kg"), 0.01);
        Assert.Equal(9.240, air.Number("emc_pct"), 0.003);
    }

    [Fact]
    public void Thinner_air_is_more_humid_at_the_same_two_bulbs() =>
        Assert.Equal(59.416, Answers.Json("air state --dry-bulb 60C --wet-bulb 50C --pressure 84556Pa").Number("rh_pct"), 0.01);

    [Fact]
    public void What_has_no_value_is_null()
    {
        Assert.True(Answers.Json("air state --dry-bulb 40C --rh 0%").IsNull("dew_point_c"));
        Assert.True(Answers.Json("air state --dry-bulb 150C --rh 5%").IsNull("emc_pct"));
    }

    [Theory]
    [InlineData("--dry-bulb 110F --wet-bulb 126F", "--wet-bulb", "126F", "43.33 C (110 F), the dry bulb")]
    [InlineData("--dry-bulb 110F --wet-bulb 20F", "--wet-bulb", "20F", "bone-dry air")]
    [InlineData("--dry-bulb 68F --dew-point 70F", "--dew-point", "70F", "the dry bulb")]
    [InlineData("--dry-bulb 120C --rh 60%", "--rh", "60%", "less than 51")]
    [InlineData("--dry-bulb 20C --rh 60% --pressure 20MPa", "--pressure", "20MPa", "10 MPa")]
    [InlineData("--dry-bulb 20C --rh 60% --pressure 5mbar", "--pressure", "5mbar", "1 to 1000 kPa")]
    [InlineData("--dry-bulb 20C --rh 160%", "--rh", "160%", "0 to 100 %")]
    [InlineData("--dry-bulb 68 --rh 60%", "--dry-bulb", "68", "with its unit")]
    [InlineData("--dry-bulb 68F", "--rh", "nothing", "exactly one")]
    [InlineData("--dry-bulb 68F --rh 50% --wet-bulb 60F", "--rh", "50%", "exactly one")]
    public void Air_that_cannot_be_is_refused_in_the_words_of_the_person(string options, string what, string given, string accepted)
    {
        var reason = Answers.Refusal("air state " + options);

        Assert.Equal(what, reason.What);
        Assert.Equal(given, reason.Given);
        Assert.Contains(accepted, reason.Accepted, StringComparison.Ordinal);
    }
}
