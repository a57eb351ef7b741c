using Boardwright.Drying.Schedules;

namespace Boardwright.Drying.Tests.Schedules;

/// <summary>Air-dried stock begins in mild air: Dry Kiln Operator's Manual, ch. 7 (from memory of the source): the first 12 to 18 h with about 10 F of depression up to 6/4, 5 to 8 F for thicker stock.</summary>
public sealed class AirDriedStartTests
{
    [Theory]
    [InlineData("white ash", "4/4", 20.0, 10.0)]
    [InlineData("northern red oak", "4/4", 24.0, 10.0)]
    [InlineData("black walnut", "8/4", 22.0, 6.0)]
    public void Air_dried_stock_begins_at_the_dry_bulb_of_its_step_with_a_small_depression(string wood, string thickness, double percent, double depression)
    {
        var listed = Given.Done(KilnSchedule.For(Given.Species(wood), Given.Thickness(thickness)));
        var mild = AirDriedStart.Step(listed, Given.Moisture(percent), Given.Thickness(thickness))!;
        var step = listed.StepAt(Given.Moisture(percent));

        Assert.Equal(step.DryBulbFahrenheit, mild.DryBulbFahrenheit);
        Assert.Equal(depression, mild.DepressionFahrenheit);
        Assert.Equal(12.0, mild.Lasts!.Value.Hours);
        var whole = AirDriedStart.On(listed, Given.Moisture(percent), Given.Thickness(thickness));
        Assert.Equal(step, whole.Steps[1]);
        Assert.Contains("air-dried", whole.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Green_stock_and_steps_as_mild_are_left_as_they_are()
    {
        var oak = Given.Done(KilnSchedule.For(Given.Species("northern red oak"), Given.Thickness("4/4")));

        Assert.Null(AirDriedStart.Step(oak, Given.Moisture(45.0), Given.Thickness("4/4")));
        Assert.Same(oak, AirDriedStart.On(oak, Given.Moisture(45.0), Given.Thickness("4/4")));
    }
}
