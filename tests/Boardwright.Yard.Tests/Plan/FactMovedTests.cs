using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>Each kind of fact that moves between two inputs of one yard, and what is too small to be told.</summary>
public sealed class FactMovedTests
{
    private static PlanYard Yard => SmallYard.Made.Yard;

    private static PlanInput Input => SmallYard.Made.Input;

    [Fact]
    public void Same_input_moved_nothing() => Assert.Empty(Moved(Input));

    [Theory]
    [InlineData(11.0, false)]
    [InlineData(13.0, true)]
    [InlineData(-13.0, true)]
    public void Drying_is_told_from_half_a_day_on(double hours, bool told)
    {
        var moved = Moved(Input with { Stacks = [.. Input.Stacks.Select(stack => stack.Id == "S-07" ? Slower(stack, hours) : stack)] });

        Assert.Equal(told, moved.Any(fact => fact.About == "S-07"));
        Assert.DoesNotContain(moved, fact => fact.About != "S-07");
    }

    [Fact]
    public void Stack_that_is_new_or_gone_is_told()
    {
        var less = Input with { Stacks = [.. Input.Stacks.Where(stack => stack.Id != "S-01")] };

        Assert.Equal("S-01 is not in the yard any more", Assert.Single(Moved(less)).Words);
        Assert.Equal("S-01 is new", Assert.Single(FactMoved.Between(Yard with { Input = less }, SmallYard.State, Yard, SmallYard.State)).Words);
    }

    [Theory]
    [InlineData(0.995, false)]
    [InlineData(0.9, true)]
    public void Yield_is_told_from_one_in_a_hundred_on(double share, bool told) =>
        Assert.Equal(told, Moved(Input with { Stacks = [.. Input.Stacks.Select(stack => stack.Id == "S-07" ? stack with { Yield = BoardFeet.From(share * stack.Yield.Count) } : stack)] }).Count == 1);

    [Fact]
    public void Wish_to_keep_a_stack_out_of_kilns_is_told() =>
        Assert.Equal("S-07 is never to be kilned", Assert.Single(Moved(Input with { Stacks = [.. Input.Stacks.Select(stack => stack.Id == "S-07" ? stack with { NeverKiln = true } : stack)] })).Words);

    [Fact]
    public void Due_day_and_footage_of_an_order_are_told()
    {
        var first = Input.Orders[0];
        var moved = Moved(Input with { Orders = [first with { Due = first.Due.AddDays(3), Quantity = BoardFeet.From(first.Quantity.Count + 50.0) }, .. Input.Orders.Skip(1)] });

        Assert.Equal(2, moved.Count(fact => fact.About == first.Id));
        Assert.Contains(moved, fact => fact.Words.Contains("is due", StringComparison.Ordinal));
        Assert.Contains(moved, fact => fact.Words.Contains("asks", StringComparison.Ordinal));
    }

    [Fact]
    public void Wood_that_no_longer_serves_an_order_is_told()
    {
        var first = Input.Orders.First(order => order.Wood.Count > 0);
        var moved = Assert.Single(Moved(Input with { Orders = [.. Input.Orders.Select(order => order.Id == first.Id ? order with { Wood = [] } : order)] }));

        Assert.Equal(first.Id, moved.About);
        Assert.Contains("no longer there", moved.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Boiler_out_longer_is_told_and_concerns_it()
    {
        var boiler = Input.Heat.Boilers[0];
        var out1 = Input with { Heat = Input.Heat with { Boilers = [boiler with { Outages = [.. boiler.Outages, new(0, Input.Calendar.Steps - Input.Calendar.StepsPerDay)] }, .. Input.Heat.Boilers.Skip(1)] } };

        var moved = Assert.Single(Moved(out1));

        Assert.Equal(boiler.Id, moved.About);
        Assert.Contains("is out until", moved.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Day_on_which_nobody_loads_is_told()
    {
        var gone = Input.Calendar.CrewWindows[0];
        var moved = Assert.Single(Moved(Input with { Calendar = Input.Calendar with { CrewWindows = [.. Input.Calendar.CrewWindows.Skip(1)] } }));

        Assert.Equal(FactMoved.Everything, moved.About);
        Assert.Equal(FormattableString.Invariant($"nobody loads kilns on {Input.Calendar.DateOf(Input.Calendar.DayOf(gone.From)):d MMM}"), moved.Words);
    }

    [Theory]
    [InlineData(0.9, null)]
    [InlineData(2.0, "warmer")]
    [InlineData(-2.0, "colder")]
    public void Weather_is_told_from_one_degree_on(double warmer, string? word)
    {
        var moved = FactMoved.Between(Yard, SmallYard.State, Yard with { OutsideC = [.. Yard.OutsideC.Select(celsius => celsius + warmer)] }, SmallYard.State);

        Assert.Equal(word is not null, moved.Count == 1);
        Assert.All(moved, fact => Assert.Contains(word!, fact.Words, StringComparison.Ordinal));
    }

    [Fact]
    public void Day_gone_by_is_no_change_of_drying()
    {
        // The same yard begun a day later: each stack's times by day of loading, from that day on.
        var later = Input with
        {
            Calendar = Input.Calendar with { FirstDay = Input.Calendar.FirstDay.AddDays(1) },
            Stacks = [.. Input.Stacks.Select(stack => stack with { DryingTimes = [.. stack.DryingTimes.Select(time => time with { HalfByDay = [.. time.HalfByDay.Skip(1)], MostByDay = [.. time.MostByDay.Skip(1)] })] })],
        };

        Assert.DoesNotContain(Moved(later), fact => fact.Words.Contains("takes", StringComparison.Ordinal));
    }

    private static IReadOnlyList<FactMoved> Moved(PlanInput after) => FactMoved.Between(Yard, SmallYard.State, Yard with { Input = after }, SmallYard.State);

    private static Stack Slower(Stack stack, double hours) =>
        stack with { DryingTimes = [.. stack.DryingTimes.Select(time => time with { HalfByDay = [.. time.HalfByDay.Select(half => Elapsed.FromHours(half.Hours + hours))] })] };

    [Fact]
    public void Shorter_plan_is_no_day_without_people() =>
        Assert.Empty(Moved(Input with { Calendar = Input.Calendar with { Days = Input.Calendar.Days - 7, CrewWindows = [.. Input.Calendar.CrewWindows.Where(window => window.From < Input.Calendar.Steps - 7 * Input.Calendar.StepsPerDay)] } }));
}
