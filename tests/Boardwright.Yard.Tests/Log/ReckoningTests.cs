using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.LogCommands;

/// <summary>From the boards on paper to what may be paid: every line adds up to the next (yard invented).</summary>
public sealed class ReckoningTests
{
    private static readonly YardState State = DemonstrationBook.Yard;

    public static TheoryData<string> Priced => [.. State.Logs.Values.Where(log => log is { IsSawn: false, Proven: true, Owner: "mill" }).Select(log => log.Tag).Order(StringComparer.Ordinal).Take(12), "L-039"];

    [Theory]
    [MemberData(nameof(Priced))]
    public void Every_line_adds_up_to_the_next_and_the_last_leaves_the_margin(string tag)
    {
        var log = State.Logs[tag];
        var worth = Assert.IsType<Outcome<LogWorth>.Done>(YardLog.Worth(State, log)).Value;
        var cutting = Assert.IsType<Outcome<LogCutting>.Done>(LogCutting.Of(State, log)).Value;

        var way = Assert.IsType<Outcome<LogReckoning>.Done>(LogReckoning.Of(State, log, cutting)).Value;

        Assert.Equal(Math.Round(cutting.Plan.ValueMoney), way.Steps[0].LeftMoney);
        Assert.All(way.Steps.Zip(way.Steps.Skip(1)), pair => Assert.Equal(pair.Second.LeftMoney, pair.First.LeftMoney + (pair.Second.ChangeMoney ?? 0.0)));
        Assert.Equal(Math.Round(worth.Money), way.Steps[^3].LeftMoney);
        Assert.Equal(Math.Round(worth.Money - (0.15 * worth.Sold.Count * worth.PriceMoneyPerBf)), way.Steps[^1].LeftMoney);
        Assert.True(way.MostToPay.Low <= way.MostToPay.Likely && way.MostToPay.Likely <= way.MostToPay.High);
    }

    // L-039 by hand: 366.2 bf of slabs at 11.00; 221.4 bf of scale x 1.05 off the saw; x 0.80 sold at 5.20; less 1.70 a bf and 0.60 x 45; less 15 % of 969.
    [Fact]
    public void A_log_for_slabs_is_told_as_boards_first_and_as_slabs_beside()
    {
        var log = State.Logs["L-039"];
        var way = Assert.IsType<Outcome<LogReckoning>.Done>(LogReckoning.Of(State, log, Assert.IsType<Outcome<LogCutting>.Done>(LogCutting.Of(State, log)).Value)).Value;

        Assert.Equal([4028.0, 1904.0, 1208.0, 969.0, 652.0, 625.0, 625.0, 480.0, 480.0], way.Steps.Select(step => step.LeftMoney));
        Assert.Contains("slab has to find its buyer", way.Steps[1].Words, StringComparison.Ordinal);
        Assert.InRange(way.AsSlabs!.Value, (186.2 * 9.3) - 28.0, (186.4 * 9.3) - 26.0);
    }

    [Fact]
    public void A_tree_on_the_telephone_is_reckoned_the_same_way_with_its_haul()
    {
        var offer = Assert.IsType<Outcome<LogOffer>.Done>(LogOffer.Work(State, new("northern red oak", "94", null, "8", "22", null, "yard"))).Value;

        var way = LogReckoning.Of(State, offer);

        Assert.Contains(way.Steps, step => step is { Words: "Haul", ChangeMoney: -222.0 });
        Assert.All(way.Steps.Zip(way.Steps.Skip(1)), pair => Assert.Equal(pair.Second.LeftMoney, pair.First.LeftMoney + (pair.Second.ChangeMoney ?? 0.0)));
        Assert.Equal(offer.Worth[1].MostToPay(Share.FromPercent(15.0)), way.MostToPay.Likely, 1e-9);
        Assert.Null(way.AsSlabs);
    }
}
