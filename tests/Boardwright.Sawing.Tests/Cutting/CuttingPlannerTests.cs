using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Sawing.Tests.Cutting;

public class CuttingPlannerTests
{
    private static readonly SawingRules Few = new() { GridStep = Length.FromInches(0.25), Kerf = Length.FromInches(0.25), Settings = [SomeLogs.Setting(4, 1.0), SomeLogs.Setting(8, 2.0)], LengthStep = Length.FromFeet(2), CutsAcross = true };

    private static readonly LogShape Leaning = Expect.Done(LogShape.Measured([SomeLogs.Section(0, 7, 6.4, 0, 0), SomeLogs.Section(3, 7.2, 6.6, 9, -7), SomeLogs.Section(6, 7.6, 7.2, -3, 4)]));

    public static TheoryData<string, LogShape> Logs { get; } = new()
    {
        { "straight", SomeLogs.Straight(16, 18, 8.4) },
        { "large", SomeLogs.Straight(30, 34, 12.6) },
        { "thin", SomeLogs.Straight(6, 7, 8.3) },
        { "swept", SomeLogs.Straight(14, 15, 12.5, sweepIn: 3) },
        { "rotten heart", SomeLogs.Straight(17, 20, 12.5, rotIn: 5) },
        { "swept and rotten", SomeLogs.Straight(15, 17, 8.4, sweepIn: 2, rotIn: 3) },
        { "oval", SomeLogs.Oval },
    };

    public static IEnumerable<object[]> Published => PublishedTable.Theory("sawing-plan");

    [Theory, MemberData(nameof(Logs))]
    public void Every_pattern_of_every_log_passes_the_independent_check(string name, LogShape log)
    {
        foreach (var pattern in SomeLogs.Patterns)
        {
            foreach (var prices in new[] { SomeLogs.Prices, SomeLogs.GrainPrices })
            {
                var plan = SomeLogs.Plan(log, pattern, prices: prices);
                Assert.True(plan.Boards.Count > 0, name);
                Assert.Empty(PlanCheck.Faults(log, SomeLogs.Rules, plan));
            }
        }
    }

    [Fact]
    public void The_best_pattern_is_the_dearest_of_the_three()
    {
        foreach (var log in new[] { SomeLogs.Straight(16, 18, 8.4), SomeLogs.Straight(17, 20, 12.5, rotIn: 5) })
            Assert.Equal(SomeLogs.Patterns.Max(pattern => SomeLogs.Plan(log, pattern).ValueMoney), Expect.Done(CuttingPlanner.Plan(log, SomeLogs.Rules, SomeLogs.Prices)).ValueMoney, 9);
    }

    [Fact]
    public void The_usual_fine_grid_passes_the_check_too()
    {
        var log = SomeLogs.Straight(13, 15, 8.4);
        foreach (var pattern in SomeLogs.Patterns)
            Assert.Empty(PlanCheck.Faults(log, new SawingRules(), SomeLogs.Plan(log, pattern, new SawingRules())));
    }

    [Fact]
    public void Live_sawing_equals_every_sequence_tried_by_recursion()
    {
        foreach (var (log, name) in new[] { (SomeLogs.Straight(7, 8.2, 8.3), "tapered"), (SomeLogs.Straight(8, 8, 6), "cylinder"), (SomeLogs.Straight(6.5, 7.5, 8), "short") })
        {
            var plain = new PlainSawing(log, Few, SomeLogs.Prices, 6.35);
            var best = plain.Best();
            Assert.True(plain.Tried > 1000, name);
            Assert.Equal(best, SomeLogs.Plan(log, SawPattern.Live, Few).ValueMoney, 9);
        }
    }

    [Theory, InlineData(0), InlineData(1)]
    public void Live_sawing_of_a_leaning_log_equals_recursion_in_its_own_turn(int quarters)
    {
        var plain = new PlainSawing(PlainSawing.Turned(Leaning, quarters), Few, SomeLogs.Prices, 6.35);

        Assert.Equal(plain.Best(), SomeLogs.Plan(Leaning, SawPattern.Live, Few with { Turn = Angle.FromDegrees(90 * quarters) }).ValueMoney, 9);
    }

    [Theory, InlineData(0), InlineData(1)]
    public void A_cant_equals_every_cant_tried_by_recursion(int quarters)
    {
        var (log, rules) = (PlainSawing.Turned(Leaning, quarters), Few with { FaceStep = Length.FromInches(1), CantStep = Length.FromInches(2), Turn = Angle.FromDegrees(90 * quarters) });
        var (above, below) = (new PlainSawing(log, rules, SomeLogs.Prices, 6.35), new PlainSawing(PlainSawing.Turned(log, 2), rules, SomeLogs.Prices, 6.35));
        var best = 0.0;
        for (var sizeIn = 4; sizeIn < 8; sizeIn += 2)
        {
            for (var bottom = above.Lowest; bottom + (25.4 * sizeIn) + 6.35 <= above.Highest + 6.35; bottom += 25.4)
            {
                var top = bottom + (25.4 * sizeIn);
                var across = Across(log, rules, quarters, bottom, top);
                if (across.Best() is > 0.0 and var cant)
                    best = Math.Max(best, cant + above.From(top + 6.35, isFresh: true) + below.From(6.35 - bottom, isFresh: true));
            }
        }

        Assert.Equal(best, SomeLogs.Plan(Leaning, SawPattern.Cant, rules).ValueMoney, 9);
    }

    [Theory, InlineData(0), InlineData(1)]
    public void Quarter_sawing_equals_every_block_tried_by_recursion(int quarters)
    {
        var (log, rules) = (PlainSawing.Turned(Leaning, quarters), Few with { FaceStep = Length.FromInches(1), Turn = Angle.FromDegrees(90 * quarters) });
        var flat = new PlainSawing(log, rules, SomeLogs.Prices, 6.35) { HeartMm = rules.HeartOut.Millimetres / 2.0 };
        double Above(double height) => Across(log, rules, quarters, flat.Lowest + (Math.Ceiling(((height - flat.Lowest) / 25.4) - 1e-6) * 25.4), double.PositiveInfinity).Best();

        var best = 0.0;
        for (var face = flat.Lowest; face <= flat.Highest; face += 25.4)
            best = Math.Max(best, Across(log, rules, quarters, double.NegativeInfinity, face - 6.35).Best() + flat.Block(face, true, Above));

        Assert.Equal(best, SomeLogs.Plan(Leaning, SawPattern.Quarter, rules).ValueMoney, 9);
    }

    // A log that is turned a quarter already is turned back: the heights tried count from what lies lowest.
    private static PlainSawing Across(LogShape log, SawingRules rules, int quarters, double low, double high) => quarters == 0
        ? new(PlainSawing.Turned(log, 1), rules, SomeLogs.Prices, 6.35) { Clip = (low, high) }
        : new(PlainSawing.Turned(log, 3), rules, SomeLogs.Prices, 6.35) { Clip = (-high, -low) };

    [Theory, MemberData(nameof(Published))]
    public void Live_sawing_agrees_with_the_table(PublishedRow row)
    {
        var (thicknesses, prices) = (Numbers(row.Text("thicknesses")), Numbers(row.Text("prices")));
        var rules = new SawingRules
        {
            Kerf = Length.FromInches(row["kerf_in"]),
            WidthStep = Length.FromInches(0.001),
            GridStep = Length.FromInches(row["grid_in"]),
            Settings = [.. thicknesses.Select((inches, i) => SomeLogs.Setting(4 * (i + 1), inches))],
        };
        var log = SomeLogs.Straight(row["dib_in"], row["dib_in"], row["length_ft"]);

        row.Agrees(SomeLogs.Plan(log, SawPattern.Live, rules, [.. prices.Select((money, i) => SomeLogs.Price(4 * (i + 1), "", row["min_width_in"], 8, money))]).ValueMoney);
    }

    [Fact]
    public void The_table_would_notice_a_one_percent_error() => Expect.NoticesOnePercent("sawing-plan", "best_opening_face_bf", "live_sawing_dp_value");

    [Fact]
    public void A_thicker_kerf_is_never_worth_more()
    {
        double Value(double kerfIn) => SomeLogs.Plan(
            SomeLogs.Straight(15, 17, 8.4), SawPattern.Live,
            new SawingRules { Kerf = Length.FromInches(kerfIn), GridStep = Length.FromInches(1.0 / 32.0), WidthStep = Length.FromInches(0.01) }).ValueMoney;

        double[] values = [Value(1.0 / 32), Value(2.0 / 32), Value(3.0 / 32), Value(4.0 / 32), Value(8.0 / 32), Value(12.0 / 32)];

        Assert.Equal(values.OrderDescending(), values);
        Assert.True(values[0] > values[^1] * 1.1);
    }

    [Fact]
    public void Value_settles_as_the_grid_is_refined_by_halves()
    {
        double Value(double grid) => SomeLogs.Plan(SomeLogs.Straight(16, 18, 8.4), SawPattern.Live, new SawingRules { Kerf = Length.FromInches(0.0625), GridStep = Length.FromInches(grid) }).ValueMoney;

        var (coarse, middle, fine) = (Value(1.0 / 16), Value(1.0 / 32), Value(1.0 / 64));

        Assert.True(coarse <= middle && middle <= fine && fine < coarse * 1.03, $"{coarse} {middle} {fine}");
    }

    [Fact]
    public void Any_log_gives_a_plan_that_passes_the_check_and_stays_under_its_bound() => Gen.Select(Gen.Double[6, 22], Gen.Double[0, 4], Gen.Double[5, 16], Gen.Double[0, 3], Gen.Double[0, 4], Gen.Int[0, 2])
        .Always(
            (small, taper, length, sweep, rot, pattern) =>
            {
                var log = SomeLogs.Straight(small, small + taper, length, sweep < 1 ? 0 : sweep, rot < 2 || rot > small / 2 ? 0 : rot);
                var rules = new SawingRules { GridStep = Length.FromInches(1.0 / 16.0), Kerf = Length.FromInches(1.0 / 16.0), FaceStep = Length.FromInches(1) };
                return CuttingPlanner.Plan(log, rules, SomeLogs.GrainPrices, (SawPattern)pattern) is not Outcome<CuttingPlan>.Done(var plan) || PlanCheck.Faults(log, rules, plan).Count == 0;
            },
            draws: 12);

    [Fact]
    public void A_quartered_premium_turns_the_plan_to_quarter_sawing()
    {
        var plan = Expect.Done(CuttingPlanner.Plan(SomeLogs.Straight(22, 26, 8.33), SomeLogs.Rules, [SomeLogs.Price(5, "flat", 3, 4, 2.0), SomeLogs.Price(5, "quartered", 3, 4, 6.0) with { Grain = BoardGrain.Quartered }]));

        Assert.Equal(SawPattern.Quarter, plan.Pattern);
        Assert.True(plan.Boards.Count(board => board.Grain == BoardGrain.Quartered) > plan.Boards.Count / 2);
    }

    [Fact]
    public void Slabs_keep_their_edges_and_count_by_their_mean_width()
    {
        var log = SomeLogs.Straight(16, 16, 8);
        var plan = SomeLogs.Plan(log, SawPattern.Live, prices: [SomeLogs.Price(8, "slab", 10, 6, 4.0) with { Edge = BoardEdge.Live }]);

        Assert.Empty(PlanCheck.Faults(log, SomeLogs.Rules, plan));
        foreach (var slab in plan.Boards)
        {
            // In a cylinder every place is as wide as the mean of both chords.
            double Chord(double y) => 2.0 * Math.Sqrt((8.0 * 8.0) - (y * y));
            var low = slab.Place.BottomMm / 25.4;
            Assert.Equal((Chord(low) + Chord(low + slab.Green.Inches)) / 2.0, slab.Width.Inches, 6);
            Assert.Equal(LiveEdgeMeasure.Of([slab.Width], slab.Length, slab.Thickness).Count, slab.Footage.Count, 6);
        }
    }

    [Fact]
    public void Slabs_and_boards_come_from_one_log_where_both_pay()
    {
        var log = SomeLogs.Straight(20, 21, 8.4);
        var plan = SomeLogs.Plan(log, SawPattern.Live, prices: [.. SomeLogs.Prices, SomeLogs.Price(10, "slab", 18, 8, 6.0) with { Edge = BoardEdge.Live }]);

        Assert.Empty(PlanCheck.Faults(log, SomeLogs.Rules, plan));
        Assert.Contains(plan.Boards, board => board.Edge == BoardEdge.Live);
        Assert.Contains(plan.Boards, board => board.Edge == BoardEdge.Square);
    }

    [Fact]
    public void A_boule_is_one_thickness_a_kerf_apart_in_order()
    {
        var log = SomeLogs.Straight(16, 18, 8.4, sweepIn: 1);
        var plan = SomeLogs.Plan(log, SawPattern.Boule, prices: [SomeLogs.Price(4, "boule", 6, 8, 3.0) with { Edge = BoardEdge.Boule }]);
        var upward = plan.Boards.OrderBy(board => board.Place.BottomMm).ToList();

        Assert.Empty(PlanCheck.Faults(log, SomeLogs.Rules, plan));
        Assert.All(upward.Zip(upward.Skip(1)), pair => Assert.InRange(pair.Second.Place.BottomMm - pair.First.Place.BottomMm - pair.First.Green.Millimetres, 1.397 - 1e-9, 1.397 + (25.4 / 16.0)));
    }

    [Fact]
    public void Wane_that_a_row_allows_makes_boards_wider_and_never_a_log_worth_less()
    {
        var log = SomeLogs.Straight(12, 13, 8.4);
        double Value(double percent) => SomeLogs.Plan(log, SawPattern.Live, prices: [.. SomeLogs.Prices.Select(price => price with { Wane = Share.FromPercent(percent) })]) is var plan && PlanCheck.Faults(log, SomeLogs.Rules, plan).Count == 0 ? plan.ValueMoney : 0.0;

        double[] values = [Value(0), Value(25), Value(50)];

        Assert.Equal(values.Order(), values);
        Assert.True(values[2] > values[0] * 1.02, $"{values[0]} {values[2]}");
    }

    [Fact]
    public void A_row_with_a_greatest_width_has_wide_flitches_ripped()
    {
        var log = SomeLogs.Straight(16, 17, 8.4);
        var plan = SomeLogs.Plan(log, SawPattern.Live, prices: [SomeLogs.Price(4, "strip", 4, 8, 5.0) with { WidthMax = Length.FromInches(6) }, SomeLogs.Price(4, "any", 3, 4, 2.0)]);

        Assert.Empty(PlanCheck.Faults(log, SomeLogs.Rules, plan));
        Assert.True(plan.Boards.Count(board => board.Grade == "strip") > plan.Openings.Sum(opening => opening.Cuts.Count));
        Assert.All(plan.Boards.Where(board => board.Grade == "strip"), board => Assert.InRange(board.Width.Inches, 4.0 - 1e-9, 6.0 + 1e-9));
    }

    [Fact]
    public void Measured_radii_of_a_round_log_give_its_plan()
    {
        double[] Round(double inches) => [.. Enumerable.Repeat(inches * 12.7 / Math.Cos(Math.PI / 720.0), 720)];
        var measured = Expect.Done(LogShape.Measured([LogSection.Measured(default, Round(14)), LogSection.Measured(Length.FromFeet(8.4), Round(15))]));
        var rules = SomeLogs.Rules with { Turn = Angle.FromDegrees(0) };

        Assert.Equal(SomeLogs.Plan(SomeLogs.Straight(14, 15, 8.4), SawPattern.Live, rules).ValueMoney, SomeLogs.Plan(measured, SawPattern.Live, rules).ValueMoney, 0.01 * SomeLogs.Plan(measured, SawPattern.Live, rules).ValueMoney);
        Assert.Equal(SomeLogs.Straight(14, 15, 8.4).Volume.CubicMetres, measured.Volume.CubicMetres, 4);
    }

    [Fact]
    public void Boards_keep_out_of_the_hollows_of_a_measured_log()
    {
        double[] radii = [.. Enumerable.Range(0, 36).Select(i => 190.0 + (25.0 * Math.Cos(2.0 * Math.PI * i / 12.0)))];
        var log = Expect.Done(LogShape.Measured([LogSection.Measured(default, radii), LogSection.Measured(Length.FromFeet(4), radii, 6, -4), LogSection.Measured(Length.FromFeet(8.4), [.. radii.Select(one => one + 12)])]));
        foreach (var pattern in SomeLogs.Patterns)
            Assert.Empty(PlanCheck.Faults(log, SomeLogs.Rules, SomeLogs.Plan(log, pattern, SomeLogs.Rules with { TurnCount = 4 })));
    }

    [Theory, MemberData(nameof(Logs))]
    public void Boards_kerf_slabs_and_edgings_are_the_log(string name, LogShape log)
    {
        foreach (var pattern in SomeLogs.Patterns)
        {
            var plan = SomeLogs.Plan(log, pattern, SomeLogs.Rules with { TurnCount = 4 });
            var balance = WoodBalance.Of(log, SomeLogs.Rules, plan);
            var sum = balance.Boards.CubicMetres + balance.Kerf.CubicMetres + balance.Slabs.CubicMetres + balance.Edgings.CubicMetres;

            Assert.InRange(sum / log.Volume.CubicMetres, 1.0 - 1e-6, 1.0 + 1e-6);
            Assert.True(balance.Kerf.CubicMetres > 0.0 && balance.Slabs.CubicMetres > 0.0 && balance.Edgings.CubicMetres > 0.0, name);
        }
    }

    [Theory]
    [InlineData(3.2, 3.4, 1, 0)]
    [InlineData(59, 60, 8, 0)]
    [InlineData(16, 16, 1, 0)]
    [InlineData(12, 12, 12, 0)]
    [InlineData(10, 11, 16, 9)]
    public void Odd_logs_are_planned_or_answered_that_no_board_fits(double smallIn, double largeIn, double lengthFt, double sweepIn)
    {
        var (log, rules) = (SomeLogs.Straight(smallIn, largeIn, lengthFt, sweepIn), SomeLogs.Rules with { TurnCount = 4, GridStep = Length.FromInches(1.0 / 8.0) });
        if (CuttingPlanner.Plan(log, rules, SomeLogs.Prices) is Outcome<CuttingPlan>.Done(var plan))
            Assert.Empty(PlanCheck.Faults(log, rules, plan));
        else
            Assert.Contains("No board fits", Expect.NoAnswer(CuttingPlanner.Plan(log, rules, SomeLogs.Prices)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_round_log_is_worth_the_same_in_every_turn()
    {
        var log = SomeLogs.Straight(14, 15, 8.4);
        double Value(double turn) => SomeLogs.Plan(log, SawPattern.Live, SomeLogs.Rules with { Turn = Angle.FromDegrees(turn) }).ValueMoney;

        Assert.All([10.0, 45.0, 123.0], turn => Assert.Equal(Value(0), Value(turn), 6));
    }

    [Fact]
    public void A_log_seen_in_a_mirror_is_planned_by_half_of_its_turns()
    {
        var log = SomeLogs.Straight(14, 15, 8.4, sweepIn: 2);
        var space = new CuttingSpace(log, SomeLogs.Rules, SomeLogs.Prices);

        Assert.Equal(10, space.Turns.Count);
        Assert.Equal(Enumerable.Range(0, 18).Max(i => new LayerProgram(space, space.Lie(10.0 * i)).Up(0, false, 0.0)), SomeLogs.Plan(log, SawPattern.Live).ValueMoney, 9);
    }

    [Fact]
    public void A_bigger_log_is_never_worth_less()
    {
        // Heights tried count from the lowest point: both logs are sawn from the same one, on a grid that a quarter inch is a whole number of.
        var rules = SomeLogs.Rules with { Kerf = Length.FromInches(1.0 / 16.0), WidthStep = Length.FromInches(0.01), LengthStep = Length.FromFeet(0.5) };
        double[] values = [.. new[] { 10.0, 11.0, 12.0, 14.0, 18.0, 24.0 }.Select(inches => SomeLogs.Plan(SomeLogs.Straight(inches, inches, 8), SawPattern.Live, rules).ValueMoney)];

        Assert.Equal(values.Order(), values);
    }

    [Fact]
    public void A_log_too_thin_for_any_board_has_no_answer() =>
        Assert.Contains("No board fits", Expect.NoAnswer(CuttingPlanner.Plan(SomeLogs.Straight(3, 3, 8), SomeLogs.Rules, SomeLogs.Prices)), StringComparison.Ordinal);

    [Fact]
    public void A_price_of_a_thickness_the_mill_does_not_saw_is_refused() =>
        Assert.Equal("prices", Expect.Refused(CuttingPlanner.Plan(SomeLogs.Straight(16, 18, 8), SomeLogs.Rules, [SomeLogs.Price(3, "", 3, 4, 1)])).What);

    [Theory]
    [InlineData(18, 16, 8, 0, "large_end")]
    [InlineData(16, 18, 50, 0, "length")]
    [InlineData(1, 18, 8, 0, "diameter")]
    [InlineData(16, 18, 8, 20, "sweep")]
    public void A_log_that_cannot_be_is_refused(double smallIn, double largeIn, double lengthFt, double sweepIn, string what) => Assert.Equal(what, Expect.Refused(LogShape.Straight(
        Length.FromInches(smallIn), Length.FromInches(largeIn), Length.FromFeet(lengthFt), Length.FromInches(sweepIn))).What);

    [Fact]
    public void The_programme_allocates_nothing_while_it_runs()
    {
        var space = new CuttingSpace(SomeLogs.Straight(16, 18, 8.4, sweepIn: 2), SomeLogs.Rules, SomeLogs.Prices);
        var lie = space.Lie(15.0);
        var (bound, clipped, cant) = (LayerBound.For(space, lie), new double[lie.Field.Whole.Length], new FlitchClip(-60.0, 60.0));
        var (whole, warm, fresh) = (new LayerProgram(space, lie), new LayerProgram(space, lie, cant), new LayerProgram(space, lie, cant));
        FlitchClip[] clips = [cant, new(-80.0, 40.0)];
        var total = lie.Down.Fresh[0] + fresh.Clip(cant) + warm.Up(0, false, 0.0) + lie.Field.Clips.Together(clips)[0];
        var before = GC.GetAllocatedBytesForCurrentThread();

        total += fresh.Up(0, false, 0.0) + whole.Down(lie.Count / 2, 0.0) + bound.SolveUp(lie, lie.Field.Whole, 120.0) + lie.Field.Clips.Together(clips)[1];
        lie.Field.Clips.Fill(cant, clipped);
        lie.Field.WorkOut(0, lie.Field.Blocks / 2);

        Assert.True(total > 0.0);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void A_planted_fault_is_found_by_the_check()
    {
        var log = SomeLogs.Straight(16, 18, 8.4);
        var plan = SomeLogs.Plan(log, SawPattern.Live);
        CuttingPlan With(Func<PlannedBoard, PlannedBoard> change) => plan with { Boards = [change(plan.Boards[0]), .. plan.Boards.Skip(1)] };

        Assert.Contains(PlanCheck.Faults(log, SomeLogs.Rules, With(one => one with { Width = one.Width + Length.FromInches(1) })), fault => fault.Contains("sticks out", StringComparison.Ordinal));
        Assert.Contains(PlanCheck.Faults(log, SomeLogs.Rules, With(one => one with { Place = plan.Boards[1].Place })), fault => fault.Contains("apart", StringComparison.Ordinal));
        Assert.Contains(
            PlanCheck.Faults(log, SomeLogs.Rules, plan with { Openings = [plan.Openings[0] with { Cuts = [.. plan.Openings[0].Cuts.Skip(2)] }, .. plan.Openings.Skip(1)] }),
            fault => fault.Contains("not cut free", StringComparison.Ordinal));
        Assert.Contains(PlanCheck.Faults(log, SomeLogs.Rules, plan with { UpperBoundMoney = 1.0 }), fault => fault.Contains("bound", StringComparison.Ordinal));
    }

    private static double[] Numbers(string text) => [.. text.Split('|').Select(part => double.Parse(part, CultureInfo.InvariantCulture))];
}
