namespace Boardwright.Yard.Tests.SawCommands;

public sealed class SawTests
{
    private const string Oak = "saw target --dressed 13/16in --planing 1/8in --species \"northern red oak\" --final-mc 7% --within 0.0139in --between 0.0168in";

    [Fact]
    public void Target_of_the_demonstration_is_the_sum_of_its_parts()
    {
        var target = Answers.Json(Oak);

        Assert.Equal(["target_green_mm", "shrinkage_mm", "planing_mm", "variation_mm", "total_sd_mm", "z", "target_green_in", "setting_mm", "setting_in"], target.Keys());
        Assert.Equal(1.0029 * 25.4, target.Number("target_green_mm"), 0.0254);
        Assert.Equal(
            target.Number("target_green_mm"), 0.8125 * 25.4 + target.Number("planing_mm") + target.Number("shrinkage_mm") + target.Number("variation_mm"), 1e-9);
        Assert.Equal(1.644854, target.Number("z"), 1e-6);
        Assert.Equal(1.0625, target.Number("setting_in"), 1e-9);
    }

    [Fact]
    public void Quartersawn_boards_are_sawn_thicker() =>
        Assert.True(Answers.Json(Oak + " --grain quarter").Number("shrinkage_mm") > 2.0 * Answers.Json(Oak).Number("shrinkage_mm"));

    [Theory]
    [InlineData("--undersize 0%", "--undersize", "0%")]
    [InlineData("--undersize 60%", "--undersize", "60%")]
    [InlineData("--grain sideways", "--grain", "sideways")]
    [InlineData("--setting 0in", "--setting", "0in")]
    public void A_target_that_cannot_be_is_refused(string options, string what, string given)
    {
        var reason = Answers.Refusal($"{Oak} {options}");

        Assert.Equal(what, reason.What);
        Assert.Equal(given, reason.Given);
    }

    [Fact]
    public void Variation_of_the_demonstration_agrees()
    {
        var variation = Answers.Json("saw variation demo/examples/thickness-readings.csv");

        Assert.Equal(
            ["mean_mm", "within_sd_mm", "between_sd_mm", "between_component_mm", "total_sd_mm", "boards", "points", "expected_sd_mm", "mean_in", "note"], variation.Keys());
        Assert.Equal(1.1280 * 25.4, variation.Number("mean_mm"), 0.0025);
        Assert.Equal(0.0139 * 25.4, variation.Number("within_sd_mm"), 0.0025);
        Assert.Equal(0.0181 * 25.4, variation.Number("between_sd_mm"), 0.0025);
        Assert.Equal(0.0168 * 25.4, variation.Number("between_component_mm"), 0.0025);
        Assert.Equal(0.0218 * 25.4, variation.Number("expected_sd_mm"), 0.0025);
        Assert.Equal(12.0, variation.Number("boards"));
        Assert.Equal(48.0, variation.Number("points"));
    }

    [Theory]
    [InlineData("nocolumn.csv", "FILE", "the columns board,point,thickness")]
    [InlineData("bad.csv", "FILE, line 3, thickness_mm", "thick")]
    [InlineData("one.csv", "boards", "1")]
    [InlineData("once.csv", "board 2", "1 reading")]
    public void Readings_that_cannot_be_used_are_refused(string file, string what, string given)
    {
        var reason = Answers.Refusal(
            "saw variation " + file,
            ("nocolumn.csv", "board,point,thickness\n1,1,28\n"),
            ("bad.csv", "board,point,thickness_mm\n1,1,28\n1,2,thick\n"),
            ("one.csv", "board,point,thickness_mm\n1,1,28\n1,2,29\n"),
            ("once.csv", "board,point,thickness_mm\n1,1,28\n1,2,29\n2,1,28\n"));

        Assert.Equal(what, reason.What);
        Assert.Equal(given, reason.Given);
    }
}
