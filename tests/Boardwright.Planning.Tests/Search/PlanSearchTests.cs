namespace Boardwright.Planning.Tests;

public sealed class PlanSearchTests
{
    private const int Yards = 2000;

    [Fact]
    public void Every_plan_the_search_keeps_breaks_no_rule_in_thousands_of_yards()
    {
        var better = 0;
        for (ulong seed = 1; seed <= Yards; seed++)
        {
            var input = TinyYards.Make(seed);
            var tables = new PlanTables(input);
            var first = GreedyPlan.Build(tables);
            var search = new PlanSearch(tables, seed);

            search.Run(first, visited => visited / 96.0);

            Assert.True(PlanCheck.Faults(input, search.Best, PlanOutlook.Of(input, search.Best)) is [], $"seed {seed}");
            Assert.Equal(search.Score, PlanOutlook.Of(input, search.Best).Score);
            better += search.Score < PlanOutlook.Of(input, first).Score ? 1 : 0;
        }

        Assert.InRange(better, Yards / 4, Yards);
    }

    [Fact]
    public void Rules_of_thumb_break_no_rule_in_thousands_of_yards()
    {
        for (ulong seed = 1; seed <= Yards; seed++)
        {
            var input = TinyYards.Make(seed);
            foreach (var plan in new[] { RuleOfThumb.FirstDryFirstLoaded(input), RuleOfThumb.EarliestDueDate(input) })
            {
                Assert.True(PlanCheck.Faults(input, plan, PlanOutlook.Of(input, plan)) is [], $"seed {seed}");
            }
        }
    }

    [Fact]
    public void The_same_seed_finds_the_same_plan()
    {
        var tables = new PlanTables(SeasonYard.Input);
        PlanScore Found()
        {
            var search = new PlanSearch(tables, 3);
            search.Run(GreedyPlan.Build(tables), visited => visited / 2000.0);
            return search.Score;
        }

        Assert.Equal(Found(), Found());
    }

    [Fact]
    public void A_season_is_planned_with_less_lateness_than_by_either_rule_of_thumb()
    {
        var input = SeasonYard.Input;
        var tables = new PlanTables(input);
        var search = new PlanSearch(tables, 1);

        search.Run(GreedyPlan.Build(tables), visited => visited / 4000.0);

        Assert.True(search.Score.LateCents < PlanOutlook.Of(input, RuleOfThumb.FirstDryFirstLoaded(input)).Score.LateCents);
        Assert.True(search.Score.LateCents < PlanOutlook.Of(input, RuleOfThumb.EarliestDueDate(input)).Score.LateCents);
    }
}
