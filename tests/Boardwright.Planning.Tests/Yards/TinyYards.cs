using Boardwright.Numerics;
using Boardwright.Quantities;

namespace Boardwright.Planning.Tests;

/// <summary>Seeded random yards small enough to try every plan: two kilns, three stacks, two orders, four or five days in quarters.</summary>
internal static class TinyYards
{
    private const int StepsPerDay = 4;

    private const ulong Heavy = 100_000; // weights have their own chance, so that the rest of a yard is what it was without them

    public static PlanInput Make(ulong seed)
    {
        var chance = new RandomSequence(seed);
        var days = 4 + chance.NextIndex(2);
        var calendar = Calendar(chance, days);
        var periodSteps = chance.NextIndex(2) == 0 ? 2 : 4;
        var periods = days * StepsPerDay / periodSteps;
        Kiln[] kilns = [Kiln(chance, "K1", "conventional", days, periods), Kiln(chance, "K2", chance.NextIndex(2) == 0 ? "conventional" : "vacuum", days, periods)];
        var started = chance.NextIndex(3) == 0;
        var stacks = Enumerable.Range(1, 3 + (started ? 1 : 0)).Select(i => Stack(chance, $"S-{i}")).ToArray();
        if (chance.NextIndex(6) == 0)
        {
            stacks = [stacks[0] with { MatchedSet = "set" }, stacks[1] with { MatchedSet = "set" }, .. stacks[2..]];
        }

        StartedCharge[] standing = started
            ? [new("C-1", "K1", ["S-4"], Elapsed.FromHours(6 * chance.NextIndex(4)), Elapsed.FromHours(24), Kilowatts(chance, 3))]
            : [];
        var weights = new RandomSequence(seed + Heavy);
        stacks = [.. stacks.Select(stack => stack with { Weight = Mass.FromKilograms(400 + 100 * weights.NextIndex(8)) })];
        kilns = [.. kilns.Select(kiln => weights.NextIndex(2) == 0 ? kiln with { MostWeight = Mass.FromKilograms(600 + 100 * weights.NextIndex(8)) } : kiln)];
        return new(
            calendar, kilns, stacks, standing, [Order(chance, "O-1", stacks), Order(chance, "O-2", stacks)],
            new(
                periodSteps, [new("B1", Power.FromKilowatts(14), [new(0, chance.NextIndex(5) * 2)]), new("B2", Power.FromKilowatts(10), [])],
                [.. Enumerable.Range(0, periods).Select(_ => Kilowatts(chance, 4))], Kilowatts(chance, 3), 0.3m),
            SharingRules.Usual, 5m);
    }

    private static PlanCalendar Calendar(RandomSequence chance, int days)
    {
        var holiday = chance.NextIndex(days * 2);
        var windows = Enumerable.Range(0, days).Where(day => day != holiday).Select(day => new StepRange(day * StepsPerDay + 1, day * StepsPerDay + 2 + chance.NextIndex(2)));
        return new(SmallYard.Monday, days, StepsPerDay, [.. windows], 1 + chance.NextIndex(2), [.. Enumerable.Range(0, days).Where(_ => chance.NextIndex(2) == 0)]);
    }

    private static Kiln Kiln(RandomSequence chance, string id, string kind, int days, int periods) => new(
        id, kind, BoardFeet.From(500 + 250 * chance.NextIndex(3)), Length.FromFeet(12 + 2 * chance.NextIndex(2)), Temperature.FromCelsius(50 + 10 * chance.NextIndex(2)),
        kind == "vacuum" ? null : Power.FromKilowatts(16 + chance.NextIndex(6)), Elapsed.FromHours(4), Elapsed.FromHours(2 + 2 * chance.NextIndex(2)),
        chance.NextIndex(2) == 0 ? [Elapsed.FromHours(6)] : [Elapsed.FromHours(6), Elapsed.FromHours(12)], Energy.FromKilowattHours(10 + chance.NextIndex(20)),
        [.. Enumerable.Range(0, periods).Select(_ => Power.FromKilowatts(2 + 2 * chance.NextUniform()))], 10 + chance.NextIndex(30), 0.05m,
        chance.NextIndex(4) == 0 ? [Outage(chance, days)] : []);

    private static StepRange Outage(RandomSequence chance, int days)
    {
        var from = chance.NextIndex(days * StepsPerDay - 2);
        return new(from, from + 2);
    }

    private static Stack Stack(RandomSequence chance, string id) => new(
        id, chance.NextIndex(6) == 0 ? "softwood" : "hardwood", Length.FromInches(1 + 0.25 * chance.NextIndex(4)), Length.FromFeet(8 + 2 * chance.NextIndex(4)),
        BoardFeet.From(300), BoardFeet.From(200 + 50 * chance.NextIndex(7)), BoardFeet.From(150 + 50 * chance.NextIndex(5)), MoistureContent.FromPercent(14 + chance.NextIndex(18)),
        new(6 + chance.NextIndex(5), 2 + chance.NextIndex(3)), chance.NextIndex(5) == 0 ? "a customer" : "mill", chance.NextIndex(2) == 0, chance.NextIndex(8) == 0, null,
        SmallYard.Monday.AddDays(chance.NextIndex(2)), chance.NextIndex(6) == 0 ? Temperature.FromCelsius(56) : null,
        [Drying(chance, "conventional"), .. chance.NextIndex(2) == 0 ? new[] { Drying(chance, "vacuum") } : []], chance.NextIndex(120), 0.1m * chance.NextIndex(10));

    private static DryingTime Drying(RandomSequence chance, string kind)
    {
        var half = 6 * (2 + chance.NextIndex(7));
        var longer = 6 * chance.NextIndex(4);
        var sooner = 6 * chance.NextIndex(2);
        Elapsed[] halves = [Elapsed.FromHours(half), Elapsed.FromHours(half), Elapsed.FromHours(half - sooner)];
        Elapsed[] mosts = [Elapsed.FromHours(half + longer), Elapsed.FromHours(half + longer), Elapsed.FromHours(half + longer - sooner)];
        return new(kind, halves, mosts, Energy.FromKilowattHours(10 + chance.NextIndex(60)), Kilowatts(chance, 5), Energy.FromKilowattHours(chance.NextIndex(200)));
    }

    private static Order Order(RandomSequence chance, string id, Stack[] stacks)
    {
        var first = chance.NextIndex(stacks.Length);
        var second = (first + 1 + chance.NextIndex(stacks.Length - 1)) % stacks.Length;
        OrderWood[] wood = chance.NextIndex(2) == 0
            ? [new(stacks[first].Id, true, 0m)]
            : [new(stacks[first].Id, chance.NextIndex(6) > 0, 0m), new(stacks[second].Id, true, chance.NextIndex(20))];
        return new(
            id, SmallYard.Monday.AddDays(chance.NextIndex(7)), BoardFeet.From(100 + 50 * chance.NextIndex(6)), wood, chance.NextIndex(3) == 0 ? 1 : 0,
            1 + chance.NextIndex(5), chance.NextIndex(50));
    }

    private static Power Kilowatts(RandomSequence chance, double most) => Power.FromKilowatts(most * chance.NextUniform());
}
