using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Wood.Tests;

public sealed class AirStateTests
{
    private static readonly Gen<(double, double, double)> Air = Gen.Select(Gen.Double[-60.0, 190.0], Gen.Double[0.0005, 0.9995], Gen.Double[6e3, 3e5]);

    // In steam without air the wet bulb is the boiling point whatever the dry bulb: it tells nothing of the humidity any more.
    private const double SteamShare = 0.999;

    [Fact]
    public void Humidity_from_the_wet_bulb_it_gave_is_the_humidity() => Air.Always(
        (dryBulb, humidity, pressure) =>
        {
            if (AirState.FromHumidity(Temperature.FromCelsius(dryBulb), RelativeHumidity.FromFraction(humidity), Pressure.FromPascals(pressure)) is Outcome<AirState>.Done(var air) && air.WetBulb is { } wetBulb && air.VapourPressure.Pascals < SteamShare * pressure)
            {
                var back = Expect.Done(AirState.FromWetBulb(air.DryBulb, wetBulb, air.Pressure));
                Assert.Equal(air.Humidity.Fraction, back.Humidity.Fraction, 1e-7);
                Assert.True(wetBulb <= air.DryBulb);
            }
        },
        draws: 3000);

    [Fact]
    public void Humidity_from_the_dew_point_it_gave_is_the_humidity() => Air.Always(
        (dryBulb, humidity, pressure) =>
        {
            if (AirState.FromHumidity(Temperature.FromCelsius(dryBulb), RelativeHumidity.FromFraction(humidity), Pressure.FromPascals(pressure)) is Outcome<AirState>.Done(var air) && air.DewPoint is { } dewPoint)
            {
                // The two saturation curves step by 0.02 % at the triple point, where a dew point stands for a range of pressures.
                var back = Expect.Done(AirState.FromDewPoint(air.DryBulb, dewPoint, air.Pressure));
                Assert.Equal(1.0, back.Humidity.Fraction / air.Humidity.Fraction, 3e-4);
            }
        },
        draws: 3000);

    [Fact]
    public void Dew_point_wet_bulb_and_dry_bulb_stand_in_order() => Air.Always(
        (dryBulb, humidity, pressure) =>
        {
            // Above freezing only: a frost point may exceed a water wet bulb by the step at 0 C.
            if (AirState.FromHumidity(Temperature.FromCelsius(dryBulb), RelativeHumidity.FromFraction(humidity), Pressure.FromPascals(pressure)) is Outcome<AirState>.Done({ DewPoint.Celsius: > 0.5 } air))
                Assert.True(air.DewPoint < air.WetBulb && air.WetBulb < air.DryBulb, air.ToString());
        },
        draws: 3000);

    [Fact]
    public void Wetter_air_has_a_higher_wet_bulb_dew_point_enthalpy_and_emc_above_freezing() => Gen.Select(Gen.Double[25.0, 90.0], Gen.Double[0.05, 0.97], Gen.Double[0.001, 0.02]).Always(
        (dryBulb, humidity, more) =>
        {
            var dry = Expect.Done(AirState.FromHumidity(Temperature.FromCelsius(dryBulb), RelativeHumidity.FromFraction(humidity), AirState.StandardPressure));
            var wet = Expect.Done(AirState.FromHumidity(Temperature.FromCelsius(dryBulb), RelativeHumidity.FromFraction(humidity + more), AirState.StandardPressure));
            Assert.True(wet.WetBulb > dry.WetBulb && wet.DewPoint > dry.DewPoint && wet.Emc > dry.Emc && wet.EnthalpyKilojoulesPerKilogram > dry.EnthalpyKilojoulesPerKilogram);
        },
        draws: 1000);

    [Theory]
    [InlineData(-60.0, 0.3)]
    [InlineData(-20.0, 0.5)]
    [InlineData(-0.5, 0.99)]
    [InlineData(0.0, 0.02)]
    [InlineData(4.9, 0.36)]
    [InlineData(5.0, 0.34)]
    [InlineData(5.1, 0.01)]
    public void A_wet_bulb_is_found_in_every_frosty_state(double dryBulb, double humidity)
    {
        var air = Expect.Done(AirState.FromHumidity(Temperature.FromCelsius(dryBulb), RelativeHumidity.FromFraction(humidity), AirState.StandardPressure));

        Assert.Equal(humidity, MoistAir.HumidityAtWetBulb(dryBulb, air.WetBulb!.Value.Celsius, 101325.0), 1e-8);
    }

    [Fact]
    public void Saturated_air_has_one_temperature()
    {
        var air = Expect.Done(AirState.FromHumidity(Temperature.FromCelsius(20), RelativeHumidity.FromPercent(100), AirState.StandardPressure));

        Assert.Equal(20.0, air.WetBulb!.Value.Celsius, 1e-6);
        Assert.Equal(20.0, air.DewPoint!.Value.Celsius, 1e-6);
    }

    [Fact]
    public void Bone_dry_air_has_a_wet_bulb_and_no_dew_point()
    {
        var air = Expect.Done(AirState.FromHumidity(Temperature.FromCelsius(40), default, AirState.StandardPressure));

        Assert.Null(air.DewPoint);
        Assert.Equal(0.0, air.Emc!.Value.Percent);
        Assert.InRange(air.WetBulb!.Value.Celsius, 14.5, 14.7);
    }

    [Fact]
    public void Emc_is_not_given_where_the_sorption_equation_ends() =>
        Assert.Null(Expect.Done(AirState.FromHumidity(Temperature.FromCelsius(150), RelativeHumidity.FromPercent(5), AirState.StandardPressure)).Emc);

    [Fact]
    public void A_wet_bulb_above_the_dry_bulb_is_refused() => Assert.Equal(
        new Refusal("wet-bulb", "25 C (77 F)", "5.84 C (42.5 F), the wet bulb of bone-dry air, to 20 C (68 F), the dry bulb"),
        Expect.Refused(AirState.FromWetBulb(Temperature.FromCelsius(20), Temperature.FromCelsius(25), AirState.StandardPressure)));

    [Fact]
    public void A_wet_bulb_no_air_can_have_is_refused() =>
        Assert.Equal("wet-bulb", Expect.Refused(AirState.FromWetBulb(Temperature.FromCelsius(40), Temperature.FromCelsius(5), AirState.StandardPressure)).What);

    [Fact]
    public void A_wet_bulb_above_boiling_is_refused() =>
        Assert.Equal("wet-bulb", Expect.Refused(AirState.FromWetBulb(Temperature.FromCelsius(80), Temperature.FromCelsius(60), Pressure.FromKilopascals(6))).What);

    [Fact]
    public void Vapour_above_the_total_pressure_is_refused() =>
        Assert.Equal("rh", Expect.Refused(AirState.FromHumidity(Temperature.FromCelsius(120), RelativeHumidity.FromPercent(60), AirState.StandardPressure)).What);

    [Theory]
    [InlineData(-101.0, 101325.0, "dry-bulb")]
    [InlineData(201.0, 101325.0, "dry-bulb")]
    [InlineData(20.0, 100.0, "pressure")]
    [InlineData(20.0, 2e6, "pressure")]
    public void Air_outside_the_equations_is_refused(double dryBulb, double pressure, string what) =>
        Assert.Equal(what, Expect.Refused(AirState.FromHumidity(Temperature.FromCelsius(dryBulb), RelativeHumidity.FromPercent(50), Pressure.FromPascals(pressure))).What);

    [Fact]
    public void Boiling_point_of_water_falls_with_the_pressure()
    {
        Assert.Equal(99.97, SaturationPressure.TemperatureFor(AirState.StandardPressure)!.Value.Celsius, 0.03);
        Assert.Equal(36.16, SaturationPressure.TemperatureFor(Pressure.FromMillibars(60))!.Value.Celsius, 0.02);
    }

    [Fact]
    public void Saturation_pressure_and_its_inverse_agree_and_rise() => Gen.Double[-99.0, 199.0].Always(
        celsius =>
        {
            var pressure = SaturationPressure.Pascals(celsius);
            Assert.Equal(celsius, SaturationPressure.CelsiusFor(pressure)!.Value, 3e-3);
            Assert.True(SaturationPressure.Pascals(celsius + 0.1) > pressure);
        },
        draws: 1000);
}
