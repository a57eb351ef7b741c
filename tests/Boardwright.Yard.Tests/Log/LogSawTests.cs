namespace Boardwright.Yard.Tests.LogCommands;

public sealed class LogSawTests
{
    private const string Oak = "log saw demo/examples/log-red-oak.json --prices demo/examples/prices-red-oak.csv";
    private static readonly string[] Keys = ["pattern", "rotation_deg", "value_money", "volume_bf", "recovery_pct", "sawn_share_pct", "upper_bound_money", "boards", "cuts"];
    private static readonly string[] BoardKeys = ["thickness_mm", "width_mm", "length_m", "grade", "bf", "value_money"];
    private static readonly string[] CutKeys = ["turn_deg", "blade_height_mm"];
    private static readonly string[] Patterns = ["live", "cant", "quarter"];

    [Fact]
    public void Saw_has_the_keys_of_the_contract()
    {
        var plan = Answers.Json(Oak);

        Assert.Equal(Keys, plan.Keys().Take(Keys.Length));
        Assert.Equal(BoardKeys, plan.GetProperty("boards")[0].Keys().Take(BoardKeys.Length));
        Assert.Equal(CutKeys, plan.GetProperty("cuts")[0].Keys().Take(CutKeys.Length));
    }

    [Fact]
    public void Value_and_footage_are_those_of_the_boards_and_stay_under_the_bound()
    {
        var plan = Answers.Json(Oak);
        var boards = plan.GetProperty("boards").EnumerateArray().ToList();

        Assert.Equal(boards.Sum(board => board.Number("value_money")), plan.Number("value_money"), 1e-9);
        Assert.Equal(boards.Sum(board => board.Number("bf")), plan.Number("volume_bf"), 1e-9);
        Assert.All(boards, board => Assert.Equal(board.Number("thickness_quarters") / 4.0 * (board.Number("width_mm") / 25.4) * (board.Number("length_m") / 0.3048) / 12.0, board.Number("bf"), 1e-9));
        Assert.InRange(plan.Number("value_money"), 0.6 * plan.Number("upper_bound_money"), plan.Number("upper_bound_money"));
        Assert.Equal(100.0 * boards.Sum(board => board.Number("thickness_mm") * board.Number("width_mm") * board.Number("length_m") * 1e-6) / plan.Number("log_volume_m3"), plan.Number("sawn_share_pct"), 1e-6);
        Assert.Equal(100.0 * plan.Number("volume_bf") * 0.3048 * 0.3048 * 0.0254 / plan.Number("log_volume_m3"), plan.Number("recovery_pct"), 1e-6);
    }

    [Fact]
    public void Explained_best_is_the_dearest_pattern()
    {
        var plan = Answers.Json($"{Oak} --explain");
        var patterns = plan.GetProperty("explain").GetProperty("patterns").EnumerateArray().ToList();

        Assert.Equal(Patterns, patterns.Select(one => one.GetProperty("pattern").GetString()));
        Assert.Equal(patterns.Max(one => one.Number("value_money")), plan.Number("value_money"), 1e-9);
    }

    [Fact]
    public void Without_prices_every_board_foot_counts_one()
    {
        var plan = Answers.Json("log saw demo/examples/log-red-oak.json --pattern live");

        Assert.Equal(plan.Number("volume_bf"), plan.Number("value_money"), 1e-9);
    }

    [Fact]
    public void A_missing_large_end_is_assumed_and_said() => Assert.Contains(
        "1/8 in per foot", Answers.Json("log saw a.json --pattern live", ("a.json", """{ "small_end_mm": 400, "length_m": 2.6 }""")).GetProperty("assumed").GetString(), StringComparison.Ordinal);

    [Fact]
    public void Metal_in_the_file_says_do_not_open() => Assert.Contains(
        "do not open", Answers.Json("log saw a.json --pattern live", ("a.json", """{ "small_end_mm": 400, "length_m": 2.6, "metal": "3 hits" }""")).GetProperty("caution").GetString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("""{ "small_end_mm": 400, "large_end_mm": 300, "length_m": 2.6 }""", "FILE, large_end", "11.81 in")]
    [InlineData("""{ "large_end_mm": 300, "length_m": 2.6 }""", "FILE, small_end_mm", "nothing")]
    [InlineData("""{ "small_end_mm": -4, "length_m": 2.6 }""", "FILE, small_end_mm", "-4")]
    [InlineData("""{ "species": "plastic", "small_end_mm": 400, "length_m": 2.6 }""", "FILE, species", "plastic")]
    [InlineData("""{ "sections": [ { "at_m": 1, "diameter_x_mm": 300 }, { "at_m": 2, "diameter_x_mm": 300 } ] }""", "FILE, sections", "2 sections")]
    public void A_log_that_cannot_be_is_refused_at_its_key(string file, string what, string given)
    {
        var refusal = Answers.Refusal("log saw a.json", ("a.json", file));

        Assert.Equal((what, given), (refusal.What, refusal.Given));
    }

    [Theory]
    [InlineData("log saw demo/examples/log-red-oak.json --kerf 3in", "--kerf")]
    [InlineData("log saw demo/examples/log-red-oak.json --pattern round", "--pattern")]
    [InlineData("log saw demo/examples/log-red-oak.json --green 4/4", "--green")]
    [InlineData("log saw demo/examples/log-red-oak.json --prices demo/examples/prices-white-oak.csv", "--prices")]
    public void A_bad_option_is_refused_by_name(string line, string what) => Assert.Equal(what, Answers.Refusal(line).What);

    [Fact]
    public void A_price_row_out_of_range_is_refused_with_its_line() => Assert.Equal(
        "--prices, line 2, price_money_per_bf",
        Answers.Refusal("log saw demo/examples/log-red-oak.json --prices p.csv", ("p.csv", "thickness_quarters,grade,width_min_mm,length_min_m,price_money_per_bf\n4,FAS,150,2.4,-1\n")).What);

    [Fact]
    public void A_log_too_thin_has_no_answer() => Assert.Contains("No board fits", NoAnswer("""{ "small_end_mm": 77, "large_end_mm": 78, "length_m": 2.6 }"""), StringComparison.Ordinal);

    private static string NoAnswer(string log) => Answers.NoAnswer("log saw a.json", ("a.json", log));
}
