using Boardwright.Documents.Kilns;

namespace Boardwright.Documents.Tests;

public class KilnRunSheetTests
{
    private static readonly Lazy<string> Usual = new(() => Pdf.Text(KilnRunSheet.Render(KilnExamples.Oak)));

    [Theory]
    [InlineData("Kiln run sheet K1, charge C-61")]
    [InlineData("day 13")]
    [InlineData("140 / 108")]
    [InlineData("60.0 / 42.2 °C")]
    [InlineData("150 / 112")]
    [InlineData("65.6 / 44.4 °C")]
    [InlineData("Safe loss 3.8 % a day")]
    [InlineData("Last measured: 1.2 % a day.")]
    [InlineData("Schedule T4-D2")]
    [InlineData("5 25 120 90 49 32 30 31 5.6")]
    [InlineData("set 8 to the end 180 130")]
    [InlineData("Fans off and locked out")]
    [InlineData("local rules decide")]
    [InlineData("Equalize at EMC 5.0 %")]
    public void Sheet_says(string phrase) => Assert.Contains(phrase, Usual.Value, StringComparison.Ordinal);

    [Fact]
    public void Samples_show_weight_and_moisture_and_leave_a_gap_a_gap()
    {
        var text = Pdf.Text(KilnRunSheet.Render(KilnExamples.Oak));

        Assert.Contains("3,358", text, StringComparison.Ordinal);
        Assert.Contains("16.5 %", text, StringComparison.Ordinal);
        Assert.DoesNotContain("3,111", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_vacuum_kiln_has_its_own_setting_and_cautions()
    {
        var text = Pdf.Text(KilnRunSheet.Render(KilnExamples.Slabs));

        Assert.Contains("140 / 75", text, StringComparison.Ordinal);
        Assert.Contains("wood temperature / vessel pressure", text, StringComparison.Ordinal);
        Assert.Contains("confined space", text, StringComparison.Ordinal);
        Assert.Contains("No change is due.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("wet bulb", text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void The_log_to_write_in_fills_the_second_sheet()
    {
        var pdf = KilnRunSheet.Render(KilnExamples.Oak);

        Assert.Equal(2, Pdf.Pages(pdf).Count);
        Assert.Contains(Pdf.Words(pdf), w => w is { Page: 2, Text: "Vents" });
    }

    [Fact]
    public void A_sample_with_too_few_weighings_is_refused() =>
        Assert.Throws<ArgumentException>(() => KilnRunSheet.Render(KilnExamples.Oak with { WeighingDays = [new(2026, 10, 21)] }));
}
