using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;
using static Boardwright.Sawing.Tests.Grading.SomeBoards;

namespace Boardwright.Sawing.Tests.Grading;

public sealed class BoardGradeTests
{
    private const string Table = "grading";

    public static IEnumerable<object[]> Rules => PublishedTable.Theory(Table, "cutting_units_required", "cuttings_allowed", "cutting_units_required_with_extra_cutting", "extra_cutting_allowed");

    [Theory, MemberData(nameof(Rules))]
    public void What_a_grade_asks_agrees_with_the_published_chart(PublishedRow row)
    {
        var sm = (int)row["sm"];
        var rule = GradeRule.PoorFace.Single(one => one.Grade.Brief() == row.Text("grade"));
        var ways = rule.Yields(sm, Expect.Inches(6.0)).Where(way => way.Way == CuttingWay.Rectangles).ToList();

        if (row.Quantity == "extra_cutting_allowed")
        {
            Assert.Equal(bool.Parse(row.Expected), ways.Count > 1);
            return;
        }

        row.Agrees(row.Quantity switch
        {
            "cuttings_allowed" => ways[0].Cuttings!.Value,
            "cutting_units_required" => ways[0].Required(sm),
            _ => ways[1].Required(sm),
        });
    }

    [Fact]
    public void Chart_would_notice_a_one_percent_error() => Expect.NoticesOnePercent(Table, "cutting_units_required", "cutting_units_of_cutting");

    // GRD-32: 5-1/2 in by 6-1/2 ft, NHLA paragraph 37.
    [Fact]
    public void Units_of_a_cutting_keep_fractions() =>
        PublishedTable.Rows(Table).Single(row => row.Id == "GRD-32").Agrees(new Sawing.Cutting(default, default, Expect.Feet(6.5), Expect.Inches(5.5)).Units);

    // GRD-34, GRD-35: 8 in by 8 ft with a 5 in knot a foot from one end yields enough for FAS in one cutting, and the knot forbids it.
    [Fact]
    public void A_board_that_yields_FAS_is_held_back_by_its_knot()
    {
        var graded = Graded(Of(8.0, 8.0, Defect(DefectKind.Knot, 12.0, 1.5, 5.0, 5.0)));

        var fas = graded.Trials[0];
        Assert.Equal(52.667, fas.Yield!.Units, 1e-3);
        Assert.True(fas.Yield.IsMet && !fas.IsMade);
        Assert.Contains("5 in mean diameter (1.67 in", Assert.Single(fas.Faults), StringComparison.Ordinal);
        Assert.Equal(LumberGrade.FasOneFace, Graded(Of(8.0, 8.0, Defect(DefectKind.Knot, 12.0, 1.5, 5.0, 5.0))).Grade);
        Assert.Equal(LumberGrade.No1Common, Graded(Of(8.0, 8.0, [Defect(DefectKind.Knot, 12.0, 1.5, 5.0, 5.0)], [Defect(DefectKind.Knot, 12.0, 1.5, 5.0, 5.0)])).Grade);
    }

    // The published example board: 6-7/16 in by 10 ft 9 in, SM 5. Its drawing is not printed with sizes; the knot is ours.
    [Fact]
    public void The_example_board_is_No_1_Common_in_two_cuttings()
    {
        var knot = Defect(DefectKind.Knot, 60.0, 2.0, 3.0, 3.0);

        var graded = Graded(Of(6.4375, 10.75, [knot], [knot]));

        Assert.Equal((5, LumberGrade.No1Common), (graded.SurfaceMeasure, graded.Grade));
        Assert.Equal((2, 40.0), (graded.Deciding.Yield!.Way.Cuttings!.Value, graded.Deciding.Yield.RequiredUnits));
        // By hand: 60 in and 66 in of full width.
        Assert.Equal(6.4375 * (60.0 + 66.0) / 12.0, graded.Deciding.Yield.Units, 1e-9);
    }

    [Theory]
    [InlineData(8.0, 8.0, "FAS")]
    [InlineData(6.0, 8.0, "FAS")]
    [InlineData(5.75, 8.0, "Selects")]
    [InlineData(5.75, 6.0, "Selects")]
    [InlineData(3.5, 8.0, "1C")]
    [InlineData(3.0, 4.0, "1C")]
    [InlineData(3.0, 3.9, "below grade")]
    [InlineData(2.75, 8.0, "below grade")]
    public void A_clear_board_makes_the_best_grade_its_size_allows(double widthIn, double lengthFt, string grade) => Assert.Equal(grade, Graded(Of(widthIn, lengthFt)).Grade.Brief());

    [Fact]
    public void Kiln_dried_boards_may_be_a_quarter_scant_in_width() => Assert.Equal(LumberGrade.Fas, Graded(Of(5.75, 8.0) with { KilnDried = true }).Grade);

    // Rot behind a clear face: the cutting is not sound on its reverse, so FAS one face and no more.
    [Fact]
    public void Unsound_reverse_of_the_cuttings_keeps_a_board_from_FAS()
    {
        BoardDefect[] rot = [Defect(DefectKind.Rot, 20.0, 0.0, 6.0, 3.0), Defect(DefectKind.Rot, 60.0, 0.0, 6.0, 3.0)];

        Assert.Equal(LumberGrade.FasOneFace, Graded(Of(8.0, 10.0, [], rot)).Grade);
    }

    [Fact]
    public void A_sound_knot_counts_in_2A_and_not_in_2B()
    {
        var knots = Enumerable.Range(0, 6).Select(i => Defect(DefectKind.Knot, 8.0 + (16.0 * i), 1.0, 2.0, 2.0)).ToArray();

        Assert.Equal(LumberGrade.No2BCommon, Graded(Of(4.0, 8.0, knots, knots)).Grade);
    }

    [Fact]
    public void Full_width_rule_takes_two_cuttings_of_any_length()
    {
        var check = Defect(DefectKind.Knot, 24.0, 3.0, 1.0, 1.0);
        var graded = Graded(Of(6.0, 12.0, [check], [check]));

        // SM 6: one cutting of 119 in x 6 in is 59.5, short of 60; 11 x 6 = 66 in two, of which one is under 60 in; 69.84 in two of full width, 24 and 119 in: 71.5.
        Assert.Equal(LumberGrade.Fas, graded.Grade);
        Assert.Equal(CuttingWay.FullWidth, graded.Deciding.Yield!.Way.Way);
        Assert.Equal(71.5, graded.Deciding.Yield.Units, 1e-9);
    }

    [Fact]
    public void Long_wane_pith_splits_and_a_bad_first_foot_are_named()
    {
        BoardDefect[] bad = [Defect(DefectKind.Wane, 0.0, 0.0, 60.0, 0.25), Defect(DefectKind.Pith, 80.0, 4.0, 9.0, 0.25), Defect(DefectKind.Split, 0.0, 4.0, 20.0, 0.1), Defect(DefectKind.Rot, 100.0, 4.0, 8.0, 6.0)];

        var faults = Graded(Of(10.0, 9.0, bad, [])).Trials[0].Faults;

        foreach (var word in new[] { "wane on the lower edge", "of pith", "splits of", "first foot at the right end" })
            Assert.Contains(faults, fault => fault.Contains(word, StringComparison.Ordinal));
    }

    [Fact]
    public void Another_defect_never_raises_grade_or_units() => Gen.Select(Any, Gen.Int[0, 90], Gen.Int[0, 10]).Always(
        (board, x, y) =>
        {
            var worse = board with { First = new("a", [.. board.First.Defects, Spot(board, x, y)]) };

            var (before, after) = (Graded(board), Graded(worse));
            Assert.True(after.Grade >= before.Grade, $"{before.Grade} -> {after.Grade}");
            foreach (var (was, now) in before.Trials.Zip(after.Trials).Where(pair => pair.First.Yield is { IsProven: true } && pair.Second.Face == pair.First.Face && pair.Second.Yield!.Way == pair.First.Yield.Way))
                Assert.True(now.Yield!.Units <= was.Yield!.Units + 1e-9);
        },
        draws: 150);

    [Fact]
    public void Turned_and_mirrored_boards_have_the_same_grade_and_units() => Any.Always(
        board =>
        {
            var graded = Graded(board);
            foreach (var other in new[] { Mirrored(board, ends: true), Mirrored(board, ends: false), board with { First = board.Second, Second = board.First } })
            {
                var again = Graded(other);
                Assert.Equal(graded.Grade, again.Grade);
                Assert.Equal(graded.Deciding.Yield?.Units ?? 0.0, again.Deciding.Yield?.Units ?? 0.0, 1e-6);
            }
        },
        draws: 60);

    [Fact]
    public void Cuttings_of_a_grade_are_clear_apart_and_as_many_as_allowed() => Any.Always(
        board =>
        {
            var graded = Graded(board);
            if (graded.Deciding is not { IsMade: true, Yield: { } found } || found.Way.Cuttings is null)
                return;

            Assert.True(found.Cuttings.Count <= found.Way.Cuttings);
            Assert.Equal(found.Units, found.Cuttings.Sum(cutting => cutting.Units), 1e-6);
            Assert.True(found.Units >= found.RequiredUnits - 1e-6);
        },
        draws: 150);

    [Fact]
    public void A_trim_that_drops_the_bad_end_raises_the_grade()
    {
        var rot = Defect(DefectKind.Rot, 0.0, 0.0, 10.0, 8.0);
        var graded = Graded(Of(8.0, 9.0, [rot], [rot]));

        var cut = BoardRemaking.Better(graded, null, BoardRemaking.UsualKerf, 3)[0];

        Assert.NotEqual(LumberGrade.Fas, graded.Grade);
        Assert.Equal((BoardCutKind.TrimLeft, LumberGrade.Fas), (cut.Cut, cut.Best));
        Assert.Equal(10.0, cut.At.Inches, 1e-9);
    }

    [Fact]
    public void A_cut_that_pays_holds_a_better_grade_and_no_more_wood() => Any.Always(
        board =>
        {
            var graded = Graded(board);
            double Price(GradedBoard part, LumberGrade grade) => 3.0 - (0.3 * (int)grade);

            var cuts = BoardRemaking.Better(graded, Price, BoardRemaking.UsualKerf, 100);

            // Every part is graded by itself, so the value can be reckoned again; wood is never gained.
            Assert.All(cuts, cut => Assert.True(cut.Boards.Sum(part => part.Board.Width.Metres * part.Board.Length.Metres) < board.Width.Metres * board.Length.Metres));
            Assert.All(cuts.Zip(cuts.Skip(1)), pair => Assert.True(pair.First.Value >= pair.Second.Value));
            Assert.All(cuts, cut => Assert.True(cut.Boards.Any(part => part.Grade < graded.Grade), "only a better grade pays for a cut"));
        },
        draws: 6);

    [Fact]
    public void A_defect_off_the_board_and_wane_off_the_edge_are_refused()
    {
        var outcome = BoardGrade.Of(Of(8.0, 8.0, Defect(DefectKind.Knot, 95.0, 1.0, 2.0, 1.0), Defect(DefectKind.Wane, 10.0, 2.0, 5.0, 1.0)));

        var reasons = Assert.IsType<Outcome<BoardGrade>.Refused>(outcome).Reasons;
        Assert.Equal(["face a, defect 1", "face a, defect 2"], reasons.Select(reason => reason.What));
    }

    private static BoardDefect Spot(GradedBoard board, int x, int y) => Defect(DefectKind.Hole, x / 100.0 * (board.Length.Inches - 2.0), y / 20.0 * board.Width.Inches, 2.0, Math.Min(1.0, board.Width.Inches / 2.0));

    private static GradedBoard Mirrored(GradedBoard board, bool ends)
    {
        BoardFace Turn(BoardFace face) => new(face.Name, [.. face.Defects.Select(defect => ends
            ? defect with { FromLeft = Length.FromMetres(Math.Max(0.0, board.Length.Metres - defect.FromLeft.Metres - defect.Length.Metres)) }
            : defect with { FromEdge = Length.FromMetres(Math.Max(0.0, board.Width.Metres - defect.FromEdge.Metres - defect.Width.Metres)) })]);

        return board with { First = Turn(board.First), Second = Turn(board.Second) };
    }
}
