namespace Boardwright.Yard.Tests.Kiln;

public sealed class KilnTests
{
    [Fact]
    public void Schedule_of_red_oak_has_the_printed_steps_and_the_floor_beside()
    {
        var schedule = Answers.Json("kiln schedule --species \"northern red oak\" --thickness 4/4");

        Assert.Equal("T4-D2", schedule.GetProperty("code").GetString());
        var steps = schedule.GetProperty("steps").EnumerateArray().ToList();
        Assert.Equal(8, steps.Count);
        foreach (var key in new[] { "mc_above_pct", "dry_bulb_f", "wet_bulb_f", "depression_f", "wet_bulb_floor90_f", "rh_pct", "emc_pct" })
            Assert.Contains(key, steps[0].Keys());

        Assert.Equal([50.0, 110.0, 106.0, 4.0, 106.0], new[] { "mc_above_pct", "dry_bulb_f", "wet_bulb_f", "depression_f", "wet_bulb_floor90_f" }.Select(key => Math.Round(steps[0].Number(key), 9)));
        Assert.Equal([130.0, 80.0, 90.0], new[] { "dry_bulb_f", "wet_bulb_f", "wet_bulb_floor90_f" }.Select(key => Math.Round(steps[5].Number(key), 9)));
        Assert.Equal(17.6, steps[0].Number("emc_pct"), 0.2);
    }

    [Fact]
    public void Air_dried_stock_is_told_its_first_air()
    {
        // Ash 4/4 at 20 %: T8-B4 lists 150 F; 10 F of depression for 12 to 18 h first.
        var start = Answers.Json("kiln schedule --species \"white ash\" --thickness 4/4 --from 20%").GetProperty("start");

        Assert.Equal([10.0, 12.0, 18.0], new[] { "depression_f", "least_h", "most_h" }.Select(key => Math.Round(start.Number(key), 9)));
        Assert.True(Answers.Json("kiln schedule --species \"white ash\" --thickness 4/4 --from 45%").IsNull("start"));
    }

    [Fact]
    public void Thick_wood_without_a_row_has_no_answer() =>
        Assert.Contains("up to 6/4", Answers.NoAnswer("kiln schedule --species \"sugar maple\" --thickness 12/4"), StringComparison.Ordinal);

    [Fact]
    public void Finish_follows_the_rule_asked_for()
    {
        var handbook = Answers.Json("kiln finish --target-mc 7%");
        var other = Answers.Json("kiln finish --target-mc 7% --rule gtr57");

        Assert.Equal([5.0, 5.0, 11.0], new[] { "equalize_emc_pct", "equalize_from_driest_pct", "condition_emc_pct" }.Select(key => Math.Round(handbook.Number(key), 9)));
        Assert.Equal(4.0, other.Number("equalize_from_driest_pct"), 1e-9);
        Assert.Equal("--target-mc", Answers.Refusal("kiln finish --target-mc 20%").What);
        Assert.Equal("--rule", Answers.Refusal("kiln finish --target-mc 7% --rule mine").What);
    }

    [Fact]
    public void Treatment_adds_the_hold_to_the_heating()
    {
        var treatment = Answers.Json("kiln treat --species \"sugar maple\" --thickness 2in --width 6in --initial 60F --core 133F --medium 157F");

        Assert.Equal(47.8, treatment.Number("heating_min"), 0.3);
        Assert.Equal(30.0, treatment.Number("hold_min"), 1e-9);
        Assert.Equal(treatment.Number("heating_min") + 30.0, treatment.Number("total_min"), 1e-9);
    }

    [Fact]
    public void Treatment_too_dry_has_no_answer_and_beyond_the_tables_is_refused()
    {
        const string line = "kiln treat --species \"sugar maple\" --thickness 2in --initial 60F --core 133F --medium 140F --wet-bulb-depression ";
        Assert.Contains("wet bulb", Answers.NoAnswer(line + "10F"), StringComparison.Ordinal);
        Assert.Equal("--wet-bulb-depression", Answers.Refusal(line + "50F").What);
    }
}
