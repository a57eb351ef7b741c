using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Kiln;

public class KilnDryingTests
{
    [Fact]
    public void Steps_add_up_to_the_likely_time_and_the_band_is_in_order()
    {
        var forecast = Forecast("northern red oak", "4/4", 75.0, 7.0);

        Assert.Equal(forecast.HoursP50, forecast.Steps.Sum(step => step.Hours), 1e-6);
        Assert.True(forecast.HoursP10 < forecast.HoursP50 && forecast.HoursP50 < forecast.HoursP90);
        Assert.Equal(8, forecast.Steps.Count);
    }

    [Fact]
    public void Water_out_is_basic_density_times_the_moisture_lost()
    {
        // two stacks of sugar maple, nominal volume, to 8 %: 414 kg.
        double Water(double boardFeet, double from) =>
            Forecast("sugar maple", "28.6mm", from, 8.0).WaterKilogramsPerCubicMetre * Volume.FromCubicMetres(boardFeet * 0.002359737).CubicMetres;

        Assert.Equal(414.0, Water(1150.0, 22.4) + Water(980.0, 23.1), 5.0);
    }

    [Fact]
    public void Green_oak_loses_no_more_than_the_safe_rate_at_first()
    {
        var forecast = Forecast("northern red oak", "4/4", 75.0, 7.0);
        var safe = Given.Done(SafeRate.For(Given.Species("northern red oak"), Given.Thickness("4/4"))).DailyLossPercent;

        for (var i = 1; i < forecast.Curve.Count; i++)
        {
            var (one, next) = (forecast.Curve[i - 1], forecast.Curve[i]);
            if (next.P50.Percent > 55.0)
                Assert.True((one.P50.Percent - next.P50.Percent) / (next.Hours - one.Hours) * 24.0 <= safe * 1.05);
        }
    }

    [Fact]
    public void Kiln_with_a_lower_limit_is_slower()
    {
        var warm = Forecast("northern red oak", "4/4", 25.0, 8.0);
        var cool = Given.Done(KilnDrying.Forecast(Input("northern red oak", "4/4", 25.0, 8.0) with { Kiln = KilnEquipment.Dehumidification }));

        Assert.True(cool.HoursP50 > warm.HoursP50);
        Assert.All(cool.Steps, step => Assert.True(step.Step.DryBulbFahrenheit <= 140.0 + 1e-9));
    }

    [Theory]
    [InlineData("sugar maple")]
    [InlineData("white oak")]
    public void Eight_quarter_takes_two_to_four_and_a_half_times_four_quarter(string species) =>
        Assert.InRange(Forecast(species, "8/4", 30.0, 8.0).HoursP50 / Forecast(species, "4/4", 30.0, 8.0).HoursP50, 2.0, 4.5);

    [Fact]
    public void Wetter_wood_takes_longer() =>
        Assert.True(Forecast("black cherry", "4/4", 25.0, 7.0).HoursP50 > Forecast("black cherry", "4/4", 15.0, 7.0).HoursP50);

    [Fact]
    public void Wood_without_a_schedule_has_no_answer() =>
        Assert.IsType<Outcome<KilnForecast>.NoAnswer>(KilnDrying.Forecast(Input("sugar maple", "10/4", 30.0, 8.0)));

    [Theory]
    [InlineData(20.0, 25.0)]
    [InlineData(20.0, 3.0)]
    public void Moisture_outside_the_model_is_refused(double from, double to) =>
        Assert.IsType<Outcome<KilnForecast>.Refused>(KilnDrying.Forecast(Input("sugar maple", "4/4", from, to)));

    private static KilnForecast Forecast(string species, string thickness, double from, double to) => Given.Done(KilnDrying.Forecast(Input(species, thickness, from, to)));

    private static KilnDryingInput Input(string species, string thickness, double from, double to) => new()
    {
        Species = Given.Species(species),
        Thickness = Given.Thickness(thickness),
        From = MoistureContent.FromPercent(from),
        To = MoistureContent.FromPercent(to),
    };
}
