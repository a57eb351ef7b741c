namespace Boardwright.Yard.Tests.PackCommands;

public sealed class PackTests
{
    [Fact]
    public void P118_comes_to_its_sums()
    {
        var pack = Answers.Json("pack tally demo/examples/pack-p118.csv");

        Assert.Equal(36.0, pack.Number("pieces"));
        Assert.Equal(218.0, pack.Number("board_feet"));
        Assert.Equal(217.92, pack.Number("exact_board_feet"), 0.005);
        Assert.Equal(217.92 * 0.002359737216, pack.Number("volume_m3"), 0.00002);
        Assert.Equal([8, 10, 12, 14], pack.GetProperty("by_length").EnumerateArray().Select(length => (int)length.Number("length_ft")));
        Assert.Equal(36, pack.GetProperty("by_length").EnumerateArray().Sum(length => length.Number("pieces")));
        Assert.Equal(218, pack.GetProperty("by_length").EnumerateArray().Sum(length => length.Number("board_feet")));
        Assert.Equal(8.0, pack.Number("weight_mc_pct"));
        Assert.InRange(pack.Number("weight_kg") / pack.Number("volume_m3"), 500, 600);              // black cherry at 8 %
        Assert.True(pack.IsNull("differences"));
    }

    [Fact]
    public void Second_tally_of_P118_differs_in_boards_9_14_and_30()
    {
        var pack = Answers.Json("pack tally demo/examples/pack-p118.csv --against demo/examples/pack-p118-second.csv");

        Assert.Equal(214.0, pack.Number("second_board_feet"));
        var differences = pack.GetProperty("differences").EnumerateArray().ToList();
        Assert.Equal([9, 14, 30], differences.Select(one => (int)one.Number("board")));
        Assert.Equal("missing", differences[2].GetProperty("second").GetString());
    }

    [Fact]
    public void Metric_columns_and_no_species_are_taken()
    {
        var pack = Answers.Json("pack tally metric.csv --rule exact", ("metric.csv", "thickness_quarters,width_mm,length_m\n4/4,180,2.5\n5,200,3\n"));

        Assert.Equal(0.0254 * 0.18 * 2.5 + 1.25 * 0.0254 * 0.2 * 3, pack.Number("volume_m3"), 1e-9);
        Assert.Equal(190, pack.Number("average_width_mm"), 1e-9);
        Assert.Equal(2.75, pack.Number("average_length_m"), 1e-9);
        Assert.True(pack.IsNull("weight_kg"));
    }

    [Fact]
    public void Every_bad_row_is_refused_with_its_line_and_column()
    {
        var reasons = Answers.Refusals(
            "pack tally bad.csv", ("bad.csv", "thickness_quarters,width_in,length_ft,species\n4,6,8,black cherry\n4,wide,8,black cherry\n99,6,8,\n4,6,-8,\n4,6,8,granite\n"));

        Assert.Equal(
            ["FILE, line 3, width_in", "FILE, line 4, thickness_quarters", "FILE, line 5, length_ft", "FILE, line 6, species"], reasons.Select(reason => reason.What));
    }

    [Theory]
    [InlineData("pack tally missing.csv", "FILE", "missing.csv")]
    [InlineData("pack tally mixed.csv", "FILE", "the columns thickness_quarters,width_in,length_m")]
    [InlineData("pack tally demo/examples/pack-p118.csv --rule doyle", "--rule", "doyle")]
    [InlineData("pack tally demo/examples/pack-p118.csv --mc wet", "--mc", "wet")]
    public void A_tally_that_cannot_be_read_is_refused(string line, string what, string given)
    {
        var reason = Answers.Refusal(line, ("mixed.csv", "thickness_quarters,width_in,length_m\n4,6,2\n"));

        Assert.Equal(what, reason.What);
        Assert.Equal(given, reason.Given);
    }
}
