using Boardwright.Drying.Schedules;
using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Schedules;

/// <summary>Schedules of the house's own: what stands and what is refused, and that they are run as the listed ones are.</summary>
public sealed class OwnScheduleTests
{
    [Fact]
    public void Listed_schedule_written_out_as_one_s_own_is_forecast_as_the_listed_one()
    {
        // T4-D2, Dry Kiln Operator's Manual ch. 7 (from memory of the source), its wet bulb at the 90 F floor of FPL-GTR-57.
        var listed = Given.Done(KilnSchedule.For(Given.Species("northern red oak"), Given.Thickness("4/4")));
        var own = Given.Done(OwnSchedule.Of("ours", [.. listed.Steps.Select(step => Row(
            step.Above == MoistureContent.OvenDry ? null : step.Above.Percent, null, step.DryBulbFahrenheit, step.WetBulbFloored90Fahrenheit))]));

        Assert.Null(own.Code);
        var (printed, ours) = (Given.Done(KilnDrying.Forecast(Asked(listed))), Given.Done(KilnDrying.Forecast(Asked(own))));
        Assert.Equal(printed.HoursP50, ours.HoursP50, 1e-6);
        Assert.Equal(printed.Steps.Select(step => step.Hours), ours.Steps.Select(step => step.Hours));
    }

    [Fact]
    public void Steps_by_the_clock_take_just_their_hours_and_the_last_holds_on_to_the_target()
    {
        foreach (var thickness in new[] { "4/4", "6/4", "8/4" })
        {
            var own = Given.Done(OwnSchedule.Of("by hours", [Row(null, 24.0, 110, 106), Row(null, 36.5, 115, 108), Row(null, 7.5, 120, 110), Row(null, null, 160, 120)]));
            var forecast = Given.Done(KilnDrying.Forecast(Asked(own) with { Thickness = Given.Thickness(thickness) }));

            Assert.Equal([24.0, 36.5, 7.5], forecast.Steps.Take(3).Select(step => step.Hours));
            Assert.Equal(forecast.HoursP50, forecast.Steps.Sum(step => step.Hours), 1e-6);
            Assert.True(forecast.HoursP50 > 68.0);
        }
    }

    [Fact]
    public void Hours_at_the_last_step_do_not_end_it_and_say_so()
    {
        var own = Given.Done(OwnSchedule.Of("by hours", [Row(null, 24.0, 110, 106), Row(null, 10.0, 160, 120)]));
        var forecast = Given.Done(KilnDrying.Forecast(Asked(own)));

        Assert.True(forecast.Steps[1].Hours > 10.0);
        Assert.Contains(forecast.Notes, note => note.StartsWith("the last step stands for 10 h", StringComparison.Ordinal));
    }

    [Fact]
    public void More_hours_in_mild_air_never_make_it_quicker()
    {
        var before = 0.0;
        foreach (var hours in new[] { 12.0, 48.0, 96.0, 192.0 })
        {
            var own = Given.Done(OwnSchedule.Of("by hours", [Row(null, hours, 110, 106), Row(null, null, 160, 120)]));
            var likely = Given.Done(KilnDrying.Forecast(Asked(own))).HoursP50;
            Assert.True(likely > before, $"{hours} h: {likely} after {before}");
            before = likely;
        }
    }

    [Theory]
    [InlineData("hours", 50.0, 12.0, 110, 106)]
    [InlineData("mc_above_pct", null, null, 110, 106)]
    [InlineData("hours", null, 7.25, 110, 106)]
    [InlineData("hours", null, 0.0, 110, 106)]
    [InlineData("mc_above_pct", 2.0, null, 110, 106)]
    [InlineData("dry_bulb", 50.0, null, 300, 106)]
    [InlineData("dry_bulb", 50.0, null, 32, 31)]
    [InlineData("wet_bulb", 50.0, null, 110, 111)]
    public void Row_that_cannot_stand_is_named_with_its_column(string column, double? above, double? hours, double dry, double wet)
    {
        var refused = Assert.IsType<Outcome<KilnSchedule>.Refused>(OwnSchedule.Of("ours", [Row(60.0, null, 105, 100), Row(above, hours, dry, wet), Row(null, null, 160, 120)]));

        Assert.Equal($"row 2, {column}", Assert.Single(refused.Reasons).What);
    }

    [Fact]
    public void Steps_go_from_wet_to_dry_and_equalizing_comes_after_drying()
    {
        var up = Assert.IsType<Outcome<KilnSchedule>.Refused>(OwnSchedule.Of("ours", [Row(40.0, null, 105, 100), Row(50.0, null, 110, 100), Row(null, null, 160, 120)]));
        Assert.Contains("less than 40", Assert.Single(up.Reasons).Accepted, StringComparison.Ordinal);

        var early = Assert.IsType<Outcome<KilnSchedule>.Refused>(OwnSchedule.Of("ours", [Row(40.0, null, 105, 100), new(SchedulePhase.Equalize, null, 12.0, F(160), F(122)), Row(null, null, 160, 120)]));
        Assert.Contains(early.Reasons, reason => reason.What == "row 3, phase");

        Assert.IsType<Outcome<KilnSchedule>.Refused>(OwnSchedule.Of("ours", [new(SchedulePhase.Condition, null, 12.0, F(160), F(148))]));
    }

    private static KilnDryingInput Asked(KilnSchedule schedule) => new()
    {
        Species = Given.Species("northern red oak"),
        Thickness = Given.Thickness("4/4"),
        From = Given.Moisture(75.0),
        To = Given.Moisture(7.0),
        Schedule = schedule,
    };

    private static OwnStep Row(double? above, double? hours, double dry, double wet) => new(SchedulePhase.Dry, above, hours, F(dry), F(wet));

    private static Temperature F(double degrees) => Temperature.FromFahrenheit(degrees);
}
