using Boardwright.Quantities;

namespace Boardwright.Sawing.Tests.Cutting;

/// <summary>What ceilings leave out cannot matter: the plan is that of working everything out, board for board, and no ceiling lies under what it bounds.</summary>
public class PruningTests
{
    private static readonly SawingRules Coarse = new()
    {
        GridStep = Length.FromInches(1.0 / 16.0),
        Kerf = Length.FromInches(1.0 / 16.0),
        CantStep = Length.FromInches(2.0),
        FaceStep = Length.FromInches(1.0),
        TurnCount = 8,
        Settings = [SomeLogs.Setting(4, 1.125), SomeLogs.Setting(8, 2.125)],
    };

    private static readonly IReadOnlyList<BoardPrice> Slabs = [.. SomeLogs.Prices, SomeLogs.Price(8, "slab", 7, 4, 5.0) with { Edge = BoardEdge.Live }];
    private static readonly IReadOnlyList<BoardPrice> Wane = [.. SomeLogs.Prices.Select(price => price with { Wane = Share.FromPercent(price.Grade == "best" ? 0 : 30), WidthMax = price.Grade == "best" ? Length.FromInches(8) : null })];

    public static TheoryData<string, IReadOnlyList<BoardPrice>, bool, double> Ways { get; } = new()
    {
        { "boards", SomeLogs.Prices, false, 0.0 },
        { "slabs", Slabs, false, 0.0 },
        { "wane and rips", Wane, false, 0.0 },
        { "cut across", SomeLogs.Prices, true, 0.0 },
        { "grain", SomeLogs.GrainPrices, false, 0.0 },
        { "rot", SomeLogs.Prices, false, 2.0 },
    };

    [Theory, MemberData(nameof(Ways))]
    public void The_plan_is_that_of_working_everything_out(string name, IReadOnlyList<BoardPrice> prices, bool cutsAcross, double rotIn)
    {
        var (rules, random) = (Coarse with { CutsAcross = cutsAcross }, new Random(20261102));
        for (var draw = 0; draw < 3; draw++)
        {
            var log = Crooked(random, 7.0 + (3.0 * draw), rotIn);
            foreach (var pattern in new SawPattern?[] { null, SawPattern.Live, SawPattern.Cant, SawPattern.Quarter })
            {
                if (CuttingPlanner.Plan(log, rules, prices, pattern, isPruned: true) is not Outcome<CuttingPlan>.Done(var plan))
                    continue;

                var all = Expect.Done(CuttingPlanner.Plan(log, rules, prices, pattern, isPruned: false));
                Assert.Equal((all.Pattern, all.Rotation.Degrees, all.ValueMoney), (plan.Pattern, plan.Rotation.Degrees, plan.ValueMoney));
                Assert.True(all.Boards.SequenceEqual(plan.Boards), $"{name}, log {draw}, {pattern}");
            }
        }
    }

    [Theory, MemberData(nameof(Ways))]
    public void No_flitch_clipped_or_not_is_worth_more_than_its_ceiling(string name, IReadOnlyList<BoardPrice> prices, bool cutsAcross, double rotIn)
    {
        var random = new Random(3);
        Span<double> value = stackalloc double[FlitchField.Lanes];
        for (var draw = 0; draw < 12; draw++)
        {
            var grid = draw % 2 == 0 ? 1.0 / 16.0 : 0.01;
            var space = new CuttingSpace(Crooked(random, 6.0 + draw, rotIn), Coarse with { CutsAcross = cutsAcross, GridStep = Length.FromInches(grid) }, prices);
            var lie = space.Lie(15.0 * draw);
            foreach (var clip in new[] { FlitchClip.None, new FlitchClip(-20.0 - (10.0 * draw), 60.0), FlitchClip.None with { HeartRadiusMm = 20.0 } })
            {
                var most = new double[lie.Field.Whole.Length];
                lie.Field.Clips.Fill(clip, most);
                for (var t = 0; t < space.PitchSteps.Length; t++)
                {
                    for (var four = 0; four < lie.Field.Stride / FlitchField.Lanes; four++)
                    {
                        lie.Field.Evaluate(t, four, clip, value);
                        for (var lane = 0; lane < value.Length; lane++)
                        {
                            var at = (t * lie.Field.Stride) + (four * FlitchField.Lanes) + lane;
                            Assert.True(value[lane] <= (clip.IsWhole ? lie.Field.Whole[at] : most[at]), $"{name}, log {draw}, thickness {t}, height {(four * 4) + lane}: {value[lane]} over {most[at]}");
                        }
                    }
                }
            }
        }
    }

    // Oval sections off the line in both directions; the last draws are measured by radii.
    private static LogShape Crooked(Random random, double inches, double rotIn)
    {
        double Off() => (random.NextDouble() - 0.5) * 20.0;
        LogSection Oval(double atFt) => SomeLogs.Section(atFt, inches + (atFt / 6.0) + (random.NextDouble() / 2.0), inches + (atFt / 6.0) - (random.NextDouble() / 2.0), Off(), Off());
        LogSection Radii(double atFt) => LogSection.Measured(Length.FromFeet(atFt), [.. Enumerable.Range(0, 16).Select(_ => (12.7 * inches) + (6.0 * random.NextDouble()))], Off(), Off());
        return Expect.Done(LogShape.Measured(random.Next(3) == 0 ? [Radii(0), Radii(3), Radii(6.3)] : [Oval(0), Oval(2), Oval(4), Oval(6.3)], default, Length.FromInches(rotIn)));
    }
}
