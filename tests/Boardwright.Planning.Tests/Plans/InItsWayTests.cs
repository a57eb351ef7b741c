namespace Boardwright.Planning.Tests.Plans;

/// <summary>What stands in an order's way, named, in the small yard's plan (invented).</summary>
public sealed class InItsWayTests
{
    private static readonly PlanInput Yard = SmallYard.Input with
    {
        Stacks = [.. SmallYard.Input.Stacks.Select(stack => stack.Id == "S-2" ? stack with { DryingTimes = [SmallYard.Drying("conventional", 108, 120)] } : stack)],
    };

    [Fact]
    public void Slower_stack_in_its_charge_is_named_with_whom_it_serves_and_the_days()
    {
        Assert.Equal("in K1 it waits for S-2 for O-2, which dries 1.5 days longer", Of(Plan(new Serving("O-2", "S-2", Quantities.BoardFeet.From(1)))));
        Assert.Equal("in K1 it waits for S-2 for stock, which dries 1.5 days longer", Of(Plan()));
    }

    [Fact]
    public void Charge_before_it_in_its_kiln_is_named_where_nothing_in_its_own_is_slower()
    {
        var plan = new Plan([new("K1", ["S-14"], null, 8, 0, 100), new("K1", ["S-1"], null, 104, 0, 300)], [new("O-1", "S-1", Quantities.BoardFeet.From(620)), new("O-4", "S-14", Quantities.BoardFeet.From(90))]);

        Assert.Equal("K1 dries S-14 for O-4 before", Of(plan));
    }

    [Fact]
    public void Who_has_its_wood_is_named_where_the_plan_gives_it_none()
    {
        var plan = new Plan([], [new("O-4", "S-1", Quantities.BoardFeet.From(90))]);

        Assert.Equal("S-1 goes to O-4", Of(plan));
    }

    [Fact]
    public void Nothing_is_named_where_nothing_stands_in_its_way() =>
        Assert.Null(Of(new Plan([new("K1", ["S-1"], null, 8, 0, 100)], [new("O-1", "S-1", Quantities.BoardFeet.From(620))])));

    private static Plan Plan(params Serving[] more) => new([new("K1", ["S-1", "S-2"], null, 32, 0, 176)], [new("O-1", "S-1", Quantities.BoardFeet.From(620)), .. more]);

    private static string? Of(Plan plan) => InItsWay.Of(new PlanTables(Yard), plan, 0);
}
