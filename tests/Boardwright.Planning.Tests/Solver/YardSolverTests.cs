using Boardwright.Planning.Solver;
using Boardwright.Quantities;

namespace Boardwright.Planning.Tests;

public sealed class YardSolverTests
{
    private static readonly SolverLimits Repeatable = new(120, 1, 20);

    public static TheoryData<ulong> Seeds() => [.. Enumerable.Range(1, 60).Select(i => (ulong)i)];

    [Theory, MemberData(nameof(Seeds))]
    public void The_solver_finds_and_proves_the_plan_that_trying_everything_finds(ulong seed)
    {
        var input = TinyYards.Make(seed);
        var best = TinyYardSearch.Best(input)!.Value;

        var answer = Done(YardSolver.Solve(input, Repeatable, cancel: TestContext.Current.CancellationToken));

        Assert.Empty(PlanCheck.Faults(input, answer.Plan, answer.Outlook));
        Assert.True(answer.Proven, string.Join(", ", answer.Levels));
        Assert.Equal(best.Score, answer.Outlook.Score);
    }

    [Theory, MemberData(nameof(Seeds))]
    public void The_first_plan_breaks_no_rule(ulong seed)
    {
        var input = TinyYards.Make(seed);
        var plan = GreedyPlan.Build(new PlanTables(input));

        Assert.Empty(PlanCheck.Faults(input, plan, PlanOutlook.Of(input, plan)));
    }

    /// <summary>The earlier plan stays, or gives way, by the stated worth and never at the price of lateness.</summary>
    [Theory, MemberData(nameof(Seeds))]
    public void Plan_takes_the_place_of_the_one_before_only_when_it_is_worth_it(ulong seed)
    {
        var input = TinyYards.Make(seed);
        var before = GreedyPlan.Build(new PlanTables(input));
        PlanAnswer With(long worth) => Done(YardSolver.Solve(input, Repeatable with { Start = before, ChangeWorthCents = worth }, cancel: TestContext.Current.CancellationToken));
        var (best, kept) = (With(0), With(long.MaxValue / 4));
        var again = HandPlan.Of(input, before.Charges.Where(charge => charge.Started is null).OrderBy(charge => charge.LoadStep).Select(charge => new HandCharge(charge.Kiln, charge.Stacks, default))).Plan;
        var score = PlanOutlook.Of(input, again).Score;

        Assert.Equal(best.Outlook.Score.LateCents, kept.Outlook.Score.LateCents);
        if (score.LateCents == best.Outlook.Score.LateCents)
        {
            Assert.Equal(score, kept.Outlook.Score);
        }

        var tables = new PlanTables(input);
        Assert.True(FewestChanges.Between(tables, again, kept.Plan) <= FewestChanges.Between(tables, again, best.Plan));
        Assert.Empty(PlanCheck.Faults(input, kept.Plan, kept.Outlook));
        Assert.All(kept.Levels, level => Assert.True(level.BoundCents <= level.Cents));
        Assert.All(kept.Levels.Take(2), level => Assert.True(level.BoundCents <= best.Levels.Single(one => one.Name == level.Name).Cents));
    }

    /// <summary>The search ends at a gap: what it leaves is sound and as near the bound as was asked.</summary>
    [Theory, InlineData(100.0), InlineData(60.0), InlineData(0.0)]
    public void Search_ends_once_lateness_is_near_enough_to_its_bound(double gap)
    {
        var input = SeasonYard.Input;
        var limits = new SolverLimits(60, 2) { EnoughGapPercent = gap };

        var answer = Done(YardSolver.Solve(input, limits, cancel: TestContext.Current.CancellationToken));

        Assert.Empty(PlanCheck.Faults(input, answer.Plan, answer.Outlook));
        Assert.True(answer.Levels[0].GapPercent <= gap, $"{answer.Levels[0]}");
    }

    /// <summary>What every page goes by while a newer plan is worked: the earlier loads under the facts there are, sound, and bounded by what holds for any plan.</summary>
    [Theory, MemberData(nameof(Seeds))]
    public void Earlier_plan_is_carried_on_without_a_search(ulong seed)
    {
        var input = TinyYards.Make(seed);
        var before = GreedyPlan.Build(new PlanTables(input));
        var gone = input.Stacks[0].Id;
        var less = input with { Stacks = [.. input.Stacks.Skip(1)], Orders = [.. input.Orders.Select(order => order with { Wood = [.. order.Wood.Where(wood => wood.Stack != gone)] })] };

        var carried = Done(YardSolver.Carried(input, before));
        var without = Done(YardSolver.Carried(less, before));
        var best = Done(YardSolver.Solve(input, Repeatable, cancel: TestContext.Current.CancellationToken));

        Assert.Empty(PlanCheck.Faults(input, carried.Plan, carried.Outlook));
        Assert.Equal(carried.Plan.Charges.Count, Done(YardSolver.Carried(input, carried.Plan)).Plan.Charges.Count);
        Assert.Empty(PlanCheck.Faults(less, without.Plan, without.Outlook));
        Assert.DoesNotContain(without.Plan.Charges, charge => charge.Stacks.Contains(gone));
        Assert.All(carried.Levels.Take(1), level => Assert.True(level.BoundCents <= best.Levels[0].Cents));
    }

    /// <summary>Lifting a rule changes the best plan of some tiny yard: the equality above would notice a model without it.</summary>
    [Theory]
    [InlineData("heat")]
    [InlineData("coil")]
    [InlineData("crew")]
    [InlineData("outages")]
    [InlineData("capacity")]
    [InlineData("weight")]
    [InlineData("length")]
    [InlineData("sharing")]
    [InlineData("never kiln")]
    [InlineData("matched set")]
    [InlineData("heated to")]
    [InlineData("available")]
    [InlineData("planer")]
    [InlineData("yield")]
    [InlineData("drying times by day")]
    [InlineData("slow warm-up")]
    [InlineData("waiting")]
    [InlineData("standing charge")]
    public void The_tiny_yards_feel_every_rule(string rule) =>
        Assert.Contains(Seeds(), seed => TinyYardSearch.Best(TinyYards.Make(seed.Data))!.Value.Score != TinyYardSearch.Best(Lifted(TinyYards.Make(seed.Data), rule))!.Value.Score);

    [Fact]
    public void A_season_is_planned_soundly_with_better_and_better_plans()
    {
        var input = SeasonYard.Input;
        var news = new List<PlanProgress>();

        var answer = Done(YardSolver.Solve(input, new(60, 1, 1.5), news.Add, TestContext.Current.CancellationToken));

        Assert.Empty(PlanCheck.Faults(input, answer.Plan, answer.Outlook));
        Assert.NotEmpty(news);
        Assert.All(news.Zip(news.Skip(1)), pair => Assert.True(pair.Second.Score < pair.First.Score));
        Assert.All(news, item => Assert.True(item.Level.BoundCents <= item.Level.Cents));
        Assert.Equal(news[^1].Score, answer.Outlook.Score);
        Assert.True(answer.Outlook.Score < PlanOutlook.Of(input, GreedyPlan.Build(new PlanTables(input))).Score);
    }

    [Fact]
    public void Repeatable_work_gives_the_same_plan_twice()
    {
        var limits = new SolverLimits(120, 2, 0.5, 7);

        var first = Done(YardSolver.Solve(SeasonYard.Input, limits, cancel: TestContext.Current.CancellationToken));
        var second = Done(YardSolver.Solve(SeasonYard.Input, limits, cancel: TestContext.Current.CancellationToken));

        Assert.Equal(first.Outlook.Score, second.Outlook.Score);
        Assert.Equal(first.Plan.Charges.Select(Text), second.Plan.Charges.Select(Text));

        static string Text(Charge charge) => $"{charge.Kiln} {charge.LoadStep} {charge.UnloadStep} {string.Join(' ', charge.Stacks)}";
    }

    [Fact]
    public void A_cancelled_search_answers_with_the_first_plan()
    {
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();

        var answer = Done(YardSolver.Solve(SeasonYard.Input, new(60, 1), cancel: cancel.Token));

        Assert.Empty(PlanCheck.Faults(SeasonYard.Input, answer.Plan, answer.Outlook));
        Assert.All(answer.Levels, level => Assert.True(level.BoundCents <= level.Cents));
    }

    /// <summary>Stopped at the first, second, third … better plan: in the search, in the bounds, in the model.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(15)]
    [InlineData(30)]
    [InlineData(45)]
    public void A_search_stopped_at_any_moment_leaves_a_sound_plan(int news)
    {
        using var cancel = new CancellationTokenSource();
        var last = default(PlanScore);
        var heard = 0;

        var answer = Done(YardSolver.Solve(SeasonYard.Input, new(60, 1, 0.3), progress =>
        {
            last = heard < news ? progress.Score : last;
            if (++heard == news)
            {
                cancel.Cancel();
            }
        }, cancel.Token));

        Assert.Empty(PlanCheck.Faults(SeasonYard.Input, answer.Plan, answer.Outlook));
        Assert.True(answer.Outlook.Score <= last);
        Assert.All(answer.Levels, level => Assert.True(level.BoundCents <= level.Cents));
    }

    [Fact]
    public void A_search_without_time_claims_no_proof()
    {
        var answer = Done(YardSolver.Solve(SeasonYard.Input, new(0.05, 1), cancel: TestContext.Current.CancellationToken));

        Assert.Empty(PlanCheck.Faults(SeasonYard.Input, answer.Plan, answer.Outlook));
        Assert.False(answer.Levels[2].Proven);
    }

    [Fact]
    public void Unsound_input_is_refused_with_every_reason()
    {
        var input = SmallYard.Input with { Stacks = [.. SmallYard.Input.Stacks, SmallYard.Stack("S-1")], ImportanceMoneyPerDay = -1m };

        var refused = Assert.IsType<Outcome<PlanAnswer>.Refused>(YardSolver.Solve(input, Repeatable, cancel: TestContext.Current.CancellationToken));

        Assert.Equal(["stack", "importance money per day"], refused.Reasons.Select(reason => reason.What));
    }

    internal static PlanAnswer Done(Outcome<PlanAnswer> outcome) => Assert.IsType<Outcome<PlanAnswer>.Done>(outcome).Value;

    private static PlanInput Lifted(PlanInput input, string rule)
    {
        PlanInput Stacks(Func<Stack, Stack> change) => input with { Stacks = [.. input.Stacks.Select(change)] };
        PlanInput Kilns(Func<Kiln, Kiln> change) => input with { Kilns = [.. input.Kilns.Select(change)] };
        return rule switch
        {
            "heat" => input with { Heat = input.Heat with { Boilers = [new("B9", Power.FromKilowatts(1000), [])] } },
            "coil" => Kilns(k => k.Coil is null ? k : k with { Coil = Power.FromKilowatts(1000) }),
            "crew" => input with { Calendar = input.Calendar with { KilnsAtOnce = 9 } },
            "outages" => Kilns(k => k with { Outages = [] }),
            "capacity" => Kilns(k => k with { Capacity = BoardFeet.From(1e5) }),
            "weight" => Kilns(k => k with { MostWeight = null }),
            "length" => Kilns(k => k with { LongestPiece = Length.FromFeet(100) }),
            "sharing" => input with { Sharing = new(100, 100) },
            "never kiln" => Stacks(s => s with { NeverKiln = false }),
            "matched set" => Stacks(s => s with { MatchedSet = null }),
            "heated to" => Stacks(s => s with { HeatedTo = null }),
            "available" => Stacks(s => s with { AvailableFrom = SmallYard.Monday }),
            "planer" => input with { Orders = [.. input.Orders.Select(o => o with { PlanerRuns = 0 })] },
            "yield" => Stacks(s => s with { Yield = BoardFeet.From(1e5) }),
            "drying times by day" => Stacks(s => s with { DryingTimes = [.. s.DryingTimes.Select(t => t with { HalfByDay = [t.HalfByDay[0]], MostByDay = [t.MostByDay[0]] })] }),
            "slow warm-up" => Kilns(k => k with { WarmUps = [k.WarmUps[0]] }),
            "waiting" => Stacks(s => s with { WaitingMoneyPerDay = 0 }),
            _ => input with { Started = [] },
        };
    }
}
