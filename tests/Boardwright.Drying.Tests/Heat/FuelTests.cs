using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Drying.Tests.Heat;

public sealed class FuelTests
{
    public static IEnumerable<object[]> Rows() => PublishedTable.Theory("heat-fuel");

    [Theory, MemberData(nameof(Rows))]
    public void Published_fuel_figures_are_reproduced(PublishedRow row) => Assert.InRange(
        row.Quantity switch
        {
            "net_value" => FuelHeat.NetMegajoulesPerKilogram(row["NCV_dry_MJ_kg"], row["w_wet_basis_pct"] / 100.0),
            "fuel_mass" => row["heat_to_water_kWh"] * 3.6 / row["efficiency_NCV"] / FuelHeat.NetMegajoulesPerKilogram(row["NCV_dry_MJ_kg"], row["w_wet_basis_pct"] / 100.0),
            "gross" => Balance(row).HigherKilojoulesPerKilogram / FuelHeat.KilojoulesPerBtuPerPound,
            "fuel_water" => Balance(row).FuelWaterLoss / FuelHeat.KilojoulesPerBtuPerPound,
            "hydrogen" => Balance(row).HydrogenLoss / FuelHeat.KilojoulesPerBtuPerPound,
            "dry_gas" => Balance(row).DryGasLoss / FuelHeat.KilojoulesPerBtuPerPound,
            "other" => Balance(row).OtherLoss / FuelHeat.KilojoulesPerBtuPerPound,
            "recoverable" => Balance(row).RecoverableKilojoulesPerKilogram / FuelHeat.KilojoulesPerBtuPerPound,
            "efficiency" => Balance(row).Efficiency,
            _ => double.NaN,
        },
        row.Low, row.High);

    [Fact]
    public void The_tables_would_notice_a_one_percent_error() => Assert.All(
        PublishedTable.Rows("heat-fuel"), row => Assert.True(Math.Abs(row.ExpectedNumber) * 0.01 > row.Tolerance));

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

    private static FuelHeat Balance(PublishedRow row) => FuelHeat.Of(
        MoistureContent.FromFraction(row["w_wet_basis"] / (1.0 - row["w_wet_basis"])),
        new(Temperature.FromFahrenheit(row["T_flue_F"]), Temperature.FromFahrenheit(row["T_air_F"]), row["excess_air"]),
        row["HHV_btu_lb_dry"] * FuelHeat.KilojoulesPerBtuPerPound);
}
