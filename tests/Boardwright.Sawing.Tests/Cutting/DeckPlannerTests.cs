using Boardwright.Quantities;

namespace Boardwright.Sawing.Tests.Cutting;

public class DeckPlannerTests
{
    private static readonly SawingRules Rules = SomeLogs.Rules with { GridStep = Length.FromInches(1.0 / 8.0), TurnCount = 4 };

    private static readonly IReadOnlyList<LogShape> Deck = [SomeLogs.Straight(14, 15, 8.4), SomeLogs.Straight(18, 20, 8.4), SomeLogs.Straight(12, 13, 12.4)];

    private static readonly BoardPrice Wide = SomeLogs.Price(8, "wide", 10, 8, 9.0);

    [Fact]
    public void Without_lines_every_log_has_its_own_best_plan()
    {
        var plan = Expect.Done(DeckPlanner.Plan(Deck, Rules, SomeLogs.Prices, [], SawPattern.Live));

        Assert.Equal(Deck.Sum(log => SomeLogs.Plan(log, SawPattern.Live, Rules).ValueMoney), plan.ValueMoney, 6);
        Assert.Equal(0.0, plan.Gap.Fraction, 6);
    }

    [Fact]
    public void A_line_that_never_fills_pays_its_price_for_every_board_it_takes()
    {
        var plan = Expect.Done(DeckPlanner.Plan(Deck, Rules, SomeLogs.Prices, [new OpenLine("A", Wide, BoardFeet.From(5000))], SawPattern.Live));

        Assert.Equal(Deck.Sum(log => SomeLogs.Plan(log, SawPattern.Live, Rules, [.. SomeLogs.Prices, Wide]).ValueMoney), plan.ValueMoney, 6);
        Assert.Equal(0.0, plan.Gap.Fraction, 6);
    }

    [Theory, InlineData(20.0), InlineData(60.0), InlineData(120.0)]
    public void A_line_is_filled_no_further_than_it_is_open_and_the_bound_holds(double open)
    {
        var plan = Expect.Done(DeckPlanner.Plan(Deck, Rules, SomeLogs.Prices, [new OpenLine("A", Wide, BoardFeet.From(open))], SawPattern.Live));
        var (none, all) = (Expect.Done(DeckPlanner.Plan(Deck, Rules, SomeLogs.Prices, [], SawPattern.Live)).ValueMoney, Deck.Sum(log => SomeLogs.Plan(log, SawPattern.Live, Rules, [.. SomeLogs.Prices, Wide]).ValueMoney));

        Assert.InRange(plan.Fills[0].Filled.Count, 0.0, open + 1e-9);
        Assert.InRange(plan.ValueMoney, none, all + 1e-6);
        Assert.InRange(plan.BoundMoney, plan.ValueMoney - 1e-9, all + 1e-6);
        Assert.InRange(plan.Gap.Percent, 0.0, 5.0);
        foreach (var (log, one) in Deck.Zip(plan.Plans))
            Assert.Empty(PlanCheck.Faults(log, Rules, one!));
    }

    [Fact]
    public void More_open_footage_is_never_worth_less_than_the_gap()
    {
        double[] bounds = [.. new[] { 0.0, 30.0, 90.0, 300.0 }.Select(open => Expect.Done(DeckPlanner.Plan(Deck, Rules, SomeLogs.Prices, [new OpenLine("A", Wide, BoardFeet.From(open))], SawPattern.Live)) is var plan ? plan.ValueMoney : 0.0)];

        Assert.All(bounds.Zip(bounds.Skip(1)), pair => Assert.True(pair.Second >= pair.First * 0.995, $"{pair}"));
    }

    [Fact]
    public void Two_lines_of_one_name_are_refused() =>
        Assert.Equal("order", Expect.Refused(DeckPlanner.Plan(Deck, Rules, SomeLogs.Prices, [new OpenLine("A", Wide, BoardFeet.From(1)), new OpenLine("A", Wide, BoardFeet.From(1))])).What);
}
