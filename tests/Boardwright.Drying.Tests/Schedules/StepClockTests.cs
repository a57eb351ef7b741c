using Boardwright.Drying.Schedules;
using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Schedules;

/// <summary>Where a charge stands in a schedule of which steps go by the clock.</summary>
public sealed class StepClockTests
{
    private static readonly DateTime Monday = new(2026, 11, 2, 8, 0, 0);

    // 24 h, 36 h, to 30 %, to the end.
    private static readonly KilnSchedule Ours = Given.Done(OwnSchedule.Of("ours",
        [Row(null, 24.0, 110, 106), Row(null, 36.0, 115, 108), Row(30.0, null, 120, 110), Row(null, null, 160, 120)]));

    [Fact]
    public void Step_is_run_for_its_hours_from_when_its_air_was_set()
    {
        var clock = Clock(Monday.AddHours(10.0), [Set(Monday, 110, 106)]);

        Assert.Equal((0, false, 10.0, 14.0), (clock.Step, clock.IsDue, clock.Run!.Value.Hours, clock.Left!.Value.Hours));
    }

    [Fact]
    public void Clock_stands_during_a_stop()
    {
        // Stopped from hour 6 to hour 11: 24 hours are run at hour 29.
        Elapsed Stood(DateTime from, DateTime to) => Elapsed.FromHours(Math.Max(0.0, (Min(to, Monday.AddHours(11.0)) - Max(from, Monday.AddHours(6.0))).TotalHours));
        var before = Clock(Monday.AddHours(28.0), [Set(Monday, 110, 106)], Stood);
        var after = Clock(Monday.AddHours(29.5), [Set(Monday, 110, 106)], Stood);

        Assert.Equal((0, 23.0, 1.0), (before.Step, before.Run!.Value.Hours, before.Left!.Value.Hours));
        Assert.Equal((1, true, 0.0, 36.0), (after.Step, after.IsDue, after.Run!.Value.Hours, after.Left!.Value.Hours));
    }

    [Fact]
    public void Stop_that_is_still_open_holds_the_step()
    {
        Elapsed Stood(DateTime from, DateTime to) => Elapsed.FromHours(Math.Max(0.0, (to - Max(from, Monday.AddHours(20.0))).TotalHours));
        var clock = Clock(Monday.AddHours(60.0), [Set(Monday, 110, 106)], Stood);

        Assert.Equal((0, false, 20.0, 4.0), (clock.Step, clock.IsDue, clock.Run!.Value.Hours, clock.Left!.Value.Hours));
    }

    [Fact]
    public void Next_step_set_late_is_run_for_all_its_hours()
    {
        var clock = Clock(Monday.AddHours(40.0), [Set(Monday, 110, 106), Set(Monday.AddHours(34.0), 115, 108)]);

        Assert.Equal((1, false, 6.0), (clock.Step, clock.IsDue, clock.Run!.Value.Hours));
    }

    [Fact]
    public void Next_step_set_early_ends_the_one_before()
    {
        var clock = Clock(Monday.AddHours(23.0), [Set(Monday, 110, 106), Set(Monday.AddHours(20.0), 115, 108)]);

        Assert.Equal((1, 3.0), (clock.Step, clock.Run!.Value.Hours));
    }

    [Fact]
    public void Milder_air_set_inside_a_step_keeps_its_clock()
    {
        var clock = Clock(Monday.AddHours(15.0), [Set(Monday, 110, 106), Set(Monday.AddHours(5.0), 108, 105)]);

        Assert.Equal((0, false, 15.0), (clock.Step, clock.IsDue, clock.Run!.Value.Hours));
    }

    [Fact]
    public void Step_by_moisture_ends_at_the_weighing_that_finds_it()
    {
        AirSet[] set = [Set(Monday, 110, 106), Set(Monday.AddHours(24.0), 115, 108), Set(Monday.AddHours(60.0), 120, 110)];
        var wet = StepClock.At(Ours, set, [new(Monday, Given.Moisture(50.0)), new(Monday.AddHours(90.0), Given.Moisture(31.0))], Monday.AddHours(100.0), (_, _) => default);
        var dry = StepClock.At(Ours, set, [new(Monday, Given.Moisture(50.0)), new(Monday.AddHours(90.0), Given.Moisture(29.5))], Monday.AddHours(100.0), (_, _) => default);

        Assert.Equal((2, false), (wet.Step, wet.IsDue));
        Assert.Null(wet.Left);
        Assert.Equal((3, true), (dry.Step, dry.IsDue));
    }

    [Fact]
    public void Without_a_setting_the_first_step_is_due() =>
        Assert.Equal((0, true), (Clock(Monday, []).Step, Clock(Monday, []).IsDue));

    private static StepClock Clock(DateTime now, IReadOnlyList<AirSet> set, Func<DateTime, DateTime, Elapsed>? stood = null) =>
        StepClock.At(Ours, set, [new(Monday, Given.Moisture(50.0))], now, stood ?? ((_, _) => default));

    private static AirSet Set(DateTime at, double dry, double wet) => new(at, Temperature.FromFahrenheit(dry), Temperature.FromFahrenheit(wet));

    private static OwnStep Row(double? above, double? hours, double dry, double wet) => new(SchedulePhase.Dry, above, hours, Temperature.FromFahrenheit(dry), Temperature.FromFahrenheit(wet));

    private static DateTime Min(DateTime one, DateTime other) => one < other ? one : other;

    private static DateTime Max(DateTime one, DateTime other) => one > other ? one : other;
}
