using Boardwright.Casting.Cure;
using Boardwright.Quantities;

namespace Boardwright.Casting.Tests;

/// <summary>Two tables of an earlier class that stayed soft (invented): one cold and thin, one out of ratio.</summary>
public sealed class SoftResinTests
{
    private static readonly ShopTemperature ColdNights = ClassTables.Done(ShopTemperature.Means(
        "shop", [.. new[] { 20.0, 17.0, 14.0, 13.0, 15.0, 13.0 }.Select((celsius, half) => (12.0 * half, Temperature.FromCelsius(celsius)))]));

    private static readonly Lazy<PourForecast> Table3 = new(() => ClassTables.Done(PourForecast.Of(
        new()
        {
            Resin = ResinTable.Class.Curing!,
            Layers = [new(ClassTables.Mm(40.0), default)],
            Wall = ClassTables.Done(MouldWall.Of("wall", "hdpe", ClassTables.Mm(12.7))),
            Shop = ColdNights,
        },
        ClassTables.Mm(6.0), hoursMin: 72.0)));

    [Fact]
    public void Three_cold_days_are_worth_53_hours_by_the_label_rule()
    {
        var label = ResinTable.Class.Label;
        var worth = LabelRule.Worth(label, ColdNights, Elapsed.FromHours(72.0));

        Assert.Equal(52.9, worth.Hours, 0.1);
        Assert.Equal(7.1, label.Demould!.Value.Hours - worth.Hours, 0.1);
        Assert.Equal(4.1, LabelRule.Reaches(label, ColdNights.Then(Elapsed.FromHours(72.0), Temperature.FromCelsius(28.0)), label.Demould.Value)!.Value.Hours - 72.0, 0.1);
    }

    [Fact]
    public void The_lip_is_soft_when_the_centre_is_hard()
    {
        Assert.Equal(0.64, Table3.Value.Edge!.At(72.0).LeastConversion, 0.03);
        Assert.Equal(0.80, Table3.Value.Centre.At(72.0).CentreConversion, 0.03);
        Assert.InRange(Table3.Value.GelEdgeHour!.Value, 61.0, 67.0);
    }

    [Fact]
    public void The_lip_needs_about_a_day_in_a_warm_room()
    {
        var warm = Table3.Value.EdgeUnder(ColdNights.Then(Elapsed.FromHours(72.0), Temperature.FromCelsius(28.0)));

        Assert.Equal(22.0, warm.DemouldLastHour!.Value - 72.0, 2.0);
    }

    [Fact]
    public void A_soft_lip_in_right_ratio_is_warmed_not_scraped()
    {
        var mix = ClassTables.Done(MixCheck.Of(ResinTable.Class, Mass.FromKilograms(4.92), Mass.FromKilograms(1.86)));

        var likeliest = SoftResin.Causes(ResinTable.Class, mix, SoftPlace.ThinEdge, Table3.Value, 72.0)[0];

        Assert.Equal(-0.005, mix.OffShare, 0.0005);
        Assert.Equal(MixVerdict.Good, mix.Verdict);
        Assert.True(likeliest.CanBeSaved);
        Assert.Contains("28 C", likeliest.Remedy, StringComparison.Ordinal);
        Assert.Contains("do not scrape", likeliest.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Resin_out_of_ratio_is_scraped_out()
    {
        var mix = ClassTables.Done(MixCheck.Of(ResinTable.Class, Mass.FromKilograms(5.10), Mass.FromKilograms(2.30)));

        var cause = Assert.Single(SoftResin.Causes(ResinTable.Class, mix, SoftPlace.Everywhere, null, 168.0));

        Assert.Equal(0.187, mix.OffShare, 0.0005);
        Assert.False(cause.CanBeSaved);
        Assert.Contains("pour again", cause.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Patches_between_hard_resin_point_at_the_mixing()
    {
        var mix = ClassTables.Done(MixCheck.Of(ResinTable.Class, Mass.FromKilograms(5.00), Mass.FromKilograms(1.90)));

        Assert.Contains("bucket", SoftResin.Causes(ResinTable.Class, mix, SoftPlace.Patches, Table3.Value, 72.0)[0].Cause, StringComparison.Ordinal);
    }
}
