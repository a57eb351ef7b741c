using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests.Kiln;

public class KilnChargeTests
{
    [Theory]
    [InlineData(0.6)]
    [InlineData(1.0)]
    [InlineData(1.7)]
    public void Rate_that_made_the_samples_is_found_again(double factor)
    {
        var (oak, inch, from) = (Given.Species("northern red oak"), Length.FromInches(1.0), MoistureContent.FromPercent(24.0));
        var made = Given.Done(KilnDrying.Forecast(new KilnDryingInput { Species = oak, Thickness = inch, From = from, To = MoistureContent.FromPercent(20.0), Rate = new KilnRate(factor, 1e-6, factor), Schedule = Steady(110, 102) }));

        var learned = Given.Done(KilnRate.Learn(oak, inch, from, [Hold(made.HoursP50, 110, 102)], MoistureContent.FromPercent(20.0)));

        // Two simulations with steps of their own: a few percent.
        Assert.InRange(learned.Found / factor, 0.93, 1.07);
        Assert.True(Math.Abs(Math.Log(learned.Factor)) <= Math.Abs(Math.Log(learned.Found)) + 1e-12);
        Assert.InRange(learned.Spread, 0.0, DryingCoefficients.For(oak).KilnSpread);
    }

    [Fact]
    public void Slower_charge_is_forecast_later_and_surer()
    {
        var input = new KilnDryingInput { Species = Given.Species("northern red oak"), Thickness = Length.FromInches(1.0), From = MoistureContent.FromPercent(12.0), To = MoistureContent.FromPercent(7.0) };
        var usual = Given.Done(KilnDrying.Forecast(input));
        var slow = Given.Done(KilnDrying.Forecast(input with { Rate = new KilnRate(0.5, 0.08, 0.45) }));

        Assert.True(slow.HoursP50 > 1.6 * usual.HoursP50);
        Assert.True(slow.HoursP90 / slow.HoursP10 < usual.HoursP90 / usual.HoursP10);
    }

    [Fact]
    public void Rate_of_wood_that_gained_has_no_answer() => Assert.IsType<Outcome<KilnRate>.NoAnswer>(KilnRate.Learn(
        Given.Species("northern red oak"), Length.FromInches(1.0), MoistureContent.FromPercent(12.0), [Hold(24.0, 110, 102)], MoistureContent.FromPercent(12.5)));

    [Fact]
    public void Wettest_half_takes_the_middle_sample_of_an_odd_number()
    {
        // The six samples of the demonstration's red oak on 2 November, and five of them.
        double[] six = [12.2, 14.1, 10.4, 12.5, 9.8, 13.5];

        Assert.Equal((14.1 + 13.5 + 12.5) / 3.0, SampleTrend.WettestHalf([.. six.Select(MoistureContent.FromPercent)])!.Value.Percent, 1e-9);
        Assert.Equal((14.1 + 12.5 + 12.2) / 3.0, SampleTrend.WettestHalf([.. six.Take(5).Select(MoistureContent.FromPercent)])!.Value.Percent, 1e-9);
        Assert.Null(SampleTrend.WettestHalf([]));
    }

    [Fact]
    public void Daily_loss_leaves_out_the_time_the_charge_stood()
    {
        var (before, now) = (MoistureContent.FromPercent(20.0), MoistureContent.FromPercent(17.0));

        Assert.Equal(1.5, SampleTrend.DailyLossPercent(before, now, Elapsed.FromHours(48.0), Elapsed.FromSeconds(0.0))!.Value, 1e-9);
        Assert.Equal(2.0, SampleTrend.DailyLossPercent(before, now, Elapsed.FromHours(48.0), Elapsed.FromHours(12.0))!.Value, 1e-9);
        Assert.Null(SampleTrend.DailyLossPercent(before, now, Elapsed.FromHours(12.0), Elapsed.FromHours(12.0)));
    }

    [Fact]
    public void Dropped_sample_falls_out_of_the_expected_weights()
    {
        // Sample 4 of C-61: 14.7 % on 31 October, about 1.1 % a day; the scale showed 3158 g after 42 g of wood were lost.
        var (low, high) = SampleTrend.ExpectedWeight(Mass.FromGrams(2844.8), MoistureContent.FromPercent(14.7), 1.1, 2.0);

        Assert.InRange(low.Grams, 3160.0, 3200.0);
        Assert.InRange(high.Grams, 3263.0, 3275.0);
    }

    [Fact]
    public void Cherry_that_hangs_has_reached_the_air_it_is_in()
    {
        // pins 11.5 % at 118 F are 9.1 %; 120/95 F holds 6.9 %, 120/103 F holds 9.1 %.
        var wood = MeterTemperature.Correct(MoistureContent.FromPercent(11.5), Temperature.FromFahrenheit(118), MeterTemperatureRule.OnePerTwentyFahrenheit);
        var stall = KilnStall.Diagnose(wood, EmcOf(120, 95), EmcOf(120, 103));

        Assert.Equal(StallCause.AirWetterThanSet, stall.Cause);
        Assert.Equal(9.1, stall.Wood.Percent, 0.2);
        Assert.Equal(6.9, stall.EmcSet.Percent, 0.2);
        Assert.Equal(9.1, stall.EmcFound!.Value.Percent, 0.2);
    }

    [Theory]
    [InlineData(7.1, 7.0, StallCause.ReachedSetAir)]
    [InlineData(11.0, 7.0, StallCause.WoodSlowOrReadingWrong)]
    [InlineData(11.0, null, StallCause.AirNotRead)]
    [InlineData(7.2, null, StallCause.ReachedSetAir)]
    public void Other_charges_that_hang_have_other_causes(double wood, double? found, StallCause cause) =>
        Assert.Equal(cause, KilnStall.Diagnose(MoistureContent.FromPercent(wood), MoistureContent.FromPercent(7.0), found is { } emc ? MoistureContent.FromPercent(emc) : null).Cause);

    [Fact]
    public void Dry_wick_says_nothing_of_the_air() =>
        Assert.Equal(StallCause.WickDry, KilnStall.Diagnose(MoistureContent.FromPercent(9.0), MoistureContent.FromPercent(7.0), MoistureContent.FromPercent(25.0), wickDry: true).Cause);

    [Theory]
    [InlineData(48.0, 0.2, true)]
    [InlineData(48.0, 0.5, false)]
    [InlineData(24.0, 0.0, false)]
    public void Charge_stands_when_two_days_change_nothing(double hours, double fall, bool stands) => Assert.Equal(stands, KilnStall.Stands(
        [(Elapsed.FromHours(0.0), MoistureContent.FromPercent(9.2)), (Elapsed.FromHours(hours), MoistureContent.FromPercent(9.2 - fall))]));

    [Fact]
    public void Shared_schedule_is_the_gentlest_of_its_woods()
    {
        var (oak, maple) = (Of("white oak", "8/4"), Of("sugar maple", "4/4"));
        var shared = KilnSchedule.Shared([oak, maple]);

        Assert.Equal(KilnCode.Mildest(oak.Code!.Value, maple.Code!.Value), shared.Code);
        Assert.Same(oak, KilnSchedule.Shared([oak]));
    }

    [Fact]
    public void Schedule_as_run_holds_the_set_air_now_and_the_listed_air_later()
    {
        var oak = Of("northern red oak", "4/4");
        var run = oak.Holding(Temperature.FromFahrenheit(125), Temperature.FromFahrenheit(100), oak.IndexAt(MoistureContent.FromPercent(22.0)));

        Assert.Equal(125.0, run.Steps[0].DryBulbFahrenheit, 1e-9);
        Assert.Equal(25.0, run.Steps[0].DepressionFahrenheit, 1e-9);
        Assert.Equal(oak.StepAt(MoistureContent.FromPercent(22.0)).Above, run.Steps[0].Above);
        Assert.Equal(oak.StepAt(MoistureContent.FromPercent(17.0)), run.StepAt(MoistureContent.FromPercent(17.0)));
    }

    [Fact]
    public void Wet_bulb_for_an_equilibrium_holds_it()
    {
        var wet = KilnFinish.WetBulbFor(Temperature.FromFahrenheit(150), MoistureContent.FromPercent(5.0))!.Value;

        Assert.Equal(5.0, EmcOf(150, wet.Fahrenheit).Percent, 0.01);
        Assert.Null(KilnFinish.WetBulbFor(Temperature.FromFahrenheit(150), MoistureContent.FromPercent(40.0)));
    }

    private static KilnSchedule Of(string species, string thickness) => Given.Done(KilnSchedule.For(Given.Species(species), Given.Thickness(thickness)));

    private static KilnSchedule Steady(double dryBulb, double wetBulb) => Of("northern red oak", "4/4") with
    {
        Steps = [new KilnStep { Above = MoistureContent.OvenDry, DryBulbFahrenheit = dryBulb, DepressionFahrenheit = dryBulb - wetBulb }],
    };

    private static KilnHold Hold(double hours, double dryBulb, double wetBulb) => new(Elapsed.FromHours(hours), Temperature.FromFahrenheit(dryBulb), Temperature.FromFahrenheit(wetBulb));

    private static MoistureContent EmcOf(double dryBulb, double wetBulb) =>
        Given.Done(AirState.FromWetBulb(Temperature.FromFahrenheit(dryBulb), Temperature.FromFahrenheit(wetBulb), AirState.StandardPressure)).Emc!.Value;
}
