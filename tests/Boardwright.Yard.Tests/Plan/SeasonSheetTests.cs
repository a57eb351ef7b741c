using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>What the pages of season, promises and boiler show of the demonstration yard (invented).</summary>
public sealed class SeasonSheetTests
{
    private static readonly SeasonSheet Sheet = SeasonSheet.Of(DemonstrationBook.Yard, DemonstrationPlan.Made());

    [Fact]
    public void Heat_of_the_season_adds_up_to_the_plans_own()
    {
        var made = DemonstrationPlan.Made();

        Assert.All(Sheet.Heat.Zip(made.Answer.Outlook.Heat), day => Assert.Equal(day.Second.Demand.Kilowatts, day.First.KilowattsByUse.Skip(1).Sum(), 6));
        Assert.Equal(30.0, Sheet.Heat[0].GivenKw, 6);
        Assert.Equal((30.0, 80.0), (Sheet.Heat[14].GivenKw, Sheet.Heat[14].PerhapsKw)); // 16 November: the boiler that is down is expected, at the latest on the 23rd
        Assert.Equal((80.0, 80.0), (Sheet.Heat[21].GivenKw, Sheet.Heat[21].PerhapsKw));
    }

    [Fact]
    public void Refused_order_has_three_ways_out_none_of_which_is_its_own_day()
    {
        var ways = WaysOut.Of(DemonstrationBook.Yard, DemonstrationPlan.Made(), "O-309", new Dictionary<string, OrderCover>());

        Assert.Equal(3, ways.Count);
        Assert.Contains("before", ways[0].Do, StringComparison.Ordinal);
        Assert.All(ways.Skip(1), way => Assert.StartsWith("Offer", way.Do, StringComparison.Ordinal));
        Assert.Equal(PromiseStanding.Cannot, Sheet.Promises.First(promise => promise.Line.Id == "O-309").Standing);
    }

    [Fact]
    public void Earliest_promise_is_never_later_than_the_plan_has_it()
    {
        var made = DemonstrationPlan.Made();

        Assert.All(made.Input.Orders.Zip(made.Answer.Outlook.Orders).Where(order => order.Second.Met), order => Assert.True(EarliestPromise.Of(made.Input, order.First).Half <= order.Second.ReadyHalf));
    }

    [Fact]
    public void Boiler_out_as_a_question_takes_its_heat_away_on_those_days_only()
    {
        var sheet = Assert.IsType<Outcome<BoilerSheet>.Done>(BoilerSheet.Of(DemonstrationBook.Yard, 42, [new("B2", new(2026, 11, 3), new(2026, 11, 4))])).Value;

        Assert.Equal([30.0, 0.0, 0.0, 30.0], sheet.ByDay.Take(4).Select(day => day.CapacityKw));
        Assert.True(sheet.ByDay[1].ShortKw > 15.0);
        Assert.Equal("B9", Assert.IsType<Outcome<BoilerSheet>.Refused>(BoilerSheet.Of(DemonstrationBook.Yard, 42, [new("B9", new(2026, 11, 3), new(2026, 11, 4))])).Reasons[0].Given);
    }

    [Fact]
    public void Customers_own_wood_goes_back_whole()
    {
        var made = DemonstrationPlan.Made();
        var order = made.Input.Orders.ToList().FindIndex(one => one.Id == "O-312");

        Assert.Null(made.SpareBf(order));
        Assert.Equal(1.0, made.Enough[order]);
    }

    [Fact]
    public void New_order_is_answered_by_what_the_plan_dries_and_by_what_it_could()
    {
        PromiseAnswer Ask(string species, string thickness, string footage, string by) =>
            Assert.IsType<Outcome<PromiseAnswer>.Done>(PromiseAnswer.Of(DemonstrationBook.Yard, DemonstrationPlan.Made(), species, thickness, footage, by)).Value;

        Assert.Equal(Boardwright.Yard.Book.Facts.Answer.No, Ask("northern red oak", "4/4", "5000bf", "2026-12-20").Answer);
        Assert.NotEqual(Boardwright.Yard.Book.Facts.Answer.No, Ask("northern red oak", "4/4", "300", "2026-12-31").Answer);
        Assert.Equal(Boardwright.Yard.Book.Facts.Answer.No, Ask("northern red oak", "4/4", "300", "2026-11-03").Answer);
        Assert.Equal("by", Assert.IsType<Outcome<PromiseAnswer>.Refused>(PromiseAnswer.Of(DemonstrationBook.Yard, DemonstrationPlan.Made(), "basswood", "4/4", "10", "2026-10-01")).Reasons[0].What);
    }
}
