using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Wood.Tests;

public sealed class EmcTests
{
    [Fact]
    public void Emc_deviates_from_the_printed_table_as_its_documentation_says()
    {
        var deviations = PublishedTable.Rows("emc").Where(row => row.Quantity == "emc_pct")
            .Select(row => Math.Abs(Emc.At(row.Temperature("dry_bulb"), RelativeHumidity.FromPercent(row["rh_pct"])).Percent - row.ExpectedNumber)).ToList();

        Assert.InRange(deviations.Max(), 0.050, 0.057);
        Assert.InRange(deviations.Average(), 0.020, 0.030);
    }

    [Fact]
    public void Emc_rises_with_humidity_over_the_whole_range() => Gen.Select(Gen.Double[-40.0, 132.0], Gen.Double[0.0, 0.99], Gen.Double[0.001, 0.01]).Always(
        (celsius, humidity, more) => Assert.True(Emc.Percent(celsius, humidity + more) > Emc.Percent(celsius, humidity)),
        draws: 5000);

    [Fact]
    public void Emc_falls_with_temperature_from_ten_degrees_up() => Gen.Select(Gen.Double[10.0, 129.0], Gen.Double[0.05, 0.95]).Always(
        (celsius, humidity) => Assert.True(Emc.Percent(celsius + 2.0, humidity) < Emc.Percent(celsius, humidity)),
        draws: 2000);

    [Fact]
    public void Humidity_that_holds_the_emc_of_a_humidity_is_that_humidity() => Gen.Select(Gen.Double[-40.0, 132.0], Gen.Double[0.0, 1.0]).Always(
        (celsius, humidity) =>
        {
            var temperature = Temperature.FromCelsius(celsius);
            var back = Emc.HumidityFor(temperature, Emc.At(temperature, RelativeHumidity.FromFraction(humidity)));
            Assert.Equal(humidity, back!.Value.Fraction, 1e-8);
        },
        draws: 2000);

    [Fact]
    public void Dry_air_dries_wood_completely_and_no_air_holds_it_green()
    {
        Assert.Equal(0.0, Emc.At(Temperature.FromCelsius(20), default).Percent);
        Assert.Null(Emc.HumidityFor(Temperature.FromCelsius(20), MoistureContent.FromPercent(60)));
    }

    [Theory]
    [InlineData(-40.1)]
    [InlineData(133.0)]
    public void Emc_outside_its_range_is_our_mistake(double celsius)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Emc.At(Temperature.FromCelsius(celsius), RelativeHumidity.FromPercent(50)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Emc.HumidityFor(Temperature.FromCelsius(celsius), MoistureContent.FromPercent(8)));
    }
}
