namespace Boardwright.Yard.Tests.BoardCommands;

public sealed class BoardTests
{
    [Theory]
    [InlineData("--thickness 8/4 --width 6-1/4in --length 8ft", 4, 8)]
    [InlineData("--thickness 4/4 --width 6-7/16in --length 10ft9in", 5, 5)]
    [InlineData("--thickness 6/4 --width 7.5in --length 12ft", 8, 12)]
    [InlineData("--thickness 3/4 --width 12in --length 8ft", 8, 8)]
    public void Board_is_measured_by_the_hardwood_rule(string options, double surface, double footage)
    {
        var board = Answers.Json("board measure " + options);

        Assert.Equal(["surface_measure", "board_feet", "volume_m3", "rule"], board.Keys());
        Assert.Equal(surface, board.Number("surface_measure"));
        Assert.Equal(footage, board.Number("board_feet"));
    }

    [Fact]
    public void Exact_rounds_nothing_and_volume_is_always_the_size()
    {
        var exact = Answers.Json("board measure --thickness 3/4 --width 6.5in --length 8ft6in --rule exact");
        var rounded = Answers.Json("board measure --thickness 3/4 --width 6.5in --length 8ft6in");

        Assert.Equal(6.5 * 8.5 / 12, exact.Number("surface_measure"), 1e-9);
        Assert.Equal(0.75 * 6.5 * 8.5 / 12, exact.Number("board_feet"), 1e-9);
        Assert.Equal(0.75 * 6.5 * 8.5 / 12 * 0.002359737216, exact.Number("volume_m3"), 1e-12);
        Assert.Equal(exact.Number("volume_m3"), rounded.Number("volume_m3"));
    }

    [Theory]
    [InlineData("--thickness 4/4 --width 0in --length 8ft", "--width", "0in")]
    [InlineData("--thickness 4/4 --width 6 --length 8ft", "--width", "6")]
    [InlineData("--thickness 4/4 --width 6in --length 8ft --rule doyle", "--rule", "doyle")]
    public void A_board_that_cannot_be_is_refused(string options, string what, string given)
    {
        var reason = Answers.Refusal("board measure " + options);

        Assert.Equal(what, reason.What);
        Assert.Equal(given, reason.Given);
    }
}
