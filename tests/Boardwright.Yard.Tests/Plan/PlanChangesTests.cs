using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>What changed between two plans of the small yard (invented), and why.</summary>
public sealed class PlanChangesTests
{
    private static readonly Lazy<(YardState State, PlanMade Made, PlanChanges Changes)> Wetter = new(() => After(book => book.Write("Pell", new MoistureRead("S-07", MoistureMethod.OvenSections, MeanPct: 55.0, SdPct: 1.0, Boards: 12))));

    [Fact]
    public void Plan_of_the_same_book_changes_nothing()
    {
        var changes = PlanChanges.Of(SmallYard.State, SmallYard.Made, KeptPlan.Of(1, SmallYard.State, SmallYard.Made));

        Assert.NotNull(changes);
        Assert.True(changes.IsNothing);
        Assert.Empty(changes.Facts);
        Assert.Equal(changes.LateMoney, changes.LateMoneySameLoads);
    }

    [Fact]
    public void Wetter_reading_is_named_with_its_entry_as_the_reason_of_a_later_promise()
    {
        var (state, _, changes) = Wetter.Value;

        var fact = Assert.Single(changes.Facts, fact => fact.About == "S-07" && fact.Words.Contains("takes", StringComparison.Ordinal));
        Assert.Equal(state.Entries[^1], fact.Because);
        var moved = Assert.Single(changes.Promises, promise => promise.Order == "O-301");
        Assert.False(moved.IsBetter);
        Assert.Contains(fact, moved.Why);
        Assert.Equal(1, changes.Entries);
    }

    [Fact]
    public void Promise_of_wood_that_was_not_read_keeps_its_day_and_is_not_told()
    {
        Assert.DoesNotContain(Wetter.Value.Changes.Promises, promise => promise.Order == "O-302" && promise.Was == promise.Now);
    }

    [Fact]
    public void Plan_now_is_no_worse_than_the_earlier_loads_under_todays_facts()
    {
        var (_, made, changes) = Wetter.Value;

        Assert.True(changes.LateMoney <= changes.LateMoneySameLoads);
        Assert.Equal(made.Answer.Outlook.Score.LateCents / 100m, changes.LateMoney);
    }

    [Fact]
    public void Days_told_are_those_of_the_two_plans()
    {
        var (_, made, changes) = Wetter.Value;

        foreach (var moved in changes.Promises)
        {
            Assert.Equal(SmallYard.Made.Answer.Outlook.Orders.Single(order => order.Order == moved.Id).ReadyHalf, moved.Was);
            Assert.Equal(made.Answer.Outlook.Orders.Single(order => order.Order == moved.Id).ReadyHalf, moved.Now);
        }
    }

    [Fact]
    public void New_order_is_new_and_has_no_day_before()
    {
        var order = DemonstrationBook.Yard.Entries.Select(entry => entry.Fact).OfType<OrderTaken>().First(one => one.Order == "O-301") with { Order = "O-399" };
        var (state, _, changes) = After(book => book.Write("Oda", order));

        Assert.Contains(changes.Facts, fact => fact.About == order.Order && fact.Words.EndsWith("is new", StringComparison.Ordinal) && fact.Because == state.Entries[^1]);
        Assert.All(changes.Promises.Where(promise => promise.Order == order.Order), promise => Assert.Null(promise.Was));
    }

    [Fact]
    public void Kiln_that_went_down_is_named_with_its_last_day()
    {
        var (_, _, changes) = After(book => book.Write("Oda", new EquipmentDown("K1", "a fan bearing", DemonstrationBook.FirstDay.AddDays(9), DemonstrationBook.FirstDay.AddDays(12))));

        Assert.Contains(changes.Facts, fact => fact.About == "K1" && fact.Words.Contains("is out until", StringComparison.Ordinal) && fact.Because?.Fact is EquipmentDown);
    }

    [Fact]
    public void Plan_of_a_yard_that_was_corrected_out_of_it_is_not_compared()
    {
        var foreign = KeptPlan.Of(1, SmallYard.State, SmallYard.Made) with { Plan = new([new("K9", ["S-07"], null, 0, 0, 30)], []) };

        Assert.Null(PlanChanges.Of(SmallYard.State, SmallYard.Made, foreign));
    }

    [Fact]
    public void Words_count_what_moved()
    {
        var changes = Wetter.Value.Changes with { Loads = [new("S-01", ("K1", DemonstrationBook.FirstDay), null, false)], Promises = [new("O-301", "O-301", DemonstrationBook.FirstDay, DemonstrationBook.FirstDay, null, null, [], [], [], [])] };

        Assert.Equal("Since the plan of this morning: 1 promise later, 1 stack loaded otherwise. What changed and why.", changes.Words(DemonstrationBook.FirstDay));
    }

    private static (YardState State, PlanMade Made, PlanChanges Changes) After(Func<YardBook, Outcome<IReadOnlyList<Entry>>> write)
    {
        var book = SmallBook.Open();
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(write(book));
        var made = Assert.IsType<Outcome<PlanMade>.Done>(PlanMade.Of(book.State, new(Days: 42, WorkShare: 0.02, Start: SmallYard.Made.Answer.Plan))).Value;
        return (book.State, made, PlanChanges.Of(book.State, made, KeptPlan.Of(1, SmallYard.State, SmallYard.Made))!);
    }
}
