using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Tests.Scenario;

public sealed class X21_30_SeasonAndMoney
{
    // S-02 at 14.6 % gains outdoors: the air of November and December holds wood at 16.5 and 16.9 % (sorption equation, M). The sign is the answer: ship now.
    [Theory]
    [InlineData(11, 16.5)]
    [InlineData(12, 16.9)]
    public void X_21_ash_left_outdoors(int month, double emcPercent)
    {
        var normal = Expected.Yard.Normals[month];
        var emc = Emc.At(Temperature.FromCelsius(normal.MeanC), RelativeHumidity.FromPercent(normal.MeanRhPct));

        Assert.Equal(14.6, Expected.Yard.Stacks["S-02"].Moisture!.Mean!.Value.Percent, 0.1);
        Assert.Equal(emcPercent, emc.Percent, 0.1);
        Assert.True(emc > Expected.Yard.Stacks["S-02"].Moisture!.Mean!.Value);
    }

    // D-41 in K2 as 4/4: 905 + 840 + 120/1.094 = 1855 of 2000 bf, within 1. Thicker wood fits by (t/(t + 0.75))/(1/1.75).
    [Fact]
    public void X_22_load_of_a_mixed_charge()
    {
        var yard = Expected.Yard;

        var load = yard.PlannedCharges["D-41"].Stacks.Select(tag => yard.Stacks[tag]).Sum(stack => stack.Footage.Count / Fits(stack.Thickness.Inches));

        Assert.Equal(1855.0, load, 1.0);
        Assert.Equal(2000.0, yard.Kilns["K2"].Installed.CapacityBf);
    }

    // Six cords at a mean of 22 and 27 kW: about 49 and 40 days, within 20 %. 0.66 solid, 550 kg oven-dry a solid m3 (M), 60 % of 19.8 MJ/kg delivered.
    [Theory]
    [InlineData(22.0, 49.0)]
    [InlineData(27.0, 40.0)]
    public void X_23_days_of_fuel(double kilowatts, double days)
    {
        var yard = Expected.Yard;
        var fuel = new Drying.Heat.FuelStock(
            yard.Fuel!.Count.Cords, Share.FromFraction(yard.Fuel.Count.SolidShare), Density.FromKilogramsPerCubicMetre(yard.Setting("oven_dry_per_solid")!.Value), yard.Setting("wood_heating_value")!.Value,
            Share.FromPercent(yard.Setting("fuel_delivered")!.Value));

        Assert.Equal(days, fuel.DaysAt(kilowatts)!.Value, days * 0.20);
    }

    // K1 in 8/4: 5091 bf, within 1.
    [Fact]
    public void X_24_capacity_in_thick_wood() => Assert.Equal(5091.0, Expected.Yard.Kilns["K1"].Installed.CapacityBf * Fits(2.0), 1.0);

    // International 1/4 in at 8 ft: 203.0, 240.7, 281.5 bf at 24, 26, 28 in, within 0.5; worth before profit 44, 99, 158, within 1: 0.85 of the scale at 3.40 less sawing,
    // drying and handling, less haul 222 and expected metal 27.
    [Theory]
    [InlineData(24.0, 203.0, 44.0)]
    [InlineData(26.0, 240.7, 99.0)]
    [InlineData(28.0, 281.5, 158.0)]
    public void X_26_the_telephone_call(double smallEndIn, double boardFeet, double money)
    {
        var yard = Expected.Yard;
        var tree = yard.Calls.Single(call => call.Fact.Tree is not null).Fact.Tree!;
        var scale = Expected.Done(LogScale.Of(LogRule.InternationalQuarter, new MeasuredLog(Length.FromInches(smallEndIn), Length.FromMetres(tree.LogLengthM!.Value)))).GrossUnrounded!.Value;

        double Money(string name) => yard.Setting(name)!.Value;
        var perBf = Money("dry_4_4_1c_and_better_northern_red_oak") - Money("custom_sawing") - Money("custom_air_drying") - Money("custom_kiln_drying_to_5_4")
            - Money("log_yard_and_loader") - Money("end_coat_and_lost_in_drying") - Money("tally_packing_storage") - Money("office_selling_insurance");
        var haul = 2.0 * tree.RoadMiles!.Value * Money("haul_per_mile") + 1.5 * Money("haul_per_hour");
        var metal = Money("strikes_fence_line") * Money("metal_strike");

        Assert.True(smallEndIn * 25.4 >= tree.SmallEndLowMm - 0.1 && smallEndIn * 25.4 <= tree.SmallEndHighMm + 0.1);
        Assert.Equal(boardFeet, scale, 0.5);
        Assert.Equal((222.0, 27.0), (haul, Math.Round(metal, 9)));
        Assert.Equal(money, Money("dry_sold_per_international") * scale * perBf - haul - metal, 1.0);
    }

    // Price paid: tree services 190.00, storm jobs 71.00, woodlots 395.25, yard trees 461.00, in all 1117.25; exact, by the yard's own rule on the scale to the nearest 5.
    [Fact]
    public void X_30_price_paid_for_the_logs()
    {
        var logs = Expected.Yard.Logs.Values.Where(log => log.Tag.StartsWith("L-", StringComparison.Ordinal)).ToList();

        Assert.All(logs, log => Assert.Equal(Price(log), log.PaidMoney!.Value));
        var paid = logs.GroupBy(log => log.Source[0]).ToDictionary(group => group.Key, group => group.Sum(log => log.PaidMoney!.Value));
        Assert.Equal((190.00m, 71.00m, 395.25m, 461.00m), (paid['T'], paid['S'], paid['W'], paid['Y']));
        Assert.Equal(1117.25m, paid.Values.Sum());
    }

    private static double Fits(double thicknessIn) => thicknessIn / (thicknessIn + Expected.Yard.Setting("sticker_thickness")!.Value) * (1.0 + Expected.Yard.Setting("sticker_thickness")!.Value);

    private static decimal Price(Log log)
    {
        var scale = (decimal)Expected.Done(LogScale.Of(LogRule.InternationalQuarter, new MeasuredLog(log.ScalingDiameter, log.ScaleLength))).Gross!.Value.Count;
        var species = log.Species.CommonName.Replace("American basswood", "basswood", StringComparison.Ordinal).ToLowerInvariant().Replace(' ', '_');
        return log.Source[0] switch
        {
            'T' => (decimal)Expected.Yard.Setting("log_price_unloading_t")!.Value,
            'S' => (decimal)Expected.Yard.Setting("log_price_s")!.Value * scale,
            var source => (decimal)(Expected.Yard.Setting($"log_price_{char.ToLowerInvariant(source)}_{species}") ?? 0.0) * scale,
        };
    }
}
