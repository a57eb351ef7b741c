using Boardwright.Documents.Packs;
using Boardwright.Documents.Setting;

namespace Boardwright.Documents.Tests;

public class PackTagTests
{
    private static readonly Lazy<string> Usual = new(() => Pdf.Text(PackTag.Render(Examples.Tag)));

    [Theory]
    [InlineData("P-118")]
    [InlineData("4/4 black cherry")]
    [InlineData("No. 1 Common and better")]
    [InlineData("surface measure, board by board")]
    [InlineData("6.4 to 7.8 %")]
    [InlineData("kiln charge D-41")]
    [InlineData("Order O-301")]
    [InlineData("Brindle Toad Cabinet Shop")]
    [InlineData("12 Nov 2026")]
    [InlineData("Net footage: the wood as measured now. Nothing is added for shrinkage in drying.")]
    public void Tag_says(string phrase) => Assert.Contains(phrase, Usual.Value, StringComparison.Ordinal);

    [Theory]
    [InlineData("36", "pieces")]
    [InlineData("218", "bf")]
    [InlineData("0.514", "m³")]
    [InlineData("285", "kg")]
    public void A_figure_has_its_unit_beside_it(string figure, string unit)
    {
        var words = Pdf.Words(PackTag.Render(Examples.Tag));
        var number = Assert.Single(words, w => w.Text == figure);

        Assert.Contains(words, w => w.Text == unit && w.Left - number.Right is > 0.0 and < 8.0 && w.Top > number.Top && w.Bottom < number.Bottom);
    }

    [Theory]
    [InlineData(HeatTreatment.Yes, "yes")]
    [InlineData(HeatTreatment.No, "no")]
    [InlineData(HeatTreatment.Unproven, "unproven ?")]
    public void Heat_treatment_is_a_word(HeatTreatment treatment, string word)
    {
        var words = Pdf.Words(PackTag.Render(Examples.Tag with { HeatTreatment = treatment, HeatTreatmentProof = null })).Select(w => w.Text).ToList();

        Assert.All(word.Split(' '), part => Assert.Contains(part, words));
        Assert.Equal(treatment == HeatTreatment.Yes, words.Contains("yes"));
    }

    [Theory, InlineData(true), InlineData(false)]
    public void Pack_wetter_than_ordered_says_so_white_on_black_and_how_it_was_read_in_full(bool isA5)
    {
        var paper = isA5 ? Paper.A5 : Paper.HalfLetter;
        var text = Pdf.Text(PackTag.Render(Examples.WetTag, paper));

        Assert.All(["wetter than ordered: 6 to 8 %", "mean and two", "deviations"], words => Assert.Contains(words, text, StringComparison.Ordinal));
        Assert.DoesNotContain("…", text, StringComparison.Ordinal);
        Assert.True(Black(Examples.WetTag, paper) > Black(Examples.WetTag with { IsWetter = false }, paper) + 2000);   // a block of 60 by 5 mm at 100 dots an inch holds 4,600

        static int Black(PackTagContent content, Paper paper) => Pdf.Draw(PackTag.Render(content, paper), 1, 100).Rgb.Chunk(3).Count(dot => dot[0] <= 60);
    }

    [Fact]
    public void A_gross_tag_does_not_claim_net_footage()
    {
        var text = Pdf.Text(PackTag.Render(Examples.BareTag, Paper.A5));

        Assert.Contains("gross", text, StringComparison.Ordinal);
        Assert.Contains("Gross footage: measured before drying.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("net", text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Customer's own wood", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_measured_is_left_to_the_pencil()
    {
        var text = Pdf.Text(PackTag.Render(Examples.BareTag, Paper.A5));

        Assert.Contains("not weighed", text, StringComparison.Ordinal);
        Assert.Contains("not measured", text, StringComparison.Ordinal);
        Assert.DoesNotContain("0.0 %", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_full_sheet_carries_two_tags() =>
        Assert.Equal(2, Pdf.Words(PackTag.Render(Examples.BareTag, Paper.A4)).Count(w => w.Text == "P-131"));

    [Theory]
    [InlineData("a5")]
    [InlineData("half-letter")]
    public void A_half_sheet_carries_one_on_one_page(string paper)
    {
        var pdf = PackTag.Render(Examples.Tag, Paper.Find(paper));

        Assert.Single(Pdf.Pages(pdf));
        Assert.Single(Pdf.Words(pdf), w => w.Text == "P-118");
    }

    [Fact]
    public void The_code_on_paper_is_the_code_of_its_text()
    {
        var raster = Pdf.Draw(PackTag.Render(Examples.Tag), 1, 300);
        var modules = QrMark.Modules(Examples.Tag.CodeText);

        // The code is 44 mm wide, 5 mm below the top and 8 mm from the right edge of an A5 sheet lying down.
        const double dotsPerMm = 300.0 / 25.4;
        var pitch = 44.0 / modules.Count * dotsPerMm;
        var (left, top) = ((210.0 - 8.0 - 44.0) * dotsPerMm, 5.0 * dotsPerMm);
        for (var row = 0; row < modules.Count; row++)
        {
            for (var column = 0; column < modules.Count; column++)
                Assert.Equal(modules[row][column], raster.At((int)(left + ((column + 0.5) * pitch)), (int)(top + ((row + 0.5) * pitch))).Red < 128);
        }
    }

    [Fact]
    public void A_bar_code_reader_reads_the_code()
    {
        var read = Pdf.ScanCode(PackTag.Render(Examples.Tag));
        Assert.SkipWhen(read is null, "zbarimg is not installed (apt-get install zbar-tools); the modules were compared dot by dot instead.");

        Assert.Equal(Examples.Tag.CodeText, read);
    }
}
