using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>A load planned by hand that cannot be, told without a worked plan, on the demonstration yard (invented).</summary>
public sealed class LoadInTheWayTests
{
    private static readonly YardState State = DemonstrationBook.Yard;

    private static readonly SeasonNow Season = SeasonNow.Of(State, DemonstrationPlan.Made()) with { Number = 4 };

    private static readonly PlannedCharge Ash = State.PlannedCharges["D-43"];

    [Fact]
    public void Vacuum_kiln_is_closed_to_long_white_oak() =>
        Assert.Equal("S-11 is white oak in long boards, which let no vapour through: the vacuum kiln K3 is closed to it", LoadInTheWay.Of(State, State.PlannedCharges["V-20"]));

    [Fact]
    public void Kiln_is_taken_until_the_charge_inside_is_out()
    {
        var inside = State.Kilns["K1"].Charge!;
        var outOn = ChargeEnd.OutDay(State, State.Charges[inside])!.Value;

        Assert.Equal($"{inside} is in K1 until about {outOn:d MMM}", LoadInTheWay.Of(State, Ash with { Kiln = "K1", InOn = outOn.AddDays(-1) }));
        Assert.Null(LoadInTheWay.Of(State, Ash with { Kiln = "K1", InOn = outOn }));
    }

    [Fact]
    public void Kiln_that_is_down_takes_nothing_before_it_is_expected_back()
    {
        var empty = State.Kilns["K2"] with { Charge = null, Outages = [new Outage(1, new(2026, 11, 1), null, "fan", new(2026, 11, 20), null)] };
        var yard = State with { Kilns = State.Kilns.SetItem("K2", empty) };

        Assert.Equal("K2 is down (fan), expected back 20 Nov", LoadInTheWay.Of(yard, Ash with { InOn = new(2026, 11, 19) }));
        Assert.Null(LoadInTheWay.Of(yard, Ash with { InOn = new(2026, 11, 20) }));
    }

    [Fact]
    public void Day_that_has_gone_by_is_named()
    {
        var yard = State with { Kilns = State.Kilns.SetItem("K2", State.Kilns["K2"] with { Charge = null }) };

        Assert.Equal("its day has gone by", LoadInTheWay.Of(yard, Ash with { InOn = State.Today.AddDays(-1) }));
    }

    [Fact]
    public void Stack_whose_load_cannot_be_is_told_of_the_worked_one()
    {
        var unplanned = Sheet(SeasonNow.NotAsked).Next;

        Assert.Equal("Plan another load for S-11.", unplanned.Do);
        Assert.StartsWith("Your load V-20, K3 on 7 Nov, cannot be: S-11 is white oak", unplanned.Why, StringComparison.Ordinal);
        Assert.Equal("/charges/new?stacks=S-11", unplanned.Path);

        var (worked, charge) = (Sheet(Season).Next, Season.ChargeOf("S-11")!);
        Assert.StartsWith($"Load it in {charge.Kiln} on {charge.In:d MMM}", worked.Do, StringComparison.Ordinal);
        Assert.Matches("^By plan 4, the worked one, for [^.]*O-302[^.]*\\. Your load V-20", worked.Why);
        Assert.StartsWith($"/charges/new?kiln={charge.Kiln}&stacks=", worked.Path, StringComparison.Ordinal);
    }

    /// <summary>A stack that nobody planned by hand is told to go where the season sends it, not to stay on stickers.</summary>
    [Fact]
    public void Stack_that_only_the_worked_plan_loads_is_told_so()
    {
        var own = State.PlannedCharges.Values.SelectMany(planned => planned.Stacks).ToHashSet();
        var loaded = Season.Sheet!.Kilns.SelectMany(row => row.Charges).Where(charge => charge.Tag is null).SelectMany(charge => charge.Stacks.Select(stack => (charge.Kiln, charge.In, stack.Tag))).Where(one => !own.Contains(one.Tag)).ToList();

        Assert.NotEmpty(loaded);
        Assert.All(loaded, one => Assert.Contains($"{one.Kiln} on {one.In:d MMM}", Assert.IsType<Quantities.Outcome<StackSheet>.Done>(StackSheet.Of(State, one.Tag, null, Season)).Value.Next.Do, StringComparison.Ordinal));
    }

    private static StackSheet Sheet(SeasonNow season) => Assert.IsType<Quantities.Outcome<StackSheet>.Done>(StackSheet.Of(State, "S-11", null, season)).Value;
}
