using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests.Schedules;

public class KilnScheduleTests
{
    [Fact]
    public void Table_would_notice_one_number_of_depression_or_ten_degrees()
    {
        Assert.Contains(PublishedTable.Rows("schedules"), row => row.Quantity == "depression_f" && row.Tolerance == 0.0);
        var shifted = KilnSchedule.Assemble(new KilnCode(4, 'D', 3));
        var rows = PublishedTable.Rows("schedules").Where(row => row.Quantity == "depression_f" && row.Text("code") == "T4-D2");
        Assert.Contains(rows, row => shifted.StepAt(Given.Moisture(row["controlling_mc_pct"])).DepressionFahrenheit != row.ExpectedNumber);
    }

    [Fact]
    public void Moisture_at_a_change_point_is_in_the_next_step()
    {
        var schedule = KilnSchedule.Assemble(new KilnCode(4, 'D', 2));

        Assert.Equal(5.0, schedule.StepAt(Given.Moisture(50.0)).DepressionFahrenheit);
        Assert.Equal(4.0, schedule.StepAt(Given.Moisture(50.0001)).DepressionFahrenheit);
        Assert.Same(schedule.Steps[^1], schedule.StepAt(MoistureContent.OvenDry));
    }

    [Fact]
    public void Every_code_keeps_heat_low_above_30_percent_and_never_makes_the_air_moister()
    {
        foreach (var row in Enumerable.Range(1, 14))
        {
            foreach (var letter in "ABCDEF")
            {
                foreach (var number in Enumerable.Range(1, 8))
                {
                    var steps = KilnSchedule.Assemble(new KilnCode(row, letter, number)).Steps;
                    Assert.Single(steps.Where(step => step.Above.Percent >= 30.0 - 1e-9).Select(step => step.DryBulbFahrenheit).Distinct());
                    for (var index = 1; index < steps.Count; index++)
                    {
                        Assert.True(steps[index].Above < steps[index - 1].Above);
                        Assert.True(steps[index].DryBulbFahrenheit >= steps[index - 1].DryBulbFahrenheit);
                        Assert.True(steps[index].DepressionFahrenheit >= steps[index - 1].DepressionFahrenheit);
                    }
                }
            }
        }
    }

    [Fact]
    public void Kiln_with_a_limit_runs_at_it_and_keeps_the_equilibrium_moisture()
    {
        var schedule = Given.Done(KilnSchedule.For(Given.Species("northern red oak"), Given.Thickness("4/4")));

        var limited = schedule.LimitedTo(Temperature.FromFahrenheit(150.0));

        Assert.Equal(180.0, schedule.Steps[^1].DryBulbFahrenheit);
        Assert.Equal(150.0, limited.Steps[^1].DryBulbFahrenheit, 1e-9);
        Assert.Equal(schedule.Steps[^1].Air.Emc!.Value.Percent, limited.Steps[^1].Air.Emc!.Value.Percent, 1e-6);
        Assert.Equal(schedule.Steps.SkipLast(1), limited.Steps.SkipLast(1));
    }

    [Theory]
    [InlineData("sugar maple", "10/4")]
    [InlineData("northern red oak", "12/4")]
    [InlineData("swamp white oak", "8/4")]
    [InlineData("eastern white pine", "4/4")]
    [InlineData("honeylocust", "4/4")]
    public void Wood_or_thickness_without_a_row_has_no_answer(string species, string thickness) =>
        Assert.IsType<Outcome<KilnSchedule>.NoAnswer>(KilnSchedule.For(Given.Species(species), Given.Thickness(thickness)));

    [Theory]
    [InlineData("3/4", "T8-C3")]
    [InlineData("28.6mm", "T8-C3")]
    [InlineData("6/4", "T8-C3")]
    [InlineData("1-5/8in", "T8-C3")]
    [InlineData("7/4", "T5-C2")]
    [InlineData("8/4", "T5-C2")]
    [InlineData("2-1/8in", "T5-C2")]
    public void Sawn_size_finds_the_row_of_its_name(string thickness, string code) =>
        Assert.Equal(code, Given.Done(KilnSchedule.For(Given.Species("sugar maple"), Given.Thickness(thickness))).Code.ToString());

    [Fact]
    public void Every_group_of_the_species_table_is_a_row_or_none()
    {
        var unknown = SpeciesTable.All.Where(species => species.ScheduleGroup is not null
            && KilnSchedule.For(species, Given.Thickness("4/4")) is Outcome<KilnSchedule>.NoAnswer(var why) && why.StartsWith("No kiln schedule is listed", StringComparison.Ordinal));

        Assert.Empty(unknown);
    }

    [Fact]
    public void Charge_of_two_woods_takes_the_milder_of_each_part() =>
        Assert.Equal("T4-C2", KilnCode.Mildest(new KilnCode(4, 'D', 2), new KilnCode(8, 'C', 3)).ToString());

    [Theory]
    [InlineData("T15-D2")]
    [InlineData("T4-G2")]
    [InlineData("T4-D9")]
    [InlineData("T3-F4S")]
    [InlineData("")]
    public void Code_outside_the_tables_is_refused(string text) =>
        Assert.IsType<Outcome<KilnCode>.Refused>(KilnCode.Parse("code", text));
}
