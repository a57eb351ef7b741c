using Boardwright.Testing;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>Which plan a newer one begins from and is compared with.</summary>
public sealed class KeptPlanTests
{
    private static readonly DateOnly Monday = DemonstrationBook.FirstDay;

    [Fact]
    public void Nothing_is_before_the_first_plan()
    {
        Assert.Null(KeptPlan.Before([], SmallYard.State));
        Assert.Null(KeptPlan.Newest([], SmallYard.State));
    }

    [Fact]
    public void Last_plan_of_an_earlier_day_is_the_one_compared_with()
    {
        KeptPlan[] kept = [Plan(1, Monday.AddDays(-2)), Plan(2, Monday.AddDays(-1)), Plan(3, Monday)];

        Assert.Same(kept[1], KeptPlan.Before(kept, SmallYard.State));
        Assert.Same(kept[2], KeptPlan.Newest(kept, SmallYard.State));
    }

    [Fact]
    public void First_plan_of_today_is_compared_with_where_there_is_none_of_an_earlier_day()
    {
        KeptPlan[] kept = [Plan(1, Monday), Plan(2, Monday)];

        Assert.Same(kept[0], KeptPlan.Before(kept, SmallYard.State));
    }

    [Fact]
    public void Plan_of_the_book_as_it_stands_is_not_compared_with_itself()
    {
        Assert.Null(KeptPlan.Before([KeptPlan.Of(1, SmallYard.State, SmallYard.Made)], SmallYard.State));
    }

    [Fact]
    public void Plans_of_a_later_day_or_a_longer_book_are_of_another_book()
    {
        KeptPlan[] kept = [Plan(1, Monday.AddDays(1)), Plan(SmallYard.State.Entries.Count + 1, Monday)];

        Assert.Null(KeptPlan.Before(kept, SmallYard.State));
        Assert.Null(KeptPlan.Newest(kept, SmallYard.State));
    }

    [Fact]
    public void Two_plans_are_kept_the_newest_and_the_one_it_is_compared_with()
    {
        KeptPlan[] kept = [Plan(1, Monday.AddDays(-1)), Plan(2, Monday)];
        var newest = Plan(3, Monday);

        Assert.Equal([kept[0], newest], KeptPlan.After(kept, SmallYard.State, newest));
        Assert.Equal([newest], KeptPlan.After([], SmallYard.State, newest));
    }

    [Fact]
    public void Book_is_read_as_it_stood()
    {
        var book = SmallBook.Open();
        var before = KeptPlan.Of(1, book.State, SmallYard.Made);
        book.Write("Pell", new StackMoved("S-07", book.State.Places.Keys.Last()));

        var then = before.StateThen(book.State);

        Assert.Equal(SmallYard.State.Stacks["S-07"].Place, then.Stacks["S-07"].Place);
        Assert.NotEqual(then.Stacks["S-07"].Place, book.State.Stacks["S-07"].Place);
    }

    private static KeptPlan Plan(int entries, DateOnly day) => new(1, entries, day, 42, new Planning.Plan([], []));
}
