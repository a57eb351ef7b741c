using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.LogCommands;

public sealed class OrdersTests
{
    private const string Saw = "log saw demo/examples/log-red-oak.json --prices demo/examples/prices-red-oak.csv";

    [Fact]
    public void Orders_pay_until_their_line_is_full_and_never_beyond()
    {
        var (plain, ordered) = (Answers.Json(Saw), Answers.Json($"{Saw} --orders demo/examples/orders-red-oak.csv"));
        var boards = ordered.GetProperty("boards").EnumerateArray().ToList();
        var tops = ordered.GetProperty("orders").EnumerateArray().Single(line => line.GetProperty("order").GetString() == "bench tops");

        // 40 bf of the line at 4.60 instead of 3.75: 34 money, as no other plan of the log can pass it.
        Assert.Equal(34.0, tops.GetProperty("premium_money").GetDouble(), 1e-6);
        Assert.Equal(40.0, tops.GetProperty("filled_bf").GetDouble(), 1e-9);
        Assert.Equal(plain.GetProperty("value_money").GetDouble() + 34.0, ordered.GetProperty("value_money").GetDouble(), 1e-6);
        Assert.Equal(ordered.GetProperty("value_money").GetDouble(), boards.Sum(board => board.GetProperty("value_money").GetDouble()), 1e-6);
        Assert.True(ordered.GetProperty("orders_bound_money").GetDouble() >= ordered.GetProperty("value_money").GetDouble() - 1e-9);
        Assert.Equal(System.Text.Json.JsonValueKind.Null, plain.GetProperty("orders").ValueKind);
    }

    [Fact]
    public void Deck_fills_each_order_once_and_shows_its_gap()
    {
        var deck = Answers.Json("log deck demo/examples/deck-red-oak.json --prices demo/examples/prices-red-oak.csv --orders demo/examples/orders-red-oak.csv --pattern live --turns 4");

        Assert.Equal(["A-1", "A-2", "A-3"], deck.GetProperty("logs").EnumerateArray().Select(log => log.GetProperty("log").GetString()));
        Assert.All(deck.GetProperty("orders").EnumerateArray(), line => Assert.InRange(line.GetProperty("filled_bf").GetDouble(), 0.0, line.GetProperty("open_bf").GetDouble() + 1e-9));
        Assert.Equal(deck.GetProperty("value_money").GetDouble(), deck.GetProperty("logs").EnumerateArray().Sum(log => log.GetProperty("value_money").GetDouble()), 1e-6);
        Assert.InRange(deck.GetProperty("gap_pct").GetDouble(), 0.0, 5.0);
    }

    [Fact]
    public void Stacks_kept_for_orders_leave_nothing_wanted_and_without_them_logs_are_given_to_lines()
    {
        var state = DemonstrationBook.Open().State;

        Assert.Empty(LogDeck.Of(state, OrdersWanted.Missing).Woods);
        var deck = LogDeck.Of(state, OrdersWanted.Whole);
        Assert.Contains(deck.Woods, wood => wood.Species == "northern red oak");
        foreach (var wood in deck.Woods)
        {
            Assert.All(wood.Plan.Fills, fill => Assert.InRange(fill.Filled.Count, 0.0, fill.Line.Open.Count + 1e-6));
            Assert.True(wood.Plan.BoundMoney >= wood.Plan.ValueMoney - 1e-6);
            Assert.DoesNotContain(wood.Logs, log => log.PlannedFor == "hold" || !log.Proven);
        }
    }

    [Fact]
    public void Log_for_orders_is_worth_at_least_as_much_and_says_what_it_fills()
    {
        var state = DemonstrationBook.Open().State;
        LogCutting Cut(OrdersWanted wanted) => LogCutting.Of(state, state.Logs["L-010"], wanted: wanted) is Outcome<LogCutting>.Done(var cut) ? cut : throw new InvalidOperationException();

        var (none, whole) = (Cut(OrdersWanted.None), Cut(OrdersWanted.Whole));

        Assert.Equal("O-303", Assert.Single(whole.Fills).Line.Name);
        Assert.Equal(none.Plan.ValueMoney + whole.Fills[0].PremiumMoney, whole.Plan.ValueMoney, none.Plan.ValueMoney * 0.02);
        Assert.True(whole.Plan.ValueMoney > none.Plan.ValueMoney);
        Assert.Equal(none.Plan.ValueMoney, Cut(OrdersWanted.Missing).Plan.ValueMoney, 1e-9);
    }

    [Theory]
    [InlineData("order,thickness_quarters,width_min_mm,length_min_m,price_money_per_bf,open_bf\nA,8,250,2.4,4.6,-3\n", "open_bf")]
    [InlineData("order,thickness_quarters,width_min_mm,length_min_m,price_money_per_bf,open_bf\n,8,250,2.4,4.6,3\n", "order")]
    [InlineData("order,thickness_quarters,width_min_mm,length_min_m,price_money_per_bf,open_bf\nA,8,250,2.4,4.6,3\nA,4,250,2.4,4.6,4\n", "open_bf of A")]
    public void Order_rows_that_cannot_be_are_refused(string table, string where) =>
        Assert.Contains(where, Answers.Refusal($"{Saw} --orders o.csv", ("o.csv", table)).What, StringComparison.Ordinal);
}
