namespace Boardwright.Yard.Tests.Moisture;

public sealed class MoistureTests
{
    [Fact]
    public void Sections_of_sample_4_give_its_calculated_dry_weight()
    {
        var sample = Answers.Json("moisture sections --wet 119.9g,122.5g --dry 96.3g,98.5g --sample 3540g");

        Assert.Equal(["section_mc_pct", "average_mc_pct", "calculated_dry_weight_g"], sample.Keys());
        Assert.Equal([24.51, 24.37], sample.GetProperty("section_mc_pct").EnumerateArray().Select(section => Math.Round(section.GetDouble(), 2)));
        Assert.Equal(24.44, sample.Number("average_mc_pct"), 0.005);
        Assert.Equal(2844.8, sample.Number("calculated_dry_weight_g"), 0.05);
    }

    [Theory]
    [InlineData("--wet 119.9g,122.5g --dry 96.3g --sample 3540g", "--dry", "96.3g")]
    [InlineData("--wet 90g,122.5g --dry 96.3g,98.5g --sample 3540g", "--wet", "90 g")]
    [InlineData("--wet 120g --dry 0g --sample 3540g", "--dry", "0g")]
    [InlineData("--wet 120g --dry 90g --sample 0g", "--sample", "0g")]
    [InlineData("--wet 120,122 --dry 96.3g,98.5g --sample 3540g", "--wet", "120")]
    public void Sections_that_cannot_be_are_refused(string options, string what, string given)
    {
        var reason = Answers.Refusals("moisture sections " + options)[0];

        Assert.Equal(what, reason.What);
        Assert.Equal(given, reason.Given);
    }

    [Fact]
    public void A_dropped_sample_is_not_drier_for_it()
    {
        var taken = Answers.Json("moisture sample --calculated-dry 2844.8g --current 3158g");
        var corrected = Answers.Json("moisture sample --calculated-dry 2844.8g --current 3158g --before-loss 3263g --after-loss 3221g");

        Assert.Equal(11.0, taken.Number("current_mc_pct"), 0.05);
        Assert.Equal(12.5, corrected.Number("current_mc_pct"), 0.05);
        Assert.Equal(2808.2, corrected.Number("calculated_dry_weight_g"), 0.05);
    }

    [Theory]
    [InlineData("--calculated-dry 2844.8g --current 2158g", "--current", "2158g")]
    [InlineData("--calculated-dry 0g --current 2158g", "--calculated-dry", "0g")]
    [InlineData("--calculated-dry 2844.8g --current 3158g --before-loss 3263g", "--after-loss", "nothing")]
    [InlineData("--calculated-dry 2844.8g --current 3158g --before-loss 3263g --after-loss 3300g", "--after-loss", "3300g")]
    [InlineData("--calculated-dry 2844.8g --current 3.158", "--current", "3.158")]
    public void Weights_that_cannot_be_are_refused(string options, string what, string given)
    {
        var reason = Answers.Refusal("moisture sample " + options);

        Assert.Equal(what, reason.What);
        Assert.Equal(given, reason.Given);
    }

    [Theory]
    [InlineData("--reading 12% --temperature 50F --species \"white oak\"", 13.0, 13.0)]
    [InlineData("--reading 12% --temperature 70F --species \"white oak\" --calibrated-for douglas-fir", 12.0, 11.46)]
    [InlineData("--reading 10% --temperature 70F --species \"yellow birch\" --calibrated-for douglas-fir", 10.0, 10.71)]
    [InlineData("--reading 12% --temperature 0C --species \"sugar maple\" --equation pfaff-garrahan", 14.2645, 14.2645)]
    public void A_reading_is_corrected_for_temperature_then_species(string options, double atRoom, double corrected)
    {
        var read = Answers.Json("moisture meter " + options);

        Assert.Equal(["temperature_corrected_pct", "corrected_mc_pct", "usable", "error_pct", "note"], read.Keys());
        Assert.Equal(atRoom, read.Number("temperature_corrected_pct"), 0.0005);
        Assert.Equal(corrected, read.Number("corrected_mc_pct"), 0.02);
        Assert.True(read.GetProperty("usable").GetBoolean());
    }

    [Fact]
    public void Wood_without_a_row_keeps_its_species_correction_unknown()
    {
        var read = Answers.Json("moisture meter --reading 12% --temperature 70F --species hackberry --calibrated-for douglas-fir");

        Assert.True(read.IsNull("corrected_mc_pct"));
        Assert.Contains("hackberry", read.GetProperty("note").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Green_wood_is_not_measured_by_a_meter()
    {
        var read = Answers.Json("moisture meter --reading 45% --temperature 70F --species \"white oak\"");

        Assert.False(read.GetProperty("usable").GetBoolean());
        Assert.Contains("use the oven", read.GetProperty("note").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--reading 12% --temperature 70F --species granite", "--species", "granite")]
    [InlineData("--reading 12% --temperature 70F --species hackberry --calibrated-for granite", "--calibrated-for", "granite")]
    [InlineData("--reading 12% --temperature 70F --species hackberry --equation wild", "--equation", "wild")]
    [InlineData("--reading 12% --temperature 300F --species hackberry", "--temperature", "300F")]
    [InlineData("--reading 0.12 --temperature 70F --species hackberry", "--reading", "0.12")]
    public void A_reading_that_cannot_be_taken_is_refused(string options, string what, string given)
    {
        var reason = Answers.Refusal("moisture meter " + options);

        Assert.Equal(what, reason.What);
        Assert.Equal(given, reason.Given);
    }

    [Theory]
    [InlineData("6.4,7.1,6.9,7.6,6.2,7.0,8.1,6.7,7.3,6.8,7.2,6.6")]
    [InlineData("demo/examples/moisture-readings.csv")]
    public void A_lot_is_judged_from_a_list_or_a_file(string readings)
    {
        var lot = Answers.Json($"moisture lot --readings {readings}");

        Assert.Equal(["count", "mean_pct", "standard_deviation_pct", "mean_low_pct", "mean_high_pct", "share_within_pct", "boards_to_measure", "mean_accepted", "spread_accepted", "accepted", "above_range", "why"], lot.Keys());
        Assert.Equal(12.0, lot.Number("count"));
        Assert.Equal(6.9917, lot.Number("mean_pct"), 0.0001);
        Assert.Equal(0.5230, lot.Number("standard_deviation_pct"), 0.0001);
        Assert.Equal(6.6593, lot.Number("mean_low_pct"), 0.0005);
        Assert.Equal(7.3240, lot.Number("mean_high_pct"), 0.0005);
        Assert.Equal(7.0, lot.Number("boards_to_measure"));
        // The normal share within 1/0.52303 = 1.91194 standard deviations, from the tables of the normal distribution: 0.94412.
        Assert.Equal(94.41, lot.Number("share_within_pct"), 0.01);
    }

    [Fact]
    public void A_target_off_the_mean_holds_fewer_boards() => Assert.True(
        Answers.Json("moisture lot --readings demo/examples/moisture-readings.csv --target 8% --allow 1%").Number("share_within_pct")
        < Answers.Json("moisture lot --readings demo/examples/moisture-readings.csv --target 7% --allow 1%").Number("share_within_pct"));

    [Fact]
    public void One_board_has_no_spread()
    {
        var lot = Answers.Json("moisture lot --readings 7%");

        Assert.True(lot.IsNull("standard_deviation_pct") && lot.IsNull("share_within_pct") && lot.IsNull("boards_to_measure"));
    }

    [Theory]
    [InlineData("7,abc", "--readings", "abc")]
    [InlineData("6.4;x", "--readings", "x")]
    [InlineData("missing.csv", "--readings", "missing.csv")]
    [InlineData("wrong.csv", "--readings", "the columns board,mc")]
    [InlineData("bad.csv", "--readings, line 3, reading_pct", "wet")]
    [InlineData("none.csv", "--readings", "a header without rows")]
    [InlineData("empty.csv", "--readings", "an empty file")]
    public void Readings_that_cannot_be_read_are_refused_with_their_place(string readings, string what, string given)
    {
        var reason = Answers.Refusal(
            $"moisture lot --readings \"{readings}\"",
            ("wrong.csv", "board,mc\n1,7\n"),
            ("bad.csv", "board;reading_pct\n1;7.5\n2;wet\n"),
            ("none.csv", "reading_pct\n"),
            ("empty.csv", ""));

        Assert.Equal(what, reason.What);
        Assert.Equal(given, reason.Given);
    }
}
