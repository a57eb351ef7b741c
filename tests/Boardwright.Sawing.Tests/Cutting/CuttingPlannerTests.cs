using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Sawing.Tests.Cutting;

public class CuttingPlannerTests
{
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
        foreach (var pattern in Enum.GetValues<SawPattern>())
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
            Assert.Equal(Enum.GetValues<SawPattern>().Max(pattern => SomeLogs.Plan(log, pattern).ValueMoney), Expect.Done(CuttingPlanner.Plan(log, SomeLogs.Rules, SomeLogs.Prices)).ValueMoney, 9);
    }

    [Fact]
    public void The_usual_fine_grid_passes_the_check_too()
    {
        var log = SomeLogs.Straight(13, 15, 8.4);
        foreach (var pattern in Enum.GetValues<SawPattern>())
            Assert.Empty(PlanCheck.Faults(log, new SawingRules(), SomeLogs.Plan(log, pattern, new SawingRules())));
    }

    [Fact]
    public void Live_sawing_equals_every_sequence_tried_by_recursion()
    {
        var rules = new SawingRules { GridStep = Length.FromInches(0.25), Kerf = Length.FromInches(0.25), Settings = [SomeLogs.Setting(4, 1.0), SomeLogs.Setting(8, 2.0)], LengthStep = Length.FromFeet(2) };
        foreach (var (log, name) in new[] { (SomeLogs.Straight(7, 8.2, 8.3), "tapered"), (SomeLogs.Straight(8, 8, 6), "cylinder"), (SomeLogs.Straight(6.5, 7.5, 8), "short") })
        {
            var plain = new PlainSawing(log, rules, SomeLogs.Prices, 6.35);
            var best = plain.Best();
            Assert.True(plain.Tried > 1000, name);
            Assert.Equal(best, SomeLogs.Plan(log, SawPattern.Live, rules).ValueMoney, 9);
        }
    }

    [Fact]
    public void Live_sawing_of_a_leaning_log_equals_recursion_in_its_own_turn()
    {
        var rules = new SawingRules { GridStep = Length.FromInches(0.25), Kerf = Length.FromInches(0.25), Settings = [SomeLogs.Setting(4, 1.0), SomeLogs.Setting(8, 2.0)], LengthStep = Length.FromFeet(2) };
        var log = Expect.Done(LogShape.Measured([SomeLogs.Section(0, 7, 6.4, 0, 0), SomeLogs.Section(3, 7.2, 6.6, 9, -7), SomeLogs.Section(6, 7.6, 7.2, -3, 4)]));
        var space = new CuttingSpace(log, rules, SomeLogs.Prices);

        Assert.Equal(new PlainSawing(log, rules, SomeLogs.Prices, 6.35).Best(), LiveSawing.Best(space, 0.0, out _), 9);
    }

    [Fact]
    public void A_cant_equals_every_cant_tried_without_pruning()
    {
        var log = SomeLogs.Straight(9, 10, 8.3);
        var rules = new SawingRules { GridStep = Length.FromInches(0.0625), Kerf = Length.FromInches(0.0625) };
        var space = new CuttingSpace(log, rules, SomeLogs.Prices);
        LiveSawing.Best(space, 0.0, out var above);
        var below = new LayerProgram(space, 180.0, space.KerfMm - above.Height(0));
        below.Value();
        below.Solve();
        var across = new LayerProgram(space, 90.0);
        var best = 0.0;
        for (var sizeIn = 4; sizeIn < 10; sizeIn++)
        {
            for (var face = 0; face + (16 * sizeIn) + 1 < above.Count; face += 4)
            {
                var bottom = above.Height(face);
                across.Value(bottom, bottom + (25.4 * sizeIn));
                across.Solve();
                var value = across.Best > 0.0 ? above.FromFresh(face + (16 * sizeIn) + 1) + below.FromFresh(below.IndexOf(space.KerfMm - bottom)) + across.Best : 0.0;
                best = Math.Max(best, value);
            }
        }

        Assert.Equal(best, SomeLogs.Plan(log, SawPattern.Cant, rules).ValueMoney, 9);
    }

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
        .Sample(
            (small, taper, length, sweep, rot, pattern) =>
            {
                var log = SomeLogs.Straight(small, small + taper, length, sweep < 1 ? 0 : sweep, rot < 2 || rot > small / 2 ? 0 : rot);
                var rules = new SawingRules { GridStep = Length.FromInches(1.0 / 16.0), Kerf = Length.FromInches(1.0 / 16.0), FaceStep = Length.FromInches(1) };
                return CuttingPlanner.Plan(log, rules, SomeLogs.GrainPrices, (SawPattern)pattern) is not Outcome<CuttingPlan>.Done(var plan) || PlanCheck.Faults(log, rules, plan).Count == 0;
            },
            seed: "0N0XIzNsQ0O2", iter: 12, threads: 1);

    [Fact]
    public void A_quartered_premium_turns_the_plan_to_quarter_sawing()
    {
        var plan = Expect.Done(CuttingPlanner.Plan(SomeLogs.Straight(22, 26, 8.33), SomeLogs.Rules, [SomeLogs.Price(5, "flat", 3, 4, 2.0), SomeLogs.Price(5, "quartered", 3, 4, 6.0) with { Grain = BoardGrain.Quartered }]));

        Assert.Equal(SawPattern.Quarter, plan.Pattern);
        Assert.True(plan.Boards.Count(board => board.Grain == BoardGrain.Quartered) > plan.Boards.Count / 2);
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
        var space = new CuttingSpace(SomeLogs.Straight(16, 18, 8.4), SomeLogs.Rules, SomeLogs.Prices);
        LiveSawing.Best(space, 0.0, out var program);
        var before = GC.GetAllocatedBytesForCurrentThread();

        program.Value();
        program.Solve();

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
