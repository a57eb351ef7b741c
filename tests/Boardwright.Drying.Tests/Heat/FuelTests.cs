using Boardwright.Drying.Heat;
using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Heat;

public sealed class FuelTests
{
    [Theory]
    [InlineData(22.0, 49.0)]
    [InlineData(27.0, 40.0)]
    public void Six_cords_of_slabs_last_until_december(double kilowatts, double days)
    {
        // Demonstration yard (invented inputs): 6 cords, 0.66 solid, 550 kg/m3 oven-dry, 60 % of 19.8 MJ/kg delivered.
        var stock = new FuelStock(6.0, Share.FromFraction(0.66), Density.FromKilogramsPerCubicMetre(550.0), 19.8, Share.FromPercent(60.0));

        Assert.Equal(days, stock.DaysAt(kilowatts)!.Value, 0.5);
        Assert.Null(stock.DaysAt(0.0));
    }

    [Fact]
    public void Wetter_wood_gives_less_of_less()
    {
        var dry = FuelHeat.Of(MoistureContent.FromPercent(20.0), FireSetting.Usual);
        var green = FuelHeat.Of(MoistureContent.FromPercent(80.0), FireSetting.Usual);

        Assert.True(green.HigherKilojoulesPerKilogram < dry.HigherKilojoulesPerKilogram && green.Efficiency < dry.Efficiency);
        Assert.Equal(20_000.0 / 1.2, dry.HigherKilojoulesPerKilogram, 1e-9);
    }
}
