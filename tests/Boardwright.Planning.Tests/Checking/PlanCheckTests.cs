using Boardwright.Quantities;

namespace Boardwright.Planning.Tests;

public sealed class PlanCheckTests
{
    private static readonly PlanInput Input = SmallYard.Input;
    private static readonly Plan Sound = SmallYard.Plan;

    [Fact]
    public void The_small_yard_is_sound_input() => Assert.Empty(PlanInputCheck.Refusals(Input));

    [Fact]
    public void A_sound_plan_has_no_fault() => Assert.Empty(PlanCheck.Faults(Input, Sound, PlanOutlook.Of(Input, Sound)));

    public static TheoryData<string, PlanFaultKind, Plan> Spoilt() => new()
    {
        { "unknown kiln", PlanFaultKind.Unknown, With(1, c => c with { Kiln = "K9" }) },
        { "unknown stack", PlanFaultKind.Unknown, With(1, c => c with { Stacks = ["S-99"] }) },
        { "unknown warm-up", PlanFaultKind.Unknown, With(1, c => c with { WarmUp = 2 }) },
        { "unknown order", PlanFaultKind.Unknown, Serving("O-99", "S-1", 10) },
        { "after the last day", PlanFaultKind.Unknown, With(1, c => c with { UnloadStep = 14 * 24 - 1 }) },
        { "no stacks", PlanFaultKind.EmptyCharge, With(1, c => c with { Stacks = [] }) },
        { "stack in two charges", PlanFaultKind.Twice, With(1, c => c with { Stacks = ["S-1", "S-4"] }) },
        { "started charge twice", PlanFaultKind.Twice, Sound with { Charges = [.. Sound.Charges, Sound.Charges[0]] } },
        { "started charge left out", PlanFaultKind.StartedChanged, Sound with { Charges = [.. Sound.Charges.Skip(1)], Servings = [] } },
        { "started charge with other stacks", PlanFaultKind.StartedChanged, With(0, c => c with { Stacks = ["S-14"] }) },
        { "started charge in another kiln", PlanFaultKind.StartedChanged, With(0, c => c with { Kiln = "K1" }) },
        { "never kiln", PlanFaultKind.NeverKiln, Alone("K1", "S-3") },
        { "kind without drying time", PlanFaultKind.WrongKind, Alone("K1", "S-4") },
        { "longer than the kiln", PlanFaultKind.TooLong, Alone("K1", "S-11") },
        { "kiln not hot enough", PlanFaultKind.TooCool, Sound with { Charges = [.. Sound.Charges, new("K2", ["S-12"], null, 80, 0, 251)] } },
        { "over capacity", PlanFaultKind.TooFull, With(1, c => c with { Stacks = ["S-1", "S-2", "S-14"] }) },
        { "matched set torn", PlanFaultKind.SetTorn, With(2, c => c with { Stacks = ["S-4"] }) },
        { "other family", PlanFaultKind.Sharing, With(1, c => c with { Stacks = ["S-1", "S-8"] }) },
        { "too thick beside thin", PlanFaultKind.Sharing, With(1, c => c with { Stacks = ["S-1", "S-9"] }) },
        { "too wet beside dry", PlanFaultKind.Sharing, With(1, c => c with { Stacks = ["S-1", "S-10"] }) },
        { "owner who does not share", PlanFaultKind.Sharing, With(1, c => c with { Stacks = ["S-1", "S-7"] }) },
        { "loaded before work begins", PlanFaultKind.NoCrew, With(1, c => c with { LoadStep = 31 }) },
        { "loaded too late in the day to finish", PlanFaultKind.NoCrew, With(1, c => c with { LoadStep = 37 }) },
        { "unloaded on a Sunday", PlanFaultKind.NoCrew, With(1, c => c with { UnloadStep = 6 * 24 + 9 }) },
        { "crew at two kilns", PlanFaultKind.CrewClash, With(2, c => c with { UnloadStep = 178 }) },
        { "kiln taken twice", PlanFaultKind.KilnClash, Sound with { Charges = [.. Sound.Charges, new("K1", ["S-14"], null, 8, 0, 104)] } },
        { "before the stack can be had", PlanFaultKind.TooEarly, Alone("K1", "S-13") },
        { "unloaded wet", PlanFaultKind.NotDry, With(1, c => c with { UnloadStep = 104 }) },
        { "started charge unloaded wet", PlanFaultKind.NotDry, With(0, c => c with { UnloadStep = 59 }) },
        { "served from a charge left standing", PlanFaultKind.WrongWood, With(0, c => c with { UnloadStep = 14 * 24 }) },
        { "sold twice", PlanFaultKind.Oversold, Serving("O-1", "S-1", 200) },
        { "wood the order may not have", PlanFaultKind.WrongWood, Serving("O-1", "S-14", 10) },
        { "kiln-dried wood from the yard", PlanFaultKind.WrongWood, Serving("O-4", "S-14", 90) },
        { "air-dried wood through the kiln", PlanFaultKind.WrongWood, Alone("K1", "S-3") },
    };

    [Fact]
    public void A_load_heavier_than_the_kiln_carries_is_caught()
    {
        var stacks = Sound.Charges[1].Stacks;
        var heavy = Input with
        {
            Stacks = [.. Input.Stacks.Select(stack => stacks.Contains(stack.Id) ? stack with { Weight = Mass.FromKilograms(700) } : stack)],
            Kilns = [.. Input.Kilns.Select(kiln => kiln.Id == Sound.Charges[1].Kiln ? kiln with { MostWeight = Mass.FromKilograms(700 * stacks.Count - 1) } : kiln)],
        };
        var carries = heavy with { Kilns = [.. heavy.Kilns.Select(kiln => kiln with { MostWeight = Mass.FromKilograms(700 * stacks.Count) })] };

        Assert.Contains(PlanCheck.Faults(heavy, Sound), fault => fault.Kind == PlanFaultKind.TooHeavy);
        Assert.Empty(PlanCheck.Faults(carries, Sound));
    }

    [Theory, MemberData(nameof(Spoilt))]
    public void A_spoilt_plan_is_caught(string what, PlanFaultKind kind, Plan plan)
    {
        var faults = PlanCheck.Faults(Input, plan);

        Assert.True(faults.Any(fault => fault.Kind == kind), $"{what}: {string.Join("; ", faults)}");
    }

    public static TheoryData<string, PlanFaultKind, PlanInput> SpoiltYards() => new()
    {
        { "kiln out while the charge is in it", PlanFaultKind.KilnOut, WithKiln(0, k => k with { Outages = [new(100, 101)] }) },
        { "coil a tenth of a kilowatt too small", PlanFaultKind.CoilTooSmall, WithKiln(0, k => k with { Coil = Power.FromKilowatts(17.8) }) },
        { "a boiler less when K1 warms up", PlanFaultKind.HeatShort, Input with { Heat = Input.Heat with { Boilers = [new("B1", Power.FromKilowatts(50), [new(36, 37)]), Input.Heat.Boilers[1]], Shop = SmallYard.Steady(28, 8.2) } } },
        { "every day a holiday", PlanFaultKind.NoCrew, Input with { Calendar = Input.Calendar with { CrewWindows = [] } } },
    };

    [Theory, MemberData(nameof(SpoiltYards))]
    public void A_plan_that_no_longer_fits_the_yard_is_caught(string what, PlanFaultKind kind, PlanInput input)
    {
        var faults = PlanCheck.Faults(input, Sound);

        Assert.True(faults.Any(fault => fault.Kind == kind), $"{what}: {string.Join("; ", faults)}");
    }

    [Fact]
    public void The_edges_of_the_heat_rules_are_allowed()
    {
        var coil = WithKiln(0, k => k with { Coil = Power.FromKilowatts(17.9) }); // 5 holding + 15/8 structure + 2 x 44/8 wood = 17.875
        Assert.Empty(PlanCheck.Faults(coil, Sound));

        var boiler = Input with { Heat = Input.Heat with { Boilers = [new("B1", Power.FromKilowatts(50), [new(36, 37)]), Input.Heat.Boilers[1]] } };
        Assert.Empty(PlanCheck.Faults(boiler, Sound)); // 30 - 8 + 4 given way = 26; K2 8 + K1 17.875 = 25.875
    }

    [Fact]
    public void A_false_promise_is_caught()
    {
        var truth = PlanOutlook.Of(Input, Sound);
        PlanOutlook[] lies =
        [
            truth with { Score = truth.Score with { LateCents = truth.Score.LateCents + 1 } },
            truth with { Score = truth.Score with { RiskCents = truth.Score.RiskCents - 1 } },
            truth with { Score = truth.Score with { CostCents = truth.Score.CostCents + 1 } },
            truth with { Orders = [truth.Orders[0] with { ReadyHalf = truth.Orders[0].ReadyHalf!.Value.AddDays(-1) }, .. truth.Orders.Skip(1)] },
            truth with { Orders = [truth.Orders[0] with { LateDaysMost = 0 }, .. truth.Orders.Skip(1)] },
            truth with { Orders = [.. truth.Orders.Skip(1)] },
            truth with { Heat = [truth.Heat[0] with { Demand = Power.FromKilowatts(1) }, .. truth.Heat.Skip(1)] },
        ];

        Assert.All(lies, lie => Assert.Contains(PlanCheck.Faults(Input, Sound, lie), fault => fault.Kind == PlanFaultKind.WrongClaim));
    }

    [Fact]
    public void The_small_plan_is_worked_out_as_by_hand()
    {
        var outlook = PlanOutlook.Of(Input, Sound);

        var k1 = outlook.Charges[1];
        Assert.Equal((36, 44, 116, 134, 179), (k1.HeatFrom, k1.WarmAt, k1.DryAt, k1.DryAtMost, k1.EmptyAt));
        Assert.Equal("S-1", k1.Slowest);
        Assert.Equal(new OrderOutlook("O-1", true, new(2026, 11, 10), new(2026, 11, 10), 2, 2), outlook.Orders[0]); // out on Monday, planed on Tuesday, due on Sunday
        Assert.Equal(new OrderOutlook("O-2", true, new(2026, 11, 2), new(2026, 11, 2), 0, 0), outlook.Orders[1]);
        Assert.Equal(new OrderOutlook("O-3", true, new(2026, 11, 4), new(2026, 11, 6), 1, 3), outlook.Orders[2]); // 90 h is Thursday 18:00: Friday
        Assert.Equal(new OrderOutlook("O-4", false, null, null, 12, 12), outlook.Orders[3]);                     // never dried: 14 + 7 - 9
        Assert.Equal(2 * 4000 + 1 * 14500 + 12 * 500, outlook.Score.LateCents);
        Assert.Equal(2 * 4000 + 3 * 14500 + 12 * 500, outlook.Score.RiskCents);
        Assert.Equal(8 + 5 + 12.9, outlook.Heat[3].Demand.Kilowatts, 6); // 15/8 and 44/8 kW, each rounded up to a tenth
        Assert.Equal(72, outlook.Heat[3].Spare.Kilowatts, 6);
    }

    private static Plan With(int index, Func<Charge, Charge> change) => Sound with { Charges = [.. Sound.Charges.Select((charge, i) => i == index ? change(charge) : charge)] };

    private static Plan Alone(string kiln, string stack) => With(1, c => c with { Kiln = kiln, Stacks = [stack] });

    private static Plan Serving(string order, string stack, double quantity) => Sound with { Servings = [.. Sound.Servings, new(order, stack, BoardFeet.From(quantity))] };

    private static PlanInput WithKiln(int index, Func<Kiln, Kiln> change) => Input with { Kilns = [.. Input.Kilns.Select((kiln, i) => i == index ? change(kiln) : kiln)] };
}
