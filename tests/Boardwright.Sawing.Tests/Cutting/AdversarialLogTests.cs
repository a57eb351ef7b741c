using Boardwright.Quantities;

namespace Boardwright.Sawing.Tests.Cutting;

/// <summary>Logs nobody wants to saw: each is planned soundly by every pattern, or refused in plain words. All invented.</summary>
public sealed class AdversarialLogTests
{
    private static readonly SawingRules Rules = SomeLogs.Rules with { TurnCount = 12 };

    /// <summary>The heart far off the middle: 5 in of wood on one side, 10 in on the other.</summary>
    private static double[] Egg(double scale = 1.0, int turned = 0) =>
        [.. Enumerable.Range(0, 24).Select(i => 25.4 * scale * (7.5 + (2.5 * Math.Cos(2.0 * Math.PI * (i - turned) / 24.0))))];

    public static TheoryData<string, LogShape> Logs { get; } = new()
    {
        { "egg-shaped", Measured(Egg(), Egg(1.1)) },
        { "egg-shaped, its belly turning along the log", Measured(Egg(), Egg(1.0, 12)) },
        { "all sweep: one diameter of it", SomeLogs.Straight(14, 15, 12, sweepIn: 14) },
        { "one foot long", SomeLogs.Straight(20, 20.5, 1) },
        { "one and a half metres across", SomeLogs.Straight(59, 59.05, 8.4) },
        { "zero taper", SomeLogs.Straight(15, 15, 8.4) },
    };

    [Theory, MemberData(nameof(Logs))]
    public void It_is_planned_by_every_pattern_inside_the_wood_under_its_bound_with_all_wood_accounted_for(string name, LogShape log)
    {
        foreach (var pattern in SomeLogs.Patterns)
        {
            if (CuttingPlanner.Plan(log, Rules, name == "one foot long" ? Short : SomeLogs.Prices, pattern) is not Outcome<CuttingPlan>.Done(var plan))
            {
                Assert.StartsWith("all sweep", name, StringComparison.Ordinal);
                continue;
            }

            Assert.Empty(PlanCheck.Faults(log, Rules, plan));
            Assert.InRange(plan.ValueMoney, 0.01, plan.UpperBoundMoney);
            var balance = WoodBalance.Of(log, Rules, plan);
            Assert.Equal(log.Volume.CubicMetres, balance.Boards.CubicMetres + balance.Kerf.CubicMetres + balance.Slabs.CubicMetres + balance.Edgings.CubicMetres, 1e-6 * log.Volume.CubicMetres);
        }
    }

    [Fact]
    public void An_egg_gives_its_boards_from_the_thick_side_and_the_same_whichever_way_it_lay_when_it_was_measured()
    {
        var (plan, turned) = (SomeLogs.Plan(Measured(Egg(), Egg()), SawPattern.Live, Rules), SomeLogs.Plan(Measured(Egg(1.0, 12), Egg(1.0, 12)), SawPattern.Live, Rules));
        var rotation = plan.Rotation;
        var (sin, cos) = Math.SinCos(rotation.Radians);
        // The egg's belly lies at the top of the unturned log: (sin, cos) once it is turned clockwise.
        double Towards(PlannedBoard board) => board.InFirstLie(rotation) is var (left, bottom, width, height) ? ((left + (width / 2.0)) * sin) + ((bottom + (height / 2.0)) * cos) : 0.0;

        Assert.Equal(plan.ValueMoney, turned.ValueMoney, 0.002 * plan.ValueMoney);
        Assert.True(plan.Boards.Sum(board => board.Footage.Count * Towards(board)) > 0.0);
    }

    [Fact]
    public void All_sweep_is_worth_less_than_straight_and_never_below_nothing()
    {
        var values = new[] { 0.0, 3.5, 7.0, 14.0 }.Select(sweep => CuttingPlanner.Plan(SomeLogs.Straight(14, 15, 12, sweep), Rules, SomeLogs.Prices, SawPattern.Live) is Outcome<CuttingPlan>.Done(var plan) ? plan.ValueMoney : 0.0).ToList();

        Assert.Equal(values.OrderDescending(), values);
        Assert.True(values[0] > values[^1]);
    }

    [Fact]
    public void Negative_taper_is_refused_with_both_ends_named()
    {
        var refusal = Expect.Refused(LogShape.Straight(Length.FromInches(18), Length.FromInches(16), Length.FromFeet(8)));

        Assert.Equal(("large_end", "16 in", "at least the small end, 18 in"), (refusal.What, refusal.Given, refusal.Accepted));
    }

    private static readonly IReadOnlyList<BoardPrice> Short = [SomeLogs.Price(4, "short", 3, 1, 2.0), SomeLogs.Price(8, "short", 3, 1, 2.5)];

    private static LogShape Measured(double[] small, double[] large) => Expect.Done(LogShape.Measured([LogSection.Measured(default, small), LogSection.Measured(Length.FromFeet(8.4), large)]));
}
