using System.Collections.Immutable;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>The one line that lays a load of the owner's beside the worked plan.</summary>
public sealed class OwnLoadTests
{
    // The line alone; what the plans come to follows it.
    private static readonly SeasonNow Line = SmallYard.Season with { Beside = null };

    private static readonly SeasonCharge Cherry = Line.ChargeOf("S-07")!;

    [Fact]
    public void Same_kiln_day_and_company_need_no_words()
    {
        var own = new PlannedCharge("X-1", Cherry.Kiln, Cherry.In.Day(), Cherry.Out.Day(), Tags(Cherry), null, 1);

        Assert.Null(OwnLoad.Beside(SmallYard.State, own, Line));
    }

    [Fact]
    public void Another_day_is_told_with_both_days()
    {
        var own = new PlannedCharge("X-1", Cherry.Kiln, Cherry.In.Day().AddDays(3), Cherry.Out.Day(), Tags(Cherry), null, 1);

        Assert.Equal($"Your plan: {Cherry.Kiln} on {Cherry.In.AddDays(3):d MMM}. Worked plan: {Cherry.Kiln} on {Cherry.In:d MMM}.", OwnLoad.Beside(SmallYard.State, own, Line));
    }

    [Fact]
    public void Stacks_that_go_apart_are_told_one_by_one()
    {
        var own = new PlannedCharge("X-1", "K1", new(2026, 11, 20), new(2026, 12, 1), ["S-01", "S-07"], null, 1);
        var cherryOnly = Only([Cherry with { Stacks = [.. Cherry.Stacks.Where(stack => stack.Tag == "S-07")] }]);

        Assert.EndsWith($"Worked plan: S-07 in {Cherry.Kiln} on {Cherry.In:d MMM}; S-01 in no kiln.", OwnLoad.Beside(SmallYard.State, own, cherryOnly), StringComparison.Ordinal);
    }

    [Fact]
    public void Other_company_in_the_same_kiln_on_the_same_day_is_another_load()
    {
        // A charge of two stacks, whatever the plan of the day puts together.
        var two = Cherry with { Stacks = [Cherry.Stacks.First(stack => stack.Tag == "S-07"), SmallYard.State.Stacks["S-01"]] };
        var season = Only([two]);
        var own = new PlannedCharge("X-1", Cherry.Kiln, Cherry.In.Day(), Cherry.Out.Day(), ["S-07"], null, 1);

        Assert.Contains(", with ", OwnLoad.Beside(SmallYard.State, own, season), StringComparison.Ordinal);
        Assert.EndsWith("Worked plan: the same kiln and day, with S-01.", OwnLoad.Beside(SmallYard.State, own, season, "S-07"), StringComparison.Ordinal);
    }

    [Fact]
    public void Stack_that_stays_in_the_yard_goes_in_no_kiln() =>
        Assert.EndsWith("Worked plan: in no kiln.", OwnLoad.Beside(SmallYard.State, SmallYard.State.PlannedCharges["C-1"], Only([])), StringComparison.Ordinal);

    [Fact]
    public void Wood_that_was_dried_meanwhile_is_planned_no_more()
    {
        var yard = SmallYard.State with { Stacks = SmallYard.State.Stacks.SetItem("S-11", SmallYard.State.Stacks["S-11"] with { Stage = StackStage.KilnDried }) };

        Assert.Null(OwnLoad.Beside(yard, yard.PlannedCharges["D-1"], Only([])));
        Assert.DoesNotContain(PlansBeside.Of(yard, SmallYard.Made)!.Loads, load => load.Yours?.StartsWith("D-1", StringComparison.Ordinal) == true);
    }

    [Fact]
    public void Plan_that_is_still_being_worked_out_is_told_as_such_and_one_not_asked_for_is_not()
    {
        var own = SmallYard.State.PlannedCharges["C-1"];

        Assert.Equal("Your plan: K1 on 12 Nov. The season’s plan is still being worked out.", OwnLoad.Beside(SmallYard.State, own, SeasonNow.StillWorked));
        Assert.Null(OwnLoad.Beside(SmallYard.State, own, SeasonNow.NotAsked));
    }

    private static SeasonNow Only(IReadOnlyList<SeasonCharge> charges) => Line with { Sheet = Line.Sheet! with { Kilns = [("K1", charges)] } };

    private static ImmutableList<string> Tags(SeasonCharge charge) => [.. charge.Stacks.Select(stack => stack.Tag)];

    [Fact]
    public void Line_ends_with_what_both_plans_come_to()
    {
        var own = SmallYard.State.PlannedCharges.Values.First(load => OwnLoad.Beside(SmallYard.State, load, Line) is not null);

        Assert.Equal($"{OwnLoad.Beside(SmallYard.State, own, Line)} {SmallYard.Season.Beside!.Compared}", OwnLoad.Beside(SmallYard.State, own, SmallYard.Season));
    }
}
