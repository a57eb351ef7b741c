namespace Boardwright.Yard.Tests.LogCommands;

public sealed class LogTests
{
    private static readonly string[] Keys = ["rule", "gross_bf", "net_bf", "volume_m3", "gross_unrounded_bf", "deduction_bf", "assumed", "note", "deductions"];

    [Fact]
    public void Scale_has_the_keys_of_the_contract() => Assert.Equal(Keys, Answers.Json("log scale --rule doyle --small-end 16in --length 16ft").Keys());

    [Theory]
    [InlineData("doyle", 144, 144.0)]
    [InlineData("scribner", 160, 160.0)]
    [InlineData("scribner-decimal-c", 160, 160.0)]
    [InlineData("international-quarter", 180, 180.59)]
    [InlineData("international-eighth", 200, 199.6)]
    [InlineData("ontario", 162, 162.13)]
    public void One_log_scales_by_every_rule_in_board_feet(string rule, double gross, double unrounded)
    {
        var log = Answers.Json($"log scale --rule {rule} --small-end 16in --length 16ft");

        Assert.Equal(rule, log.GetProperty("rule").GetString());
        Assert.Equal(gross, log.Number("gross_bf"));
        Assert.Equal(gross, log.Number("net_bf"));
        Assert.Equal(unrounded, log.Number("gross_unrounded_bf"), 0.01);
        Assert.Equal(0.0, log.Number("deduction_bf"));
        Assert.Contains("large end 18 in", log.GetProperty("assumed").GetString(), StringComparison.Ordinal);
    }

    // 0.0254 x 0.0254 x 0.3048 x pi/8 x (16² + 18²) x 16
    [Theory]
    [InlineData("smalian", "--large-end 18in", 0.71663)]
    [InlineData("huber", "--mid 17in", 0.71415)]
    [InlineData("newton", "--large-end 18in --mid 17in", 0.71498)]
    public void A_cubic_rule_gives_volume_and_leaves_board_feet_open(string rule, string ends, double cubicMetres)
    {
        var log = Answers.Json($"log scale --rule {rule} --small-end 16in --length 16ft {ends}");

        Assert.Equal(cubicMetres, log.Number("volume_m3"), 0.00002);
        Assert.All(["gross_bf", "net_bf", "gross_unrounded_bf", "deduction_bf", "assumed"], key => Assert.True(log.IsNull(key), key));
    }

    [Fact]
    public void Deductions_are_listed_one_by_one_and_taken_off()
    {
        var log = Answers.Json("log scale --rule doyle --small-end 16in --length 16ft --sweep 5in --defect length:4ft --defect sap:1in");

        Assert.Equal([27.0, 36.0, 44.0], log.GetProperty("deductions").EnumerateArray().Select(one => Math.Round(one.Number("deduction_bf"), 6)));
        Assert.Equal(37.0, log.Number("net_bf"));
    }

    [Theory]
    [InlineData("--rule doyle --small-end 16 --length 16ft", "--small-end", "16")]
    [InlineData("--rule dolye --small-end 16in --length 16ft", "--rule", "dolye")]
    [InlineData("--rule scribner --small-end 5in --length 16ft", "--small-end", "5in")]
    [InlineData("--rule scribner-decimal-c --small-end 16.5in --length 16ft", "--small-end", "16.5in")]
    [InlineData("--rule doyle --small-end 16in --large-end 12in --length 16ft", "--large-end", "12in")]
    [InlineData("--rule doyle --small-end 16in --length 16ft --defect rot:8in", "--defect", "rot:8in")]
    [InlineData("--rule doyle --small-end 16in --length 0ft", "--length", "0ft")]
    [InlineData("--rule smalian --small-end 16in --length 16ft --sweep 3in", "--sweep", "3in")]
    [InlineData("--rule doyle --small-end 0in --length 16ft", "--small-end", "0in")]
    public void A_log_that_cannot_be_scaled_is_refused(string options, string what, string given)
    {
        var reason = Answers.Refusal("log scale " + options);

        Assert.Equal(what, reason.What);
        Assert.Equal(given, reason.Given);
    }

    [Fact]
    public void Roy_has_no_answer_yet() => Assert.Contains("table", Answers.NoAnswer("log scale --rule roy --small-end 16in --length 16ft"), StringComparison.Ordinal);

    [Fact]
    public void Weight_of_a_green_log_is_volume_times_green_density()
    {
        var log = Answers.Json("log weight --species \"northern red oak\" --small-end 16in --large-end 17.5in --length 12ft");

        Assert.Equal(["weight_kg", "weight_lb", "volume_m3", "green_mc_pct", "bark_kg", "caution"], log.Keys());
        Assert.Equal(0.52103, log.Number("volume_m3"), 0.00005);
        Assert.Equal(1000 * 0.56 * 1.83 * log.Number("volume_m3"), log.Number("weight_kg"), 0.01);
        Assert.Equal(log.Number("weight_kg") / 0.45359237, log.Number("weight_lb"), 0.001);
        Assert.True(log.IsNull("bark_kg"));
    }

    // Published as about 1,480 lb: 18.4 ft³ of wood at 80.2 lb with its bark.
    [Fact]
    public void Bark_adds_its_weight() => Assert.Equal(
        1475, Answers.Json("log weight --species \"northern red oak\" --small-end 16in --large-end 17.5in --length 12ft --bark").Number("weight_lb"), 10.0);

    [Fact]
    public void Bark_of_a_species_not_held_has_no_answer() =>
        Assert.Contains("paper birch", Answers.NoAnswer("log weight --species \"paper birch\" --small-end 16in --large-end 18in --length 12ft --bark"), StringComparison.Ordinal);
}
