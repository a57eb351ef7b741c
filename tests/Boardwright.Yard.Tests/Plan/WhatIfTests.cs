using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>What-ifs of a small yard: each is a sound plan of the yard it supposes, and remedies are the cheapest that help.</summary>
public sealed class WhatIfTests
{
    private const double Little = 0.02; // work of a search, as a share of the usual
    private static readonly Lazy<IReadOnlyList<PlanTried>> Tried = new(() => [.. PlanWhatIf.Tries(SmallYard.State, SmallYard.Made, Little)]);

    [Fact]
    public void Worked_plan_as_a_row_counts_what_its_outlook_says()
    {
        var row = PlanWhatIf.Worked(SmallYard.Made);
        var outlook = SmallYard.Made.Answer.Outlook;

        Assert.Equal(outlook.Orders.Sum(order => order.LateDays), row.LateDays);
        Assert.Equal(outlook.Orders.Count(order => order.Met && order.LateDays == 0), row.OnTime);
        Assert.Equal(outlook.Score.LateCents / 100m, row.LateMoney);
        Assert.True(row.KilnDays > 0.0 && row.HeatMoney > 0m);
        Assert.Equal(outlook.Charges.Sum(charge => charge.HeatMoney), row.HeatMoney);
    }

    [Fact]
    public void Owners_plan_and_two_rules_of_thumb_are_laid_beside_it_and_break_no_rule()
    {
        var ways = PlanWhatIf.OtherWays(SmallYard.State, SmallYard.Made);

        Assert.Equal(3, ways.Count);
        Assert.StartsWith("Your own plan", ways[0].Words, StringComparison.Ordinal);
        Assert.All(ways, way => Assert.Empty(PlanCheck.Faults(way.Input, way.Plan, way.Outlook)));
        Assert.All(ways, way => Assert.True(SmallYard.Made.Answer.Outlook.Score <= way.Outlook.Score, way.Words));
        Assert.Equal(2, PlanWhatIf.OtherWays(SmallYard.State with { PlannedCharges = SmallYard.State.PlannedCharges.Clear() }, SmallYard.Made).Count);
    }

    [Fact]
    public void Each_supposition_is_planned_for_the_yard_it_supposes()
    {
        Assert.Contains(Tried.Value, one => one.Words == "B1 is back only on 23 Nov");
        Assert.Contains(Tried.Value, one => one.Words == "K1 is out until 8 Nov");
        Assert.All(Tried.Value, one => Assert.Empty(PlanCheck.Faults(one.Input, one.Plan, one.Outlook)));
        var out8 = Tried.Value.First(one => one.Words == "K1 is out until 8 Nov");
        Assert.DoesNotContain(out8.Plan.Charges, charge => charge.Kiln == "K1" && out8.Input.Calendar.DateOf(charge.LoadStep / out8.Input.Calendar.StepsPerDay) <= new DateOnly(2026, 11, 8));
    }

    [Fact]
    public void Cancelled_suppositions_end()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();

        // A search that is called off may still hand back the plan it started from, but plans nothing more.
        Assert.All(PlanWhatIf.Tries(SmallYard.State, SmallYard.Made, Little, source.Token), one => Assert.Empty(PlanCheck.Faults(one.Input, one.Plan, one.Outlook)));
    }

    [Fact]
    public void Remedy_of_a_late_order_is_the_cheapest_that_helps_it()
    {
        // Both kilns down until after the orders are due: nothing the search finds can have them ready in time.
        var book = SmallBook.Open();
        foreach (var kiln in book.State.Kilns.Keys)
            Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write([new NewEntry("Pell", new EquipmentDown(kiln, "fan motor", new(2026, 11, 20)))]));
        var made = Assert.IsType<Outcome<PlanMade>.Done>(PlanMade.Of(book.State, new(Days: 42, WorkShare: Little), cancel: TestContext.Current.CancellationToken)).Value;
        IReadOnlyList<PlanTried> tried = [.. PlanWhatIf.Tries(book.State, made, Little, TestContext.Current.CancellationToken)];
        var late = made.Answer.Outlook.Orders.Where(order => order.LateDays > 0).ToList();
        var remedies = PlanWhatIf.Remedies(made, tried);

        Assert.NotEmpty(late);
        Assert.Equal(late.Select(order => order.Order), remedies.Select(remedy => remedy.Order));
        Assert.All(remedies, remedy =>
        {
            var helping = tried.Where(one => one.IsRemedy && one.DaysLate(remedy.Order) < remedy.LateDays).ToList();
            Assert.Equal(helping.Count > 0, remedy.By is not null);
            Assert.True(remedy.By is null || helping.All(one => one.CostMoney >= remedy.By.CostMoney));
        });
        Assert.All(PlanWhatIf.Remedies(made, []), remedy => Assert.Null(remedy.By));
    }
}
