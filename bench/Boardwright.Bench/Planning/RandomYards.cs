using Boardwright.Numerics;
using Boardwright.Planning;
using Boardwright.Quantities;

namespace Boardwright.Bench.Planning;

/// <summary>Invented yards of any size from a seed: sixty days by the hour from a Monday in November, a kiln or two already running, a boiler out for the first weeks.</summary>
/// <remarks>
/// Nothing is arranged to be easy: due days are drawn without looking at when the wood can be dry or a kiln is free, so that many orders cannot be on time.
/// No board is sold twice: an order takes of what the orders before it have left of a stack, as an order desk would.
/// </remarks>
internal sealed class RandomYards
{
    private const int Days = 60;
    private const int StepsPerDay = 24;
    private static readonly DateOnly Monday = new(2026, 11, 2);
    private static readonly (double Capacity, double Feet, double Celsius, double? CoilKw, decimal PerDay)[] KilnKinds =
    [
        (4000, 16, 74, 28, 26m), (2000, 14, 65, 16, 17m), (900, 13, 65, null, 48m), (4000, 16, 74, 28, 26m), (3000, 14, 71, 22, 22m), (2000, 14, 65, 16, 17m), (900, 13, 65, null, 48m), (6000, 16, 74, 40, 35m),
    ];

    private static readonly double[] Thicknesses = [1, 1, 1, 1, 1, 1.25, 1.25, 1.5, 2, 2.5];
    private readonly RandomSequence chance;
    private readonly Dictionary<string, double> unsold = [];

    private RandomYards(int seed) => chance = new((ulong)seed);

    /// <summary>A yard.</summary>
    public static PlanInput Make(int seed, int stacks, int kilns, int orders) => new RandomYards(seed).Yard(stacks, kilns, orders);

    private PlanInput Yard(int stackCount, int kilnCount, int orderCount)
    {
        var calendar = PlanCalendar.For(Monday, Days, StepsPerDay, Work, day => day.DayOfWeek is DayOfWeek.Tuesday or DayOfWeek.Thursday) with { KilnsAtOnce = (kilnCount + 3) / 4 };
        var kilns = Enumerable.Range(0, kilnCount).Select(Kiln).ToArray();
        var stacks = Enumerable.Range(1, stackCount).Select(Stack).ToArray();
        var pair = stackCount / 2;
        stacks[pair] = stacks[pair] with { MatchedSet = "boule" };
        stacks[pair + 1] = stacks[pair] with { Id = stacks[pair + 1].Id };
        var standing = kilns.Where((_, k) => k % 4 is 0 or 2).Select((kiln, i) => Standing(kiln, stacks[i])).ToArray();
        for (var i = 0; i < standing.Length; i++)
        {
            stacks[i] = stacks[i] with { NeverKiln = false };
        }

        return new(calendar, kilns, stacks, standing, [.. Enumerable.Range(1, orderCount).Select(number => Order(number, stacks))], Heat(kilnCount), SharingRules.Usual, 10m);
    }

    private static Kiln Kiln(int index)
    {
        var kind = KilnKinds[index % KilnKinds.Length];
        var holding = kind.CoilKw is { } coil ? 0.2 * coil : 0.5;
        return new(
            $"K{index + 1}", kind.CoilKw is null ? "vacuum" : "conventional", BoardFeet.From(kind.Capacity), Length.FromFeet(kind.Feet), Temperature.FromCelsius(kind.Celsius),
            kind.CoilKw is { } kw ? Power.FromKilowatts(kw) : null, Elapsed.FromHours(Math.Min(6, 2 + kind.Capacity / 1500)), Elapsed.FromHours(Math.Min(4, 1.5 + kind.Capacity / 2500)),
            kind.CoilKw is null ? [Elapsed.FromHours(1)] : [Elapsed.FromHours(8), Elapsed.FromHours(16), Elapsed.FromHours(32)], Energy.FromKilowattHours(kind.CoilKw is null ? 0 : kind.Capacity / 150),
            [.. Enumerable.Range(0, Days).Select(day => Power.FromKilowatts(holding * (55 - Outside(day)) / 45))], kind.PerDay, kind.CoilKw is null ? 0.16m : 0.04m, []);
    }

    private Stack Stack(int number)
    {
        var inches = Thicknesses[chance.NextIndex(Thicknesses.Length)];
        var moisture = 14 + 40 * Math.Pow(chance.NextUniform(), 2);
        var boardFeet = Math.Round(100 + 1100 * Math.Pow(chance.NextUniform(), 1.5));
        var daysPerFold = 5 + 5 * chance.NextUniform();
        var customer = chance.NextIndex(10) == 0;
        var vacuum = chance.NextIndex(10) < 6;
        var never = chance.NextIndex(30) == 0;
        return new(
            $"S-{number:000}", chance.NextIndex(12) == 0 ? "softwood" : "hardwood", Length.FromInches(inches), Length.FromFeet(8 + 2 * chance.NextIndex(5)), BoardFeet.From(boardFeet),
            BoardFeet.From(boardFeet / (inches / (inches + 0.75) * 1.75)), BoardFeet.From(Math.Floor(0.88 * boardFeet)), MoistureContent.FromPercent(moisture),
            new(inches > 1.3 ? 5 : 8, moisture > 30 ? 2 : 4), customer ? "a customer" : "mill", !customer || chance.NextIndex(2) == 0, never, null,
            Monday.AddDays(Math.Max(0, chance.NextIndex(30) - 20)), chance.NextIndex(10) == 0 ? Temperature.FromCelsius(56) : null,
            never ? [] : [Drying("conventional", inches, moisture, daysPerFold, boardFeet), .. vacuum ? new[] { Drying("vacuum", inches, moisture, 0.45 * daysPerFold, boardFeet) } : []],
            (decimal)Math.Round(0.6 * boardFeet), Math.Round(0.0005m * (decimal)boardFeet, 2));
    }

    // Time as the logarithm of moisture, a little less for each week the stack waits in the yard.
    private DryingTime Drying(string kind, double inches, double moisture, double daysPerFold, double boardFeet)
    {
        var half = Enumerable.Range(0, Days).Select(day => 24 * (inches + daysPerFold * Math.Pow(inches, 1.3) * Math.Log(Math.Max(9, moisture - 0.6 * (day / 7)) / 7))).ToList();
        var spread = 1.15 + 0.2 * chance.NextUniform();
        var water = boardFeet * 0.00236 * 550 * Math.Max(0, moisture - 7) / 100;
        return new(
            kind, [.. half.Select(Elapsed.FromHours)], [.. half.Select(hours => Elapsed.FromHours(spread * hours))], Energy.FromKilowattHours(boardFeet * 0.035),
            Power.FromKilowatts(kind == "vacuum" ? 0 : water / half[0]), Energy.FromKilowattHours(water));
    }

    private StartedCharge Standing(Kiln kiln, Stack stack)
    {
        var left = 48 + 24 * chance.NextIndex(8);
        return new($"C-{kiln.Id}", kiln.Id, [stack.Id], Elapsed.FromHours(left), Elapsed.FromHours(1.25 * left), Power.FromKilowatts(kiln.Coil is null ? 0 : 2));
    }

    private Order Order(int number, Stack[] stacks)
    {
        var due = Monday.AddDays(6 + chance.NextIndex(50));
        int first;
        do
        {
            first = chance.NextIndex(stacks.Length);
        }
        while (Unsold(stacks[first]) < 50);
        var air = stacks[first].NeverKiln;
        var like = stacks.Where((stack, s) => !air && s != first && stack.Thickness == stacks[first].Thickness && stack.Owner == stacks[first].Owner && !stack.NeverKiln && Unsold(stack) >= 50).Take(chance.NextIndex(4)).ToList();
        var named = like.Count > 0 && chance.NextIndex(4) == 0 ? new[] { stacks[first], like[0] } : [stacks[first]];
        var share = 0.55 + 0.4 * chance.NextUniform();
        var quantity = Math.Round(share * named.Sum(Unsold));
        foreach (var stack in named)
        {
            unsold[stack.Id] = (1 - share) * Unsold(stack);
        }

        return new(
            $"O-{number:000}", due, BoardFeet.From(quantity), [.. named.Select(stack => new OrderWood(stack.Id, !air, 0m)), .. like.Except(named).Select(stack => new OrderWood(stack.Id, true, 25m))],
            chance.NextIndex(3) == 0 ? 1 : 0, 1 + chance.NextIndex(5), 10 * chance.NextIndex(12));
    }

    private double Unsold(Stack stack) => unsold.GetValueOrDefault(stack.Id, stack.Yield.Count);

    private static HeatSupply Heat(int kilns) => new(
        StepsPerDay, [.. Enumerable.Range(1, kilns <= 4 ? 2 : 4).Select(number => new Boiler($"B{number}", Power.FromKilowatts(number % 2 == 1 ? 50 : 30), number == 1 ? [new(0, 15 * StepsPerDay)] : []))],
        [.. Enumerable.Range(0, Days).Select(day => Power.FromKilowatts(0.55 * (16 - Outside(day))))], Power.FromKilowatts(2), 1m);

    private static double Outside(int day) => 3 - 0.12 * day - (day is >= 17 and <= 20 ? 9 : 0);

    private static (TimeOnly, TimeOnly)? Work(DateOnly day) => day.DayOfWeek switch
    {
        DayOfWeek.Sunday => null,
        DayOfWeek.Saturday => (new TimeOnly(7, 30), new TimeOnly(13, 0)),
        _ => (new TimeOnly(7, 30), new TimeOnly(16, 0)),
    };
}
