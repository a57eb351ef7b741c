using Boardwright.Documents.Weeks;

namespace Boardwright.Documents.Tests;

public class WeekSheetTests
{
    [Fact]
    public void Week_is_told_by_day_and_other_weeks_are_left_out()
    {
        var words = Pdf.Words(WeekSheet.Render(WeekExamples.Week)).Select(word => word.Text).ToList();

        Assert.Contains("Week", words);
        Assert.Contains("08:00", words);
        Assert.Contains("07:30", words);
        Assert.DoesNotContain("next", words);
        Assert.Equal(["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"], words.Where(word => word is "Mon" or "Tue" or "Wed" or "Thu" or "Fri" or "Sat" or "Sun"));
    }

    [Fact]
    public void Nothing_of_a_long_line_is_cut()
    {
        var pdf = WeekSheet.Render(WeekExamples.Full with { Yard = WeekExamples.Week.Yard });

        var words = Pdf.Words(pdf).Select(word => word.Text).ToList();
        Assert.DoesNotContain(words, word => word.Contains('…', StringComparison.Ordinal));
        Assert.Equal(40, words.Count(word => word == "3,150"));
    }
}
