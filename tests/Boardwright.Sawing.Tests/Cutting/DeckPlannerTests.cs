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
        var plan = Expect.Done(Planned([]));

        Assert.Equal(Deck.Sum(log => SomeLogs.Plan(log, SawPattern.Live, Rules).ValueMoney), plan.ValueMoney, 6);
        Assert.Equal(0.0, plan.Gap.Fraction, 6);
    }

    [Fact]
    public void A_line_that_never_fills_pays_its_price_for_every_board_it_takes()
    {
        var plan = Expect.Done(Planned([new OpenLine("A", BoardFeet.From(5000))]));

        Assert.Equal(Deck.Sum(log => SomeLogs.Plan(log, SawPattern.Live, Rules, [.. SomeLogs.Prices, Wide]).ValueMoney), plan.ValueMoney, 6);
        Assert.Equal(0.0, plan.Gap.Fraction, 6);
    }

    [Theory, InlineData(20.0), InlineData(60.0), InlineData(120.0)]
    public void A_line_is_filled_no_further_than_it_is_open_and_the_bound_holds(double open)
    {
        var plan = Expect.Done(Planned([new OpenLine("A", BoardFeet.From(open))]));
        var (none, all) = (Expect.Done(Planned([])).ValueMoney, Deck.Sum(log => SomeLogs.Plan(log, SawPattern.Live, Rules, [.. SomeLogs.Prices, Wide]).ValueMoney));

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
        double[] bounds = [.. new[] { 0.0, 30.0, 90.0, 300.0 }.Select(open => Expect.Done(Planned([new OpenLine("A", BoardFeet.From(open))])) is var plan ? plan.ValueMoney : 0.0)];

        Assert.All(bounds.Zip(bounds.Skip(1)), pair => Assert.True(pair.Second >= pair.First * 0.995, $"{pair}"));
    }

    [Fact]
    public void Two_lines_of_one_name_are_refused() =>
        Assert.Equal("order", Expect.Refused(Planned([new OpenLine("A", BoardFeet.From(1)), new OpenLine("A", BoardFeet.From(1))])).What);

    [Fact]
    public void A_row_of_an_order_that_is_not_open_is_refused() =>
        Assert.Equal(("order", "B"), Expect.Refused(DeckPlanner.Plan([new DeckLog(Deck[0], Rules, [Wide with { Order = "B" }])], [new OpenLine("A", BoardFeet.From(1))])) is var refusal ? (refusal.What, refusal.Given) : default);

    [Fact]
    public void Boards_name_the_line_that_takes_them_and_add_up_to_the_value_of_the_deck()
    {
        var plan = Expect.Done(Planned([new OpenLine("A", BoardFeet.From(60.0))]));

        Assert.Equal(plan.ValueMoney, plan.Plans.Sum(one => one!.ValueMoney), 6);
        Assert.InRange(plan.Plans.SelectMany(one => one!.Boards).Where(board => board.Order == "A").Sum(board => board.Footage.Count), plan.Fills[0].Filled.Count - 1e-9, 1000.0);
        Assert.All(plan.Plans, one => Assert.True(one!.UpperBoundMoney >= one.ValueMoney));
        Assert.Equal(60.0, plan.Fills[0].Filled.Count, 6);
    }

    // Every choice of the plans each log can have with the line or without it, by trying all: the deck's is not behind.
    [Theory, InlineData(25.0), InlineData(45.0), InlineData(90.0)]
    public void No_choice_among_plans_with_and_without_the_line_is_better(double open)
    {
        OpenLine[] lines = [new("A", BoardFeet.From(open))];
        var plan = Expect.Done(Planned(lines));
        var logs = Logs(lines);
        var filling = new LineFilling(logs, lines);
        CuttingPlan[][] each = [.. Deck.Select(log => new[] { SomeLogs.Plan(log, SawPattern.Live, Rules), SomeLogs.Plan(log, SawPattern.Live, Rules, [.. SomeLogs.Prices, Wide with { Order = "A" }]) })];
        var best = Enumerable.Range(0, 1 << Deck.Count).Max(choice => filling.Of([.. each.Select((plans, i) => plans[(choice >> i) & 1])]).Value);

        Assert.True(plan.ValueMoney >= best - 1e-6, $"{plan.ValueMoney} {best}");
        Assert.True(plan.BoundMoney >= best - 1e-6);
    }

    private static DeckLog[] Logs(IReadOnlyList<OpenLine> lines) => [.. Deck.Select(log => new DeckLog(log, Rules, [.. SomeLogs.Prices, .. lines.Select(line => Wide with { Order = line.Name })]))];

    private static Outcome<DeckPlan> Planned(IReadOnlyList<OpenLine> lines) => DeckPlanner.Plan(Logs(lines), lines, SawPattern.Live);
}
