using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests.Kiln;

public class KilnStopTests
{
    private static readonly Temperature Outside = Temperature.FromCelsius(-4.0);

    [Fact]
    public void Time_until_a_temperature_leads_to_that_temperature()
    {
        var body = new KilnInertia(2.4e7, 120.0);
        foreach (var celsius in new[] { 60.0, 40.0, 12.0, -3.0 })
        {
            var until = body.Until(Temperature.FromCelsius(celsius), Temperature.FromCelsius(65.0), Outside)!.Value;
            Assert.Equal(celsius, body.After(until, Temperature.FromCelsius(65.0), Outside).Celsius, 1e-9);
        }
    }

    [Fact]
    public void What_is_never_reached_has_no_time()
    {
        var body = new KilnInertia(2.4e7, 120.0);

        Assert.Null(body.Until(Temperature.FromCelsius(-10.0), Temperature.FromCelsius(65.0), Outside));
        Assert.Null(body.Until(Temperature.FromCelsius(60.0), Temperature.FromCelsius(20.0), Outside, Power.FromKilowatts(1.0)));
        Assert.Equal(0.0, body.Until(Temperature.FromCelsius(65.0), Temperature.FromCelsius(65.0), Outside)!.Value.Hours, 1e-12);
    }

    [Fact]
    public void Load_holds_the_heat_that_warming_it_takes()
    {
        // The worked example of docs/methods/kiln-heat.md: 42.9 kW for 8 h from 10 to 43 °C, 2.6 kW of it through the walls. Water bound in wood holds a little more than the terms there say.
        var load = KilnInertia.Of(Mass.FromKilograms(7433.0), Given.Moisture(80.0), Temperature.FromCelsius(26.5), KilnStructure.Example);

        Assert.InRange(load.HeatCapacityJoulesPerKelvin / 3.6e6 * 33.0, 322.0, 1.05 * 322.0);
    }

    [Fact]
    public void Shut_air_grows_moister_as_it_cools_and_meets_its_humidities()
    {
        var air = new ClosedAir(Temperature.FromCelsius(43.33), RelativeHumidity.FromPercent(75.0));
        var damp = air.CooledTo(RelativeHumidity.FromPercent(85.0))!.Value;
        var dew = air.CooledTo(RelativeHumidity.FromPercent(100.0))!.Value;

        Assert.True(dew < damp && damp < air.DryBulb);
        Assert.Equal(SaturationPressure.Pascals(43.33) * 0.75, SaturationPressure.Pascals(dew.Celsius), 0.5);
        Assert.Null(new ClosedAir(air.DryBulb, RelativeHumidity.FromPercent(90.0)).CooledTo(RelativeHumidity.FromPercent(85.0)));
    }

    [Fact]
    public void Dry_wood_gains_once_the_shut_air_holds_it_wetter()
    {
        var air = new ClosedAir(Temperature.FromFahrenheit(150.0), RelativeHumidity.FromPercent(30.0));
        var at = air.Wets(Given.Moisture(12.0))!.Value;
        var humidity = air.Humidity.Fraction * SaturationPressure.Pascals(air.DryBulb.Celsius) / SaturationPressure.Pascals(at.Celsius);

        Assert.Equal(12.0, Emc.Percent(at.Celsius, humidity), 1e-3);
        Assert.Null(air.Wets(Given.Moisture(3.0)));
    }

    [Fact]
    public void Heat_comes_before_spray_in_every_order()
    {
        foreach (var order in new[] { KilnRestart.OfAir, KilnRestart.OfVacuum })
        {
            var steps = order.ToList();
            Assert.True(steps.IndexOf(RestartStep.Heated) < steps.IndexOf(RestartStep.Humid));
            Assert.True(steps.IndexOf(RestartStep.Moving) < steps.IndexOf(RestartStep.Heated));
            Assert.Equal(RestartStep.Safe, steps[0]);
            Assert.Equal(RestartStep.Resumed, steps[^1]);
            Assert.Equal(steps.Count, steps.Distinct().Count());
        }

        Assert.True(KilnRestart.OfAir.ToList().IndexOf(RestartStep.WickWet) < KilnRestart.OfAir.ToList().IndexOf(RestartStep.Humid));
    }

    [Theory]
    [InlineData("northern red oak", 18.0, 5.5, StopDanger.Low)] // a stop of 5 h 30 min in red oak below 20 %: low risk
    [InlineData("northern red oak", 45.0, 5.5, StopDanger.High)]
    [InlineData("northern red oak", 28.0, 5.5, StopDanger.Watch)]
    [InlineData("sugar maple", 40.0, 20.0, StopDanger.High)]
    [InlineData("sugar maple", 40.0, 3.0, StopDanger.Watch)]
    [InlineData("white ash", 40.0, 20.0, StopDanger.Watch)]
    public void Danger_of_a_stop_goes_by_wood_and_moisture(string species, double moisture, double hours, StopDanger danger) =>
        Assert.Equal(danger, StopRisk.Of(Given.Species(species), Given.Moisture(moisture), Elapsed.FromHours(hours)).Danger);
}
