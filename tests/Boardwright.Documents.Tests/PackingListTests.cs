using Boardwright.Documents.Packs;
using Boardwright.Quantities;

namespace Boardwright.Documents.Tests;

public class PackingListTests
{
    private static readonly Lazy<string> Usual = new(() => Pdf.Text(PackingList.Render(PackExamples.List)));

    [Theory]
    [InlineData("Packing list O-301")]
    [InlineData("Deliver to: Old creamery, back door, Ollenwhin")]
    [InlineData("Promised for 13 Nov 2026")]
    [InlineData("Piece tally P-118: 4/4 black cherry")]
    [InlineData("Total 36 218 218")]
    [InlineData("218 bf by surface measure, board by board; 217.92 bf without rounding; 0.514 m³ nominal size")]
    [InlineData("Tallied by Bram, 12 Nov 2026")]
    [InlineData("Received by, day")]
    public void List_says(string phrase) => Assert.Contains(phrase, Usual.Value, StringComparison.Ordinal);

    [Fact]
    public void Every_board_is_on_it()
    {
        var text = Pdf.Text(PackingList.Render(PackExamples.List with { Packs = [PackExamples.Many(200)] }));

        foreach (var board in PackExamples.Many(200).Boards)
            Assert.Contains($" {board.Number} {board.Width.Inches:0.00} {board.Length.Feet:0} {board.SurfaceMeasure} ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Heads_are_repeated_and_pages_numbered()
    {
        var words = Pdf.Words(PackingList.Render(PackExamples.List with { Packs = [PackExamples.Many(200)] }));

        var tallyPages = words.Where(w => w.Text == "Check").Select(w => w.Page).Distinct().Order().ToList();
        Assert.Equal([2, 3, 4], tallyPages);
        var last = words.Max(w => w.Page);
        Assert.All(Enumerable.Range(1, last), page => Assert.Contains(words, w => w.Page == page && w.Text == last.ToString(System.Globalization.CultureInfo.InvariantCulture) && w.Top > 780));
    }

    [Fact]
    public void A_long_grade_is_printed_whole()
    {
        const string grade = "No. 1 Common and better, one face clear, sap no defect, under the rules of 2026 as the customer asks for them";
        var text = Pdf.Text(PackingList.Render(PackExamples.List with { Packs = [PackExamples.Tally with { Grade = grade }] }));
        var list = text[..text.IndexOf("Piece tally", StringComparison.Ordinal)];

        Assert.DoesNotContain("…", list, StringComparison.Ordinal);
        Assert.All(grade.Split(' '), word => Assert.Contains(word, list, StringComparison.Ordinal));
    }

    [Fact]
    public void A_missing_weight_leaves_the_sum_blank()
    {
        var text = Pdf.Text(PackingList.Render(PackExamples.List));

        Assert.Contains("Total 3 packs 103 613 1.447 Net", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Metric_packs_are_in_millimetres_and_metres_with_their_grades()
    {
        var text = Pdf.Text(PackingList.Render(PackExamples.List with { Packs = [PackExamples.Metric] }));

        Assert.Contains(" 3 141 2.40 0.0091 FAS ", text, StringComparison.Ordinal);
        Assert.Contains("2.40 13 0.137", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_does_not_add_up_is_not_printed()
    {
        var wrong = PackExamples.Tally with { ByLength = [new(Length.FromFeet(8), 36, 217, BoardFeet.From(217))] };

        var error = Assert.Throws<ArgumentException>(() => PackingList.Render(PackExamples.List with { Packs = [wrong] }));
        Assert.Contains("217", error.Message, StringComparison.Ordinal);
    }
}
