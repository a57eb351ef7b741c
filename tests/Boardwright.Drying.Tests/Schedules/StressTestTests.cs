using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Drying.Tests.Schedules;

public class StressTestTests
{
    public static IEnumerable<object[]> Prongs => PublishedTable.Theory("stress", "prongs");

    public static IEnumerable<object[]> Verdicts => PublishedTable.Theory("stress", "verdict");

    public static IEnumerable<object[]> Conditioning => PublishedTable.Theory("stress", "conditioning_h");

    [Theory, MemberData(nameof(Prongs))]
    public void Section_is_cut_as_the_source_says(PublishedRow row) => Assert.Equal(row.ExpectedNumber, StressTest.ProngsFor(Given.Thickness(row.Text("thickness"))));

    [Theory, MemberData(nameof(Verdicts))]
    public void Prongs_are_judged_as_the_source_says(PublishedRow row) =>
        Assert.Equal(row.Expected, StressTest.Judge(Enum.Parse<ProngTurn>(row.Text("turn")), row.Text("settled") == "yes").ToString());

    [Theory, MemberData(nameof(Conditioning))]
    public void Conditioning_is_as_long_as_the_source_says(PublishedRow row)
    {
        var hours = StressTest.UsualConditioning(Given.Thickness(row.Text("thickness"))).Hours;
        var ends = row.Expected.Split('-').Select(end => double.Parse(end, System.Globalization.CultureInfo.InvariantCulture)).ToList();

        Assert.InRange(hours, ends[0] - row.Tolerance, ends[^1] + row.Tolerance);
    }

    [Theory]
    [InlineData(8.0, 3.5, 4.5, ProngTurn.In)]
    [InlineData(8.0, 6.0, 2.0, ProngTurn.SlightlyIn)]
    [InlineData(8.0, 7.5, 0.5, ProngTurn.Straight)]
    [InlineData(8.0, 9.0, -1.0, ProngTurn.Straight)]
    [InlineData(8.0, 10.0, -2.0, ProngTurn.Out)]
    public void Measured_tips_make_the_word(double sawn, double read, double index, ProngTurn turn)
    {
        var found = StressTest.Index(Length.FromMillimetres(100.0), Length.FromMillimetres(sawn), Length.FromMillimetres(read));

        Assert.Equal(index, found, 1e-9);
        Assert.Equal(turn, StressTest.Turn(index));
    }
}
