using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Sawing.Tests.Measure;

/// <summary>Pack P-118 tallied twice, and what comparing two tallies must do in general.</summary>
public sealed class TallyComparisonTests
{
    public static IEnumerable<object[]> P118 => PublishedTable.Theory("tally-p118", "surface_measure");

    [Fact]
    public void Two_tallies_of_P118_come_to_the_expected_sums()
    {
        Assert.Equal(36, Bram().Count);
        Assert.Equal(35, Pell().Count);
        Assert.Equal(218, PackTally.Of(Bram(), BoardRule.Nhla).BoardFeet.Count);
        Assert.Equal(214, PackTally.Of(Pell(), BoardRule.Nhla).BoardFeet.Count);
        Assert.Equal(217.92, PackTally.Of(Bram(), BoardRule.Exact).BoardFeet.Count, 0.005);
        Assert.Equal(213.25, PackTally.Of(Pell(), BoardRule.Exact).BoardFeet.Count, 0.005);
    }

    [Fact]
    public void Each_board_of_P118_has_the_listed_surface_measure()
    {
        var listed = PublishedTable.Rows("tally-p118").Select(row => row.ExpectedNumber);

        Assert.Equal(listed, PackTally.Of(Bram(), BoardRule.Nhla).Boards.Select(one => one.Measure.SurfaceMeasure));
    }

    [Fact]
    public void Comparison_of_P118_finds_boards_9_14_and_30()
    {
        var differences = TallyComparison.Of(Bram(), Pell());

        Assert.Equal([9, 14, 30], differences.Select(one => one.FirstNumber!.Value));
        Assert.Equal([9, 14, null], differences.Select(one => one.SecondNumber));
        Assert.Equal(10, differences[0].Second!.Length.Feet, 1e-9);
        Assert.Equal(10, differences[1].Second!.Width.Inches, 1e-9);
    }

    [Fact]
    public void A_tally_agrees_with_itself() => Assert.Empty(TallyComparison.Of(Bram(), Bram()));

    [Fact]
    public void Comparison_from_the_other_side_finds_the_same_boards() =>
        Assert.Equal([9, 14, 30], TallyComparison.Of(Pell(), Bram()).Select(one => one.SecondNumber!.Value));

    // Boards all different, so that which one is missing is certain.
    [Fact]
    public void Any_boards_left_out_are_named() => Gen.Int[0, 35].HashSet[0, 6].Always(
        missing =>
        {
            var all = Enumerable.Range(0, 36).Select(index => Board(4 + index * 0.25, 8 + index % 5)).ToList();

            var differences = TallyComparison.Of(all, [.. all.Where((_, index) => !missing.Contains(index))]);

            Assert.Equal(missing.Order().Select(index => index + 1), differences.Select(one => one.FirstNumber!.Value));
            Assert.All(differences, one => Assert.Null(one.SecondNumber));
        });

    private static List<TalliedBoard> Bram() => [.. PublishedTable.Rows("tally-p118").Select(row => Board(row["width_in"], row["length_ft"]))];

    // Board 30 missed, board 9 read as 10 ft, board 14 read as 10 in wide.
    private static List<TalliedBoard> Pell()
    {
        var boards = Bram();
        boards[8] = boards[8] with { Length = Expect.Feet(10) };
        boards[13] = boards[13] with { Width = Expect.Inches(10) };
        boards.RemoveAt(29);
        return boards;
    }

    private static TalliedBoard Board(double widthIn, double lengthFt) => new(NominalThickness.FromQuarters(4), Expect.Inches(widthIn), Expect.Feet(lengthFt));
}
