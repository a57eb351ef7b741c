using Boardwright.Quantities;

namespace Boardwright.Planning.Tests;

/// <summary>An invented yard of three kilns and a plan for it that breaks no rule; tests spoil one thing at a time.</summary>
internal static class SmallYard
{
    public static readonly DateOnly Monday = new(2026, 11, 2);

    public static PlanInput Input { get; } = new(
        PlanCalendar.For(Monday, 14, 24, Work, day => day.DayOfWeek is DayOfWeek.Tuesday or DayOfWeek.Thursday),
        [
            Kiln("K1", "conventional", 2000, 14, 65, 30, 17, [8, 24]),
            Kiln("K2", "conventional", 4000, 16, 55, 40, 26, [8, 24]),
            Kiln("K3", "vacuum", 900, 13, 65, null, 48, [4]),
        ],
        [
            Stack("S-1") with { Load = BoardFeet.From(905), Yield = BoardFeet.From(816) },
            Stack("S-2") with { Load = BoardFeet.From(840), DryingTimes = [Drying("conventional", 60, 70)] },
            Stack("S-3") with { NeverKiln = true },
            Stack("S-4") with { MatchedSet = "boule", Load = BoardFeet.From(200), DryingTimes = [Drying("vacuum", 96, 110)] },
            Stack("S-5") with { MatchedSet = "boule", Load = BoardFeet.From(200), DryingTimes = [Drying("vacuum", 96, 110)] },
            Stack("S-6") with { Load = BoardFeet.From(3150), Yield = BoardFeet.From(2903), DryingTimes = [] },
            Stack("S-7") with { Owner = "a customer", Load = BoardFeet.From(100) },
            Stack("S-8") with { Family = "softwood", Load = BoardFeet.From(100) },
            Stack("S-9") with { Thickness = Length.FromInches(2), Load = BoardFeet.From(100) },
            Stack("S-10") with { Moisture = MoistureContent.FromPercent(44), Load = BoardFeet.From(100) },
            Stack("S-11") with { LongestPiece = Length.FromFeet(15), Load = BoardFeet.From(100) },
            Stack("S-12") with { HeatedTo = Temperature.FromCelsius(60), Load = BoardFeet.From(100) },
            Stack("S-13") with { AvailableFrom = Monday.AddDays(3), Load = BoardFeet.From(100) },
            Stack("S-14") with { Load = BoardFeet.From(400) },
        ],
        [new("C-1", "K2", ["S-6"], Elapsed.FromHours(60), Elapsed.FromHours(90), Power.FromKilowatts(3))],
        [
            new("O-1", Monday.AddDays(6), BoardFeet.From(620), [new("S-1", true, 0m), new("S-2", true, 25m)], 1, 3, 25m),
            new("O-2", Monday.AddDays(10), BoardFeet.From(350), [new("S-3", false, 0m)], 0, 4, 30m),
            new("O-3", Monday.AddDays(1), BoardFeet.From(2900), [new("S-6", true, 0m)], 0, 5, 120m),
            new("O-4", Monday.AddDays(9), BoardFeet.From(90), [new("S-14", true, 0m)], 0, 1, 0m),
        ],
        new(12, [new("B1", Power.FromKilowatts(50), [new(48, 72)]), new("B2", Power.FromKilowatts(30), [])], Steady(28, 8), Power.FromKilowatts(4), 0.5m),
        SharingRules.Usual, 5m);

    public static Plan Plan { get; } = new(
        [
            new("K2", ["S-6"], "C-1", 0, 0, 60),          // dry Wednesday noon, unloaded at once
            new("K1", ["S-1", "S-2"], null, 32, 0, 176),   // Tuesday 08:00 to Monday 08:00
            new("K3", ["S-4", "S-5"], null, 8, 0, 179),    // Monday 08:00; the crew comes to it after K1
        ],
        [new("O-1", "S-1", BoardFeet.From(620)), new("O-2", "S-3", BoardFeet.From(350)), new("O-3", "S-6", BoardFeet.From(2900))]);

    public static Stack Stack(string id) => new(
        id, "hardwood", Length.FromInches(1), Length.FromFeet(12), BoardFeet.From(500), BoardFeet.From(500), BoardFeet.From(450), MoistureContent.FromPercent(18),
        new(8, 4), "mill", false, false, null, Monday, null, [Drying("conventional", 72, 90), Drying("vacuum", 48, 60)], 40m, 0.5m);

    public static DryingTime Drying(string kind, double half, double most) => new(
        kind, [Elapsed.FromHours(half), Elapsed.FromHours(half), Elapsed.FromHours(half - 2)], [Elapsed.FromHours(most), Elapsed.FromHours(most), Elapsed.FromHours(most - 2)],
        Energy.FromKilowattHours(44), Power.FromKilowatts(2.04), Energy.FromKilowattHours(130));

    public static Kiln Kiln(string id, string kind, double capacity, double feet, double celsius, double? coilKw, decimal perDay, double[] warmUps) => new(
        id, kind, BoardFeet.From(capacity), Length.FromFeet(feet), Temperature.FromCelsius(celsius), coilKw is { } kw ? Power.FromKilowatts(kw) : null,
        Elapsed.FromHours(4), Elapsed.FromHours(2.5), [.. warmUps.Select(Elapsed.FromHours)], Energy.FromKilowattHours(15), Steady(28, 5), perDay, 0.05m, []);

    public static Power[] Steady(int count, double kilowatts) => [.. Enumerable.Repeat(Power.FromKilowatts(kilowatts), count)];

    private static (TimeOnly, TimeOnly)? Work(DateOnly day) =>
        day.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday ? null : (new TimeOnly(7, 30), new TimeOnly(16, 0));
}
