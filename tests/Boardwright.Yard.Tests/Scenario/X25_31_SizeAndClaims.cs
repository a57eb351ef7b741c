using Boardwright.Casting;
using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Scenario;

public sealed class X25_31_SizeAndClaims
{
    // The sycamore slab 127 kg, one slab of the elm boule 84 kg, within 5 % (green mass by basic specific gravity, M): four people and two, 45 kg each in pairs.
    [Theory]
    [InlineData("S-20", 127.0, 4)]
    [InlineData("S-19", 84.0, 2)]
    public void X_25_weight_of_a_slab_and_who_carries_it(string tag, double kilograms, int people)
    {
        var yard = Expected.Yard;
        var stack = yard.Stacks[tag];

        var slab = WoodWeight.OfFootageTalliedGreen(stack.Species, stack.Moisture!.Mean!.Value, BoardFeet.From(stack.Footage.Count / stack.Pieces!.Value));

        Assert.Equal(kilograms, slab.Kilograms, kilograms * 0.05);
        Assert.Equal(people, Carrying.People(slab, Mass.FromKilograms(yard.Setting("lift_one_person")!.Value), Mass.FromKilograms(yard.Setting("carry_each")!.Value)));
    }

    // Twelve boards of four points: mean 1.1280, within 0.0139, means 0.0181, component 0.0168, total 0.0218 in, within 0.0001; green target for 13/16 in flatsawn
    // at 7 %: 1.0029 in, within 0.001 (z 1.645, radial 4.0 %, P).
    [Fact]
    public void X_27_thickness_from_the_mill()
    {
        var yard = Expected.Yard;
        var set = Assert.Single(yard.ThicknessSets).Fact;
        var readings = set.Boards.SelectMany(board => board.PointsMm.Select(mm => new ThicknessReading($"{board.Board}", Length.FromMillimetres(mm)))).ToList();

        var variation = Expected.Done(SawVariation.Of(readings));
        var target = Expected.Done(GreenTarget.Of(
            Length.FromInches(13.0 / 16.0), Length.FromInches(yard.Setting("planing_both_faces")!.Value), Expected.Done(SpeciesTable.Find("species", set.Species)), Expected.Mc(7.0),
            variation.Within, variation.BetweenComponent, Share.FromPercent(yard.Setting("undersize_accepted")!.Value), default));

        Assert.Equal(1.1280, variation.Mean.Inches, 0.0001);
        Assert.Equal(0.0139, variation.Within.Inches, 0.0001);
        Assert.Equal(0.0181, variation.BetweenMeans.Inches, 0.0001);
        Assert.Equal(0.0168, variation.BetweenComponent.Inches, 0.0001);
        Assert.Equal(0.0218, variation.Expected.Inches, 0.0001);
        Assert.Equal(1.0029, target.Target.Inches, 0.001);
        Assert.Equal(0.125, set.SetMm / 25.4 - target.Target.Inches, 0.004);
    }

    // Room of 21 C and 25 %: 5.36 % (Hailwood-Horrobin, P), within 0.15. 610 mm flatsawn from 7.6 % moves -3.8 mm, quartersawn -2.3, within 0.2 (7.8 and 4.9 %, P);
    // from 8.6 or 6.6 % -5.4 or -2.1: the measured -3.5 lies between, the room explains it.
    [Fact]
    public void X_28_a_bench_top_that_shrank()
    {
        var claim = Expected.On(12, 9).Complaints.Single(complaint => complaint.Fact.WidthNowMm is not null).Fact;
        var shipped = Expected.On(12, 9).Charges[claim.Charge!].Out.Single();
        var ash = Expected.Yard.Stacks[shipped.Stack].Species;

        var room = Emc.At(Temperature.FromCelsius(claim.RoomC!.Value), RelativeHumidity.FromPercent(claim.RoomRhPct!.Value));

        Assert.Equal(5.36, room.Percent, 0.15);
        Assert.Equal(-3.8, Moved(shipped.McMeanPct!.Value, ShrinkageDirection.Tangential), 0.2);
        Assert.Equal(-2.3, Moved(shipped.McMeanPct.Value, ShrinkageDirection.Radial), 0.2);
        Assert.Equal(-5.4, Moved(shipped.McHighPct!.Value, ShrinkageDirection.Tangential), 0.2);
        Assert.Equal(-2.1, Moved(6.6, ShrinkageDirection.Tangential), 0.2);
        Assert.InRange(claim.WidthNowMm!.Value - claim.WidthThenMm!.Value, -5.4, -2.1);

        double Moved(double from, ShrinkageDirection direction) =>
            Shrinkage.Size(Length.FromMillimetres(claim.WidthThenMm!.Value), Expected.Done(Shrinkage.Total(ash, direction)), ash.ShrinkageStart, Expected.Mc(from), room).Millimetres - claim.WidthThenMm.Value;
    }

    // Three cold days are worth 52.9 of 60 h; still 7.1 h at 20 C or 4.1 h at 28 C, within 0.1 (times halve each 10 K). After 72 h the 6 mm lip has reacted 0.64,
    // the centre 0.80, within 0.03; the lip wants about 22 h at 28 C, within 2 (computed with the invented kinetics).
    [Fact]
    public void X_29_a_lip_that_stayed_soft()
    {
        var yard = Expected.Yard;
        var poured = yard.Pours["Q-3"].PouredAt!.Value;
        var means = yard.ShopC.Where(reading => reading.Key >= poured).Take(6).Select(reading => ((reading.Key - poured).TotalHours, Temperature.FromCelsius(reading.Value))).ToList();
        var shop = Expected.Done(ShopTemperature.Means("shop", means));
        var label = ResinTable.Class.Label;
        var warmed = shop.Then(Elapsed.FromHours(72.0), Temperature.FromCelsius(28.0));

        var worth = LabelRule.Worth(label, shop, Elapsed.FromHours(72.0));
        var forecast = Expected.Done(PourForecast.Of(
            new() { Resin = ResinTable.Class.Curing!, Layers = [new(Length.FromMillimetres(yard.Pours["Q-3"].Plan.DepthMm), default)], Wall = Expected.Done(MouldWall.Of("wall", "hdpe", Length.FromMillimetres(12.7))), Shop = shop },
            Length.FromMillimetres(yard.Pours["Q-3"].Plan.ThinnestMm!.Value), hoursMin: 72.0));

        Assert.Equal(52.9, worth.Hours, 0.1);
        Assert.Equal(7.1, label.Demould!.Value.Hours - worth.Hours, 0.1);
        Assert.Equal(4.1, LabelRule.Reaches(label, warmed, label.Demould.Value)!.Value.Hours - 72.0, 0.1);
        Assert.Equal(0.64, forecast.Edge!.At(72.0).LeastConversion, 0.03);
        Assert.Equal(0.80, forecast.Centre.At(72.0).CentreConversion, 0.03);
        Assert.Equal(22.0, forecast.EdgeUnder(warmed).DemouldLastHour!.Value - 72.0, 2.0);
    }

    // 11.5 % read at 118 F is 9.1 %; the air set, 120/95 F, holds wood at 6.9 %, the air found, 120/103 F, at 9.1 %: the wood has come to rest with its air. Within 0.2
    // (one percent for each 20 F; psychrometry and sorption equations, P).
    [Fact]
    public void X_31_a_charge_that_hangs()
    {
        var yard = Expected.Yard;
        var reading = yard.Stacks["R-40"].Readings.Last(r => r.Raw is not null);
        var charge = yard.Charges["D-40"];
        var found = charge.Gauges.First(gauge => gauge.WetBulb is not null);
        var set = charge.Settings[^1];

        Assert.Equal((11.5, 118.0), (Math.Round(reading.Raw!.Value.Percent, 6), Math.Round(reading.Wood!.Value.Fahrenheit, 4)));
        Assert.Equal(9.1, reading.Mean!.Value.Percent, 0.2);
        Assert.Equal(6.9, EmcOf(set.DryBulb, set.WetBulb), 0.2);
        Assert.Equal(9.1, EmcOf(found.DryBulb!.Value, found.WetBulb!.Value), 0.2);
    }

    private static double EmcOf(Temperature dry, Temperature wet) => Expected.Done(AirState.FromWetBulb(dry, wet, AirState.StandardPressure)).Emc!.Value.Percent;
}
