using Boardwright.Drying.Heat;
using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Heat;

public sealed class BoilerTests
{
    private static readonly ShopHeat Shop = new(Temperature.FromCelsius(16.0), 0.55);

    private static readonly Boiler[] Boilers =
    [
        new("B1", Power.FromKilowatts(50.0), [(new(2026, 10, 27), new(2026, 11, 16))]),
        new("B2", Power.FromKilowatts(30.0), []),
    ];

    [Theory]
    [InlineData(1.0, 21.8)]
    [InlineData(-5.0, 18.5)]
    [InlineData(-14.0, 13.5)]
    public void Spare_heat_with_one_boiler_out_falls_with_the_frost(double outside, double spare)
    {
        // Demonstration yard (invented): 30 kW left, shop and house 0.55 kW for each kelvin below 16 C; two kilns want 14 kW.
        var day = Assert.Single(HeatDay.Of([(new(2026, 11, 10), Temperature.FromCelsius(outside), 14.0)], Boilers, Shop));

        Assert.Equal(30.0, day.CapacityKilowatts);
        Assert.Equal(spare, day.SpareKilowatts, 0.1);
        Assert.Equal(Math.Max(0.0, 14.0 - day.SpareKilowatts), day.ShortKilowatts, 9);
    }

    [Fact]
    public void A_boiler_is_back_on_the_day_its_outage_ends()
    {
        Assert.Equal(30.0, Boiler.CapacityKilowatts(Boilers, new(2026, 11, 15)));
        Assert.Equal(80.0, Boiler.CapacityKilowatts(Boilers, new(2026, 11, 16)));
        Assert.Equal(80.0, Boiler.CapacityKilowatts(Boilers, new(2026, 10, 26)));
        Assert.False((Boilers[0] with { Outages = [(new(2026, 10, 27), null)] }).RunsOn(new(2027, 1, 1)));
    }

    [Theory]
    [InlineData(10.0, 6.1, 3.2)]
    [InlineData(1.0, 7.2, 3.9)]
    [InlineData(-14.0, 9.0, 5.0)]
    [InlineData(-20.0, 9.7, 5.4)]
    public void Holding_heat_scales_with_inside_minus_outside(double outside, double k1, double k2)
    {
        var coldest = Temperature.FromCelsius(-14.0);

        Assert.Equal(k1, new HoldingHeat(Power.FromKilowatts(9.0), Temperature.FromCelsius(60.0), coldest).KilowattsAt(Temperature.FromCelsius(outside)), 0.06);
        Assert.Equal(k2, new HoldingHeat(Power.FromKilowatts(5.0), Temperature.FromCelsius(54.4), coldest).KilowattsAt(Temperature.FromCelsius(outside)), 0.06);
    }

    [Fact]
    public void A_coil_gives_less_to_a_hotter_kiln_and_nothing_to_one_as_hot_as_the_water()
    {
        var coil = new Coil(Power.FromKilowatts(28.0), Temperature.FromCelsius(82.0), Temperature.FromCelsius(43.0));
        var water = Temperature.FromCelsius(82.0);

        Assert.Equal(28.0, coil.Kilowatts(water, Temperature.FromCelsius(43.0)), 9);
        Assert.Equal(28.0 * 11.0 / 39.0, coil.Kilowatts(water, Temperature.FromCelsius(71.0)), 9);
        Assert.Equal(0.0, coil.Kilowatts(water, Temperature.FromCelsius(85.0)));
        var hottest = coil.HottestKilnCelsius(water, 8.0)!.Value;
        Assert.Equal(8.0, coil.Kilowatts(water, Temperature.FromCelsius(hottest)), 9);
    }
}
