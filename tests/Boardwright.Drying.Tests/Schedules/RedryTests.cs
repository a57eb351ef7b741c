using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests.Schedules;

public class RedryTests
{
    [Fact]
    public void Bulbs_of_both_steps_hold_their_equilibrium()
    {
        var redry = Given.Done(Redry.For(Lot(11.0, 7.0)));

        Assert.All([redry.First, redry.Second], step => Assert.Equal(
            step.Emc.Percent, Given.Done(AirState.FromWetBulb(step.DryBulb, step.WetBulb, AirState.StandardPressure)).Emc!.Value.Percent, 0.01));
    }

    [Fact]
    public void First_day_dries_a_part_of_the_way_and_the_second_step_the_rest()
    {
        var redry = Given.Done(Redry.For(Lot(11.0, 7.0)));

        Assert.InRange(redry.AfterFirst.Percent, 9.0, 11.0);
        Assert.True(redry.Early < redry.Likely && redry.Likely < redry.Late);
        Assert.InRange(redry.Likely.Days, 1.2, 8.0);
    }

    [Fact]
    public void Wetter_wood_takes_longer_and_the_kilns_limit_is_kept()
    {
        Assert.True(Given.Done(Redry.For(Lot(13.0, 7.0))).Likely > Given.Done(Redry.For(Lot(10.0, 7.0))).Likely);

        var cool = Given.Done(Redry.For(Lot(11.0, 7.0) with { Kiln = KilnEquipment.Dehumidification }));
        Assert.Equal(140.0, cool.Second.DryBulb.Fahrenheit, 1e-9);
        Assert.Equal(5.0, cool.Second.Emc.Percent, 1e-9);
    }

    [Fact]
    public void Oak_is_warned_about()
    {
        Assert.True(Given.Done(Redry.For(Lot(11.0, 7.0) with { Species = Given.Species("northern red oak") })).ChecksEasily);
        Assert.False(Given.Done(Redry.For(Lot(11.0, 7.0))).ChecksEasily);
    }

    [Fact]
    public void As_a_schedule_it_has_two_steps_and_its_own_name()
    {
        var lot = Lot(11.0, 7.0);
        var schedule = Given.Done(Redry.For(lot)).AsSchedule(Given.Done(KilnSchedule.For(lot.Species, lot.Thickness)));

        Assert.Equal(2, schedule.Steps.Count);
        Assert.Equal(130.0, schedule.StepAt(Given.Moisture(10.9)).DryBulbFahrenheit, 1e-9);
        Assert.Equal(155.0, schedule.StepAt(Given.Moisture(7.2)).DryBulbFahrenheit, 1e-9);
        Assert.StartsWith("Redry", schedule.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_near_its_target_is_left_and_wet_wood_is_no_redry()
    {
        Assert.IsType<Outcome<Redry>.NoAnswer>(Redry.For(Lot(7.8, 7.0)));
        Assert.IsType<Outcome<Redry>.Refused>(Redry.For(Lot(24.0, 7.0)));
        Assert.IsType<Outcome<Redry>.Refused>(Redry.For(Lot(15.0, 13.0)));
    }

    private static KilnDryingInput Lot(double now, double target) => new() { Species = Given.Species("black cherry"), Thickness = Given.Thickness("4/4"), From = Given.Moisture(now), To = Given.Moisture(target) };
}
