using Boardwright.Web.Drawings;

namespace Boardwright.Web.Tests.Drawings;

/// <summary>A drawing's lengths stand for the things drawn.</summary>
public sealed class DrawingScaleTests
{
    [Fact]
    public async Task Pack_end_draws_boards_in_their_true_widths()
    {
        double[] widths = [7.25, 5.5, 8.75, 6, 9.5, 4.75, 10.25];

        var boards = Rendered.Tags(await Rendered.Html<PackEndFace>(("Of", new PackEndDrawing("P-1", "black cherry", widths)), ("Width", 540.0)), "rect", "end");

        var perInch = (boards[0].Number("width") + 1.5) / widths[0];
        Assert.Equal(widths.Length, boards.Count);
        Assert.All(boards.Zip(widths), pair => Assert.Equal(pair.Second * perInch, pair.First.Number("width") + 1.5, .15));
        Assert.True(boards[6].Number("y") < boards[0].Number("y"), "the second tier lies on the first");
    }

    [Fact]
    public async Task Log_end_draws_blade_and_boards_at_their_heights()
    {
        var log = new LogEndDrawing("L-1", "white oak", 20, 20)
        {
            Pieces = [new("1", -6, 2, 12, 1), new("2", -6, -3, 12, 2)],
            Cuts = [new("A", 3, "13.00"), new("B", -1, "9.00")],
        };

        var html = await Rendered.Html<LogEndFace>(("Of", log), ("Width", 620.0));

        var boards = Rendered.Tags(html, "rect", "board");
        var perInch = boards[0].Number("width") / 12;
        Assert.Equal(perInch, boards[0].Number("height"), .1);
        Assert.Equal(2 * perInch, boards[1].Number("height"), .1);
        var blades = Rendered.Tags(html, "path", "blade").Select(path => double.Parse(path["d"].Split(' ')[1].Split('H')[0])).ToList();
        Assert.Equal(boards[0].Number("y"), blades[0], .1);
        Assert.Equal(4 * perInch, blades[1] - blades[0], .15);
    }

    [Fact]
    public async Task Gap_in_the_record_stays_a_gap()
    {
        var start = new DateTime(2026, 5, 1);
        List<MoisturePoint> Run(int from) => [.. Enumerable.Range(from, 10).Select(day => new MoisturePoint(start.AddDays(day), 20, 22, 24))];
        var curve = new DryingCurveDrawing("S-1", start, start.AddDays(100), start.AddDays(90)) { Past = [Run(0), Run(50)] };

        var html = await Rendered.Html<DryingCurveFace>(("Of", curve), ("Width", 980.0), ("Height", 340.0));

        var lines = Rendered.Tags(html, "path", "likely").Select(path => path["d"].Split('M', 'L').Where(point => point.Length > 0).Select(point => double.Parse(point.Split(' ')[0])).ToList()).ToList();
        Assert.Equal(2, lines.Count);
        Assert.True(lines[1].Min() - lines[0].Max() > 300, "40 of 100 days stay empty");
    }

    [Fact]
    public async Task Reading_keeps_what_was_read_and_what_it_means()
    {
        var day = new DateTime(2026, 11, 2);
        var curve = new DryingCurveDrawing("S-1", day.AddDays(-30), day.AddDays(30), day) { Readings = [new(day, 15.0, 12.9)] };

        var html = await Rendered.Html<DryingCurveFace>(("Of", curve), ("Width", 980.0), ("Height", 340.0));

        var dots = Rendered.Tags(html, "circle", "reading");
        Assert.Equal(2, dots.Count);
        Assert.Single(dots, dot => dot["class"] == "reading raw");
        Assert.Contains("as read, 12.9", html);
        Assert.Contains("2 November 15.0 (read 12.9)", html);
    }

    [Theory]
    [InlineData(-1, 1, 3, true)]
    [InlineData(-6, -3, -1, false)]
    public async Task Promise_bar_hatches_only_what_lies_past_the_due_day(double early, double likely, double late, bool hatched)
    {
        var html = await Rendered.Html<PromiseBar>(("EarlyDays", early), ("LikelyDays", likely), ("LateDays", late));

        Assert.Equal(hatched, Rendered.Tags(html, "rect", "past").Count == 1);
        Assert.Contains(late > 0 ? "3 days after the due day" : "1 day before the due day", html);
    }

    [Fact]
    public async Task Parts_of_an_amount_fill_the_bar_in_proportion()
    {
        var bar = new PartsBarDrawing("What 905 bf turns into", "bf", [new("sold", 620, PartUse.Wood, "black cherry"), new("spare", 196, PartUse.Spare), new("lost", 89, PartUse.Lost)]);

        var parts = Rendered.Tags(await Rendered.Html<PartsBarFace>(("Of", bar), ("Width", 860.0)), "rect", "part-use");

        var perFoot = parts.Sum(part => part.Number("width")) / 905;
        Assert.Equal([620, 196, 89], parts.Select(part => Math.Round(part.Number("width") / perFoot)));
    }
}
