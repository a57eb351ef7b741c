using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Sawing.Tests.Measure;

public sealed class BoardMeasureTests
{
    private const string Table = "tally";

    public static IEnumerable<object[]> Measures => PublishedTable.Theory(Table, "surface_measure");

    public static IEnumerable<object[]> SecondHalves => PublishedTable.Theory(Table, "surface_measure_alternate_second");

    public static IEnumerable<object[]> Footage => PublishedTable.Theory(Table, "board_feet", "board_feet_under_one_inch");

    public static IEnumerable<object[]> Packs => PublishedTable.Theory(Table, "pack_tally_piecewise");

    public static IEnumerable<object[]> Blocks => PublishedTable.Theory(Table, "block_tally", "bundle_block_tally");

    public static IEnumerable<object[]> Slabs => PublishedTable.Theory(Table, "live_edge_bf");

    [Theory, MemberData(nameof(Measures))]
    public void Surface_measure_agrees(PublishedRow row) => row.Agrees(Board(row).SurfaceMeasure);

    [Theory, MemberData(nameof(SecondHalves))]
    public void Second_half_of_a_tally_goes_the_other_way(PublishedRow row)
    {
        var tally = new SurfaceMeasure();
        tally.Next(row["width_in"], row["length_ft"]);

        row.Agrees(tally.Next(row["width_in"], row["length_ft"]));
    }

    [Theory, MemberData(nameof(Footage))]
    public void Board_feet_agree(PublishedRow row) => row.Agrees(Board(row).BoardFeet.Count);

    [Theory, MemberData(nameof(Packs))]
    public void Pack_agrees(PublishedRow row)
    {
        var boards = row.Text("boards").Split('|').Select(board => board.Split('x')).Select(size =>
            new TalliedBoard(Thickness(row), Expect.Inches(Number(size[0])), Expect.Feet(Number(size[1]))));

        row.Agrees(PackTally.Of(boards, BoardRule.Nhla).BoardFeet.Count);
    }

    [Theory, MemberData(nameof(Blocks))]
    public void Block_tally_agrees(PublishedRow row) => row.Agrees(BlockTally.Of(
        (int)row[row.Has("tiers") ? "tiers" : "layers"], Expect.Inches(row[row.Has("tiers") ? "avg_tier_width_in" : "width_in"]),
        Expect.Feet(row[row.Has("tiers") ? "avg_length_ft" : "length_ft"]), Thickness(row)).Count);

    [Theory, MemberData(nameof(Slabs))]
    public void Slab_with_natural_edges_agrees(PublishedRow row) => row.Agrees(LiveEdgeMeasure.Of(
        [.. row.Text("widths_in").Split('|').Select(width => Expect.Inches(Number(width)))], Expect.Feet(row["length_ft"]), Thickness(row)).Count);

    [Fact]
    public void Tables_would_notice_a_one_percent_error() =>
        Expect.NoticesOnePercent(Table, "surface_measure", "board_feet", "pack_tally_piecewise", "block_tally", "live_edge_bf");

    [Fact]
    public void Exact_measure_rounds_nothing()
    {
        var board = BoardMeasure.Of(Expect.Inches(0.75), Expect.Inches(6.25), Expect.Feet(8.5), BoardRule.Exact);

        Assert.Equal(6.25 * 8.5 / 12, board.SurfaceMeasure, 1e-12);
        Assert.Equal(0.75 * 6.25 * 8.5 / 12, board.BoardFeet.Count, 1e-12);
        Assert.Equal(0.75 * 6.25 * 8.5 / 12 * BoardFeet.CubicMetresNominal, board.Volume.CubicMetres, 1e-12);
    }

    [Fact]
    public void A_half_survives_the_way_through_millimetres() =>
        Assert.Equal(6, BoardMeasure.Of(Expect.Inches(1), Length.FromMillimetres(5.5 * 25.4), Length.FromMetres(12 * 0.3048), BoardRule.Nhla).SurfaceMeasure);

    // Each board is within half a foot of exact, and exact halves cancel in pairs.
    [Fact]
    public void Tally_stays_within_half_a_foot_a_board_of_exact() => Gen.Select(Gen.Int[12, 60], Gen.Int[4, 16]).Array[1, 40].Always(
        sizes =>
        {
            var boards = sizes.Select(size => new TalliedBoard(NominalThickness.FromQuarters(4), Expect.Inches(size.Item1 / 4.0), Expect.Feet(size.Item2))).ToList();
            var halves = sizes.Count(size => size.Item1 * size.Item2 % 48 == 24);

            var off = PackTally.Of(boards, BoardRule.Nhla).BoardFeet.Count - PackTally.Of(boards, BoardRule.Exact).BoardFeet.Count;

            Assert.InRange(off, -0.5 * (sizes.Length - halves) - 1e-9, 0.5 * (sizes.Length - halves) + (halves % 2 * 0.5) + 1e-9);
        });

    private static MeasuredBoard Board(PublishedRow row) => row.Has("sm")
        ? BoardMeasure.Of(Thickness(row).Length, Expect.Inches(12), Expect.Feet(row["sm"]), BoardRule.Nhla)
        : BoardMeasure.Of((row.Has("thickness_quarters") ? Thickness(row) : NominalThickness.FromQuarters(4)).Length, Expect.Inches(row["width_in"]), Expect.Feet(row["length_ft"]), BoardRule.Nhla);

    private static NominalThickness Thickness(PublishedRow row) => NominalThickness.FromQuarters((int)row["thickness_quarters"]);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
