using Boardwright.Quantities;

namespace Boardwright.Wood.Tests;

/// <summary>Answers the demonstration yard expects of wood and air. Its readings and weights are invented; the rules they go through are not.</summary>
public sealed class ScenarioTests
{
    // Kiln samples of charge C-61: two section weights wet and dry, sample weight on 21 October, weight on 2 November; grams.
    private static readonly (double Wet1, double Dry1, double Wet2, double Dry2, double Cut, double Now)[] Samples =
    [
        (118.6, 95.8, 121.2, 97.7, 3412, 3089),
        (124.4, 98.0, 126.9, 100.2, 3655, 3289),
        (112.3, 91.9, 110.8, 90.6, 3188, 2879),
        (119.9, 96.3, 122.5, 98.5, 3540, 3158),
        (109.7, 90.6, 111.3, 91.7, 3097, 2805),
        (127.5, 101.5, 125.8, 100.0, 3710, 3350),
    ];

    [Fact]
    public void X03_cherry_at_42_F_that_reads_13_6_is_at_15_0() => Assert.Equal(15.0, Cherry(13.6, 42).Corrected!.Value.Percent, 0.05);

    [Fact]
    public void X04_the_same_cherry_in_frost_reads_less_and_is_no_drier()
    {
        var read = Cherry(12.9, 28);

        Assert.Equal(15.0, read.Corrected!.Value.Percent, 0.05);
        Assert.True(read.Usable);
        Assert.Contains("below freezing", read.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void X05_sections_of_sample_4_give_its_calculated_dry_weight()
    {
        var cut = Cut(3);

        Assert.Equal(24.51, cut.Sections[0].Percent, 0.02);
        Assert.Equal(24.37, cut.Sections[1].Percent, 0.02);
        Assert.Equal(24.44, cut.Average.Percent, 0.02);
        Assert.Equal(2844.8, cut.CalculatedDry.Grams, 0.3);
    }

    [Fact]
    public void X06_sample_4_dropped_on_31_October_did_not_dry_by_falling()
    {
        var calculated = Cut(3).CalculatedDry;
        var rescaled = AfterTheFall(calculated);

        Assert.Equal(2808.2, rescaled.Grams, 0.3);
        Assert.Equal(11.0, Expect.Done(SampleBoard.Current(calculated, Grams(3158))).Percent, 0.1);
        Assert.Equal(12.5, Expect.Done(SampleBoard.Current(rescaled, Grams(3158))).Percent, 0.1);
    }

    [Fact]
    public void X07_the_charge_on_2_November_has_its_mean_wettest_and_driest()
    {
        var now = Samples.Select((sample, index) =>
        {
            var calculated = Cut(index).CalculatedDry;
            return Expect.Done(SampleBoard.Current(index == 3 ? AfterTheFall(calculated) : calculated, Grams(sample.Now))).Percent;
        }).ToList();

        Assert.Equal(12.1, now.Average(), 0.1);
        Assert.Equal(14.1, now.Max(), 0.1);
        Assert.Equal(1, now.IndexOf(now.Max()));
        Assert.Equal(9.8, now.Min(), 0.1);
        Assert.Equal(4, now.IndexOf(now.Min()));
    }

    [Theory]
    [InlineData(0.0, 27.6)]
    [InlineData(90.0, 26.5)]
    public void X12_green_sugar_maple_of_28_6_mm_at_8_percent_is_thinner(double ringsToFaceDegrees, double expectedMm)
    {
        var maple = Expect.Species("sugar maple");
        var total = Expect.Done(Shrinkage.TotalOfThickness(maple, Angle.FromDegrees(ringsToFaceDegrees)));

        Assert.Equal(expectedMm, Shrinkage.Size(Length.FromMillimetres(28.6), total, maple.ShrinkageStart, maple.GreenMoistureAverage!.Value, MoistureContent.FromPercent(8)).Millimetres, 0.1);
    }

    [Fact]
    public void X28_the_room_of_the_claim_explains_the_shrunken_bench_top()
    {
        var room = Emc.At(Temperature.FromCelsius(21), RelativeHumidity.FromPercent(25));
        Assert.Equal(5.36, room.Percent, 0.15);

        Assert.Equal(-3.8, AshTopChange(0, 7.6, room), 0.2);
        Assert.Equal(-2.3, AshTopChange(90, 7.6, room), 0.2);
        Assert.Equal(-5.4, AshTopChange(0, 8.6, room), 0.2);
        Assert.Equal(-2.1, AshTopChange(0, 6.6, room), 0.2);
    }

    [Fact]
    public void X31_the_stalled_cherry_has_reached_the_air_it_really_stands_in()
    {
        Assert.Equal(9.1, Cherry(11.5, 118).Corrected!.Value.Percent, 0.2);
        Assert.Equal(6.9, Kiln(120, 95), 0.2);
        Assert.Equal(9.1, Kiln(120, 103), 0.2);
    }

    private static double Kiln(double dryBulbF, double wetBulbF) =>
        Expect.Done(AirState.FromWetBulb(Temperature.FromFahrenheit(dryBulbF), Temperature.FromFahrenheit(wetBulbF), AirState.StandardPressure)).Emc!.Value.Percent;

    private static double AshTopChange(double ringsToFaceDegrees, double fromPercent, MoistureContent to)
    {
        var ash = Expect.Species("white ash");
        var total = Expect.Done(Shrinkage.TotalOfWidth(ash, Angle.FromDegrees(ringsToFaceDegrees)));
        return Shrinkage.Size(Length.FromMillimetres(610), total, ash.ShrinkageStart, MoistureContent.FromPercent(fromPercent), to).Millimetres - 610.0;
    }

    private static MeterReading Cherry(double percent, double woodFahrenheit)
    {
        var cherry = Expect.Species("black cherry");
        return Expect.Done(MeterReading.Correct(
            MoistureContent.FromPercent(percent), Temperature.FromFahrenheit(woodFahrenheit), cherry, MeterSetting.For(cherry), MeterTemperatureRule.OnePerTwentyFahrenheit));
    }

    private static SampleBoardCut Cut(int index)
    {
        var sample = Samples[index];
        return Expect.Done(SampleBoard.Cut([Grams(sample.Wet1), Grams(sample.Wet2)], [Grams(sample.Dry1), Grams(sample.Dry2)], Grams(sample.Cut)));
    }

    private static Mass AfterTheFall(Mass calculated) => Expect.Done(SampleBoard.AfterLoss(calculated, Grams(3263), Grams(3221)));

    private static Mass Grams(double grams) => Mass.FromGrams(grams);
}
