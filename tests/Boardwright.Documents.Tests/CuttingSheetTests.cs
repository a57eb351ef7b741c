using Boardwright.Documents.Logs;
using Boardwright.Documents.Setting;
using Boardwright.Quantities;

namespace Boardwright.Documents.Tests;

public class CuttingSheetTests
{
    private static readonly Lazy<string> Usual = new(() => Pdf.Text(CuttingSheet.Render(LogExamples.Quartered)));

    [Theory]
    [InlineData("Cutting sheet L-012")]
    [InlineData("Kerf 0.055 in")]
    [InlineData("Metal: scanned clear. Scanned by Bram, 5 Oct.")]
    [InlineData("Opening 1 of 2: the middle third")]
    [InlineData("Paint the turn mark at the top of the small end before the first cut.")]
    [InlineData("A 17 9/32 17.29 439 slab")]
    [InlineData("Turn a quarter clockwise: turn mark at 3 o'clock.")]
    [InlineData("32 5/4, 4.1 in, 8 ft other")]
    [InlineData("Guards shut")]
    public void Sheet_says(string phrase) => Assert.Contains(phrase, Usual.Value, StringComparison.Ordinal);

    [Fact]
    public void A_clear_log_has_no_stop_flag() =>
        Assert.DoesNotContain("stop", Pdf.Text(CuttingSheet.Render(LogExamples.Quartered with { Metal = MetalScan.Clear })).Replace("between log and stop", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void Metal_is_flagged_at_the_head_and_at_every_hit()
    {
        var text = Pdf.Text(CuttingSheet.Render(LogExamples.Metal));

        Assert.Contains("Stop: metal", text, StringComparison.Ordinal);
        Assert.Contains("3 o'clock, 5 ft from the small end: strong signal.", text, StringComparison.Ordinal);
        Assert.Equal(3, text.Split("stop: metal").Length - 1);
    }

    [Fact]
    public void An_unscanned_log_says_so() =>
        Assert.Contains("Scan before the first cut.", Pdf.Text(CuttingSheet.Render(LogExamples.Quartered with { Metal = MetalScan.NotScanned })), StringComparison.Ordinal);

    [Theory]
    [InlineData(17.26, "17 1/4")]
    [InlineData(15.83, "15 27/32")]
    [InlineData(11.54, "11 17/32")]
    [InlineData(8.68, "8 11/16")]
    [InlineData(0.99, "1")]
    [InlineData(0.51, "1/2")]
    [InlineData(0.0, "0")]
    public void A_height_is_read_off_the_rule_to_the_nearest_thirty_second(double inches, string expected) =>
        Assert.Equal(expected, Print.OnTheRule(Length.FromInches(inches)));

    [Fact]
    public void Heights_stand_in_the_scale_of_the_mill_with_the_stops_to_scan()
    {
        var content = LogExamples.Quartered with { Metric = true, Metal = MetalScan.Doubtful, MetalNote = "1 piece of metal dug out.", Openings = [.. LogExamples.Quartered.Openings.Select(opening => opening with { Cuts = [.. opening.Cuts.Select((cut, i) => cut with { OnScale = $"{cut.Height.Millimetres:0}", ScanFirst = i % 3 == 0 })] })] };

        var text = Pdf.Text(CuttingSheet.Render(content));

        Assert.Contains("A 439 17.29 439 slab", text, StringComparison.Ordinal);
        Assert.Equal(3 + 4, text.Split("stop: metal").Length - 1);
        Assert.Contains("Scan again", text, StringComparison.Ordinal);
        Assert.Contains("at each stop in the list", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_highest_blade_line_is_drawn_at_its_height()
    {
        // The label of a blade line stands on the line; with A above B by 1.43 in (36 mm) of 22, labels keep that ratio on paper.
        var words = Pdf.Words(CuttingSheet.Render(LogExamples.Quartered)).Where(w => w.Page == 1).ToList();
        double Middle(string text) => words.Where(w => w.Text == text).Select(w => (w.Top + w.Bottom) / 2.0).First();

        var perCut = (Middle("221") - Middle("439")) / 6.0;
        Assert.Equal(perCut, Middle("403") - Middle("439"), 0.5);
        Assert.Equal(perCut, Middle("330") - Middle("367"), 0.5);
    }
}
