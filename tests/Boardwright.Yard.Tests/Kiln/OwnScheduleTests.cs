namespace Boardwright.Yard.Tests.Kiln;

/// <summary>A schedule of the house's own as a file: read in SI and US columns, every bad row named.</summary>
public sealed class OwnScheduleTests
{
    private const string ByHours = "demo/examples/schedule-by-hours.csv";

    [Fact]
    public void Schedule_by_hours_is_read_checked_and_shown()
    {
        var answer = Answers.Json($"kiln own {ByHours}");
        var steps = answer.GetProperty("steps").EnumerateArray().ToList();

        Assert.Equal("Ash by hours", answer.GetProperty("schedule").GetString());
        Assert.Equal(["dry", "dry", "dry", "dry", "equalize", "condition"], steps.Select(step => step.GetProperty("phase").GetString()));
        Assert.Equal(24.0, steps[0].Number("hours"));
        Assert.True(steps[0].IsNull("mc_above_pct") && steps[3].IsNull("hours"));
        Assert.Equal(96.0, answer.Number("hours_by_clock_h"));
        Assert.Equal(11.0, steps[5].Number("emc_pct"), 0.01);
    }

    [Fact]
    public void Columns_in_either_unit_and_air_by_any_of_four_readings_are_the_same_schedule()
    {
        // 110 F dry, 102 F wet: 8 F of depression.
        string[] files =
        [
            "hours,dry_bulb_f,wet_bulb_f\n24,110,102\n,150,112\n", "hours,dry_bulb_c,wet_bulb_c\n24,43.333333333,38.888888889\n,65.555555556,44.444444444\n",
            "hours;dry_bulb_f;depression_f\n24;110;8\n;150;38\n", "hours,dry_bulb_f,depression_c\n24,110,4.444444444\n,150,21.111111111\n", "hours,dry_bulb,wet_bulb\n24,110F,102F\n,65.555555556C,112F\n",
        ];
        foreach (var file in files)
        {
            var steps = Answers.Json("kiln own ours.csv", ("ours.csv", file.Replace("\\n", "\n", StringComparison.Ordinal))).GetProperty("steps").EnumerateArray().ToList();
            Assert.Equal([110.0, 102.0, 150.0, 112.0], steps.SelectMany(step => new[] { step.Number("dry_bulb_f"), step.Number("wet_bulb_f") }).Select(value => Math.Round(value, 6)));
        }

        var emc = Answers.Json("kiln own ours.csv", ("ours.csv", "dry_bulb_f,emc_pct\n110,17.6\n")).GetProperty("steps")[0];
        Assert.Equal(106.0, emc.Number("wet_bulb_f"), 0.1); // 110/106 F holds 17.6 %: table 1-6 of the Dry Kiln Operator's Manual (from memory of the source)
        Assert.Equal(50.0, Answers.Json("kiln own ours.csv", ("ours.csv", "dry_bulb_f,rh_pct\n110,50\n")).GetProperty("steps")[0].Number("rh_pct"), 1e-3);
    }

    [Fact]
    public void Every_bad_row_has_one_error_with_line_column_found_and_accepted()
    {
        var bad = Answers.Refusals("kiln own bad.csv", ("bad.csv", """
            phase,mc_above_pct,hours,dry_bulb_f,wet_bulb_f,emc_pct
            dry,50,20,110,106,
            dry,45,,110,116,
            dry,55,,110,105,
            dry,,,120,110,
            dry,,7.3,120,,9
            equalize,,,300,110,
            """));

        Assert.Equal(
            ["bad.csv, line 2, hours", "bad.csv, line 3, wet_bulb_f", "bad.csv, line 4, mc_above_pct", "bad.csv, line 5, mc_above_pct", "bad.csv, line 6, hours", "bad.csv, line 7, dry_bulb_f"],
            bad.Select(reason => reason.What));
        Assert.All(bad, reason => Assert.True(reason.Given.Length > 0 && reason.Accepted.Length > 0));
        Assert.Contains("phase", Assert.Single(Answers.Refusals("kiln own bad.csv", ("bad.csv", "phase,dry_bulb_f,wet_bulb_f\nwarm,110,106\n"))).What, StringComparison.Ordinal);
        Assert.Contains("wet_bulb and emc_pct", Assert.Single(Answers.Refusals("kiln own bad.csv", ("bad.csv", "dry_bulb_f,wet_bulb_f,emc_pct\n110,106,9\n"))).Given, StringComparison.Ordinal);
        Assert.Contains("line 1, drybulb_f", Answers.Refusals("kiln own bad.csv", ("bad.csv", "drybulb_f,wet_bulb_f\n110,106\n"))[0].What, StringComparison.Ordinal);
    }

    [Fact]
    public void Whole_charge_is_simulated_by_it()
    {
        const string Ask = "dry kiln --species \"white ash\" --thickness 4/4 --from 45% --to 7%";
        var own = Answers.Json($"{Ask} --schedule {ByHours}");
        var hours = own.GetProperty("steps").EnumerateArray().Select(step => step.Number("hours")).ToList();

        Assert.Equal([24.0, 36.0, 36.0], hours.Take(3));
        Assert.Equal(own.Number("hours_p50"), hours.Sum(), 1e-6);
        Assert.True(own.IsNull("code"));
        Assert.Equal(2, own.GetProperty("finish").GetArrayLength());
        Assert.Equal("T8-B4", Answers.Json(Ask).GetProperty("code").GetString());
        Assert.Equal("--schedule", Answers.Refusal($"{Ask} --schedule none.csv").What);
    }

    [Fact]
    public void Heat_of_the_run_is_more_than_the_water_alone_takes_and_more_in_the_cold()
    {
        const string Ask = "dry kiln --species \"white ash\" --thickness 4/4 --from 45% --to 7%";
        var mild = Answers.Json(Ask);
        var cold = Answers.Json($"{Ask} --outside 0F");

        // Evaporation alone: 0.66 kWh a kg; kilns take 1.5 to 3 times that with warming and venting (reference/heat of evaporation, Wood Handbook ch. 4).
        Assert.InRange(mild.Number("kwh_per_kg_water"), 0.66, 2.0);
        Assert.True(cold.Number("heat_kwh_per_m3") > mild.Number("heat_kwh_per_m3"));
    }

    [Fact]
    public void Wood_without_a_listed_schedule_can_be_dried_by_one_s_own()
    {
        const string Ask = "dry kiln --species \"white oak\" --thickness 12/4 --from 20% --to 8%";

        Answers.NoAnswer(Ask);
        Assert.True(Answers.Json($"{Ask} --schedule demo/examples/schedule-by-moisture.csv").Number("hours_p50") > 100.0);
    }
}
