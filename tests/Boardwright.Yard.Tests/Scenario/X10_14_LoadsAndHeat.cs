using Boardwright.Drying.Heat;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Scenario;

public sealed class X10_14_LoadsAndHeat
{
    private static readonly MoistureContent Eight = Expected.Mc(8.0);

    // 2900 bf of red oak at 7 %: 4627 kg, within 3 %, two trips at 2400 kg. Density at moisture by the Wood Handbook (M), shrinkage estimated from Gb; 4582 tabulated.
    [Fact]
    public void X_10_weight_of_the_oak_order()
    {
        var order = Expected.Yard.Orders["O-303"].Lines[0].Asked;
        var oak = Expected.Yard.Stacks["S-10"].Species;

        var weight = WoodWeight.OfFootage(oak, Expected.Mc(7.0), BoardFeet.From(order.Quantity)).Kilograms;

        Assert.Equal(4627.0, weight, 4627.0 * 0.03);
        Assert.Equal(2.0, Math.Ceiling(weight / Expected.Yard.Setting("trailer_payload")!.Value));
    }

    // 4.5 m3 of nominal footage is 1907 bf (1 bf = 0.002359737 m3), within 1; S-03 and S-04 at 8 % are 2024 bf, less 5 % falldown 1923, within 5. Tangential 9.9 % (M).
    [Fact]
    public void X_11_the_metric_order()
    {
        var yard = Expected.Yard;
        var asked = yard.Orders["O-310"].Lines[0].Asked;

        var net = new[] { "S-03", "S-04" }.Select(tag => yard.Stacks[tag]).Sum(stack => Expected.Done(NetFootage.At(stack.Species, quartersawn: false, stack.Footage, stack.Moisture!.Mean!.Value, Eight)).Count);

        Assert.Equal(1907.0, asked.Quantity / BoardFeet.CubicMetresNominal, 1.0);
        Assert.Equal(2024.0, net, 5.0);
        Assert.Equal(1923.0, net * (1.0 - yard.Prices["sugar maple"].FalldownBoardsPct.Likely / 100.0), 5.0);
    }

    // 28.6 mm green sugar maple at 8 %: flatsawn 27.6 mm, quartersawn 26.5 mm, below the 27.0 asked; within 0.1. Radial 4.8, tangential 9.9 % (M).
    [Fact]
    public void X_12_thickness_after_drying()
    {
        var stack = Expected.Yard.Stacks["S-03"];

        Assert.Equal(27.6, At8(ShrinkageDirection.Radial), 0.1);
        Assert.Equal(26.5, At8(ShrinkageDirection.Tangential), 0.1);
        Assert.True(At8(ShrinkageDirection.Tangential) < Expected.Yard.Orders["O-310"].Lines[0].Asked.ThicknessMinMm);

        double At8(ShrinkageDirection direction) =>
            Shrinkage.Size(stack.SawnThickness!.Value, Expected.Done(Shrinkage.Total(stack.Species, direction)), stack.Species.ShrinkageStart, stack.Species.ShrinkageStart, Eight).Millimetres;
    }

    // Water out of S-03 and S-04 to 8 %: 414 kg, within 5; basic density 0.56 on nominal volume (M). On the real 28.6 mm it is 467.
    [Fact]
    public void X_13_water_out_of_the_maple()
    {
        var stacks = new[] { Expected.Yard.Stacks["S-03"], Expected.Yard.Stacks["S-04"] };

        var water = stacks.Sum(stack => KilnLoad.Of(stack.Species, stack.Footage.NominalVolume, stack.Moisture!.Mean!.Value, default).OvenDry.Kilograms * (stack.Moisture!.Mean!.Value.Fraction - Eight.Fraction));

        Assert.Equal(414.0, water, 5.0);
        Assert.Equal(467.0, water * stacks[0].SawnThickness!.Value.Millimetres / 25.4, 6.0);
    }

    // With boiler B2 only: 21.8, 18.5 and 13.5 kW left at 1, -5 and -14 C, within 0.1; the two kilns hold on 14 kW at -14 C.
    [Theory]
    [InlineData(1.0, 21.8)]
    [InlineData(-5.0, 18.5)]
    [InlineData(-14.0, 13.5)]
    public void X_14_heat_left_after_the_shop(double outsideC, double kilowatts)
    {
        var yard = Expected.Yard;
        var shop = new ShopHeat(Temperature.FromCelsius(yard.Setting("shop_heat_below")!.Value), yard.Setting("shop_heat")!.Value);
        var coldest = yard.Kilns.Values.SelectMany(kiln => kiln.Installed.HoldingHeat).Where(point => point.OutsideC == -14.0).Sum(point => point.HeatKw);

        Assert.Equal(30.0, BoilerSheet.DaysOf(yard, 1)[0].CapacityKw);
        Assert.Equal(kilowatts, BoilerSheet.DaysOf(yard, 1)[0].CapacityKw - shop.KilowattsAt(Temperature.FromCelsius(outsideC)), 0.1);
        Assert.Equal(14.0, coldest, 0.1);
    }
}
