using Boardwright.Quantities;

namespace Boardwright.Wood.Tests;

public sealed class AirStateTests
{
    [Fact]
    public void Air_at_25_C_and_wet_bulb_18_has_the_humidity_of_the_handbook()
    {
        var air = Done(AirState.FromWetBulb(Temperature.FromCelsius(25), Temperature.FromCelsius(18), AirState.StandardPressure));

        Assert.Equal(50.681, air.Humidity.Percent, 0.02);
        Assert.Equal(14.072, air.DewPoint!.Value.Celsius, 0.01);
        Assert.Equal(9.240, air.Emc!.Value.Percent, 0.005);
    }

    private static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;
}
