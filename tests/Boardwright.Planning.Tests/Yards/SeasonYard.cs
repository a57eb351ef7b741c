using Boardwright.Quantities;

namespace Boardwright.Planning.Tests;

/// <summary>An invented yard of the usual size: three kilns, two started charges, 20 stacks, 10 orders, six weeks in half hours, one boiler out for two weeks.</summary>
internal static class SeasonYard
{
    private static readonly (string Id, double Inches, double Feet, double Boardfeet, double MoisturePercent, string Owner, bool Vacuum)[] Rows =
    [
        ("S-01", 1, 12, 840, 15.2, "mill", true), ("S-02", 1, 14, 390, 14.6, "mill", false), ("S-03", 1.125, 12, 1150, 22.4, "mill", true),
        ("S-04", 1.125, 12, 980, 23.1, "mill", true), ("S-05", 1.25, 8, 120, 15.8, "mill", true), ("S-06", 1, 12, 760, 19.5, "mill", false),
        ("S-07", 1, 12, 905, 15.0, "mill", true), ("S-11", 1.25, 14, 610, 19.8, "mill", false), ("S-12", 1, 12, 520, 17.9, "mill", true),
        ("S-13", 1, 12, 430, 18.3, "mill", true), ("S-14", 2, 12, 420, 21.0, "mill", true), ("S-15", 1, 12, 275, 44.0, "mill", false),
        ("S-16", 1.5, 8, 190, 16.9, "mill", true), ("S-17", 1.5, 8, 240, 17.2, "mill", true), ("S-18", 1, 12, 355, 31.0, "mill", true),
        ("S-19", 2.5, 12, 295, 31.0, "mill", true), ("S-20", 3, 10, 85, 38.0, "mill", true), ("S-21", 1.5, 12, 175, 17.8, "mill", true),
        ("S-22", 2, 8, 330, 52.0, "mill", false), ("S-24", 1, 8, 385, 16.4, "Y-71", true),
    ];

    public static PlanInput Input { get; } = Make();

    private static PlanInput Make()
    {
        var days = 42;
        var calendar = PlanCalendar.For(SmallYard.Monday, days, 48, Work, day => day.DayOfWeek is DayOfWeek.Tuesday or DayOfWeek.Thursday);
        var stacks = Rows.Select(Stack).Append(Standing("S-10", 3150, 2903)).Append(Standing("S-08", 575, 500)).ToArray();
        return new(
            calendar,
            [
                Kiln("K1", "conventional", 4000, 16, 74, 28, 5, 4, 26, [8, 16, 32], Hold(days, 6.1)), Kiln("K2", "conventional", 2000, 14, 65, 16, 3.5, 2.5, 17, [8, 16, 32], Hold(days, 3.2)),
                Kiln("K3", "vacuum", 900, 13, 65, null, 3, 2, 48, [4], SmallYard.Steady(2 * days, 0.5)),
            ],
            stacks,
            [
                new("C-61", "K1", ["S-10"], Elapsed.FromDays(10), Elapsed.FromDays(13), Power.FromKilowatts(2)),
                new("V-19", "K3", ["S-08"], Elapsed.FromDays(4), Elapsed.FromDays(5), Power.FromKilowatts(0)),
            ],
            [
                Order("O-301", 11, 620, 0, 3, 25, "S-07"), Order("O-302", 18, 480, 1, 4, 40, "S-11"), Order("O-303", 14, 2900, 0, 5, 120, "S-10", "S-06"),
                Order("O-304", 39, 340, 0, 3, 15, "S-14"), Order("O-305", 46, 250, 0, 4, 60, "S-19"), Order("O-306", 25, 60, 0, 2, 5, "S-05"),
                new("O-307", SmallYard.Monday.AddDays(22), BoardFeet.From(350), [new("S-02", false, 0m)], 0, 4, 30m),
                Order("O-309", 46, 210, 0, 2, 0, "S-22"), Order("O-310", 32, 1907, 0, 5, 150, "S-03", "S-04"), Order("O-312", 50, 350, 0, 3, 10, "S-24"),
            ],
            new(24, [new("B1", Power.FromKilowatts(50), [new(0, 21 * 48)]), new("B2", Power.FromKilowatts(30), [])], [.. Enumerable.Range(0, 2 * days).Select(Shop)], Power.FromKilowatts(4), 0.3m),
            SharingRules.Usual, 5m);
    }

    private static Stack Stack((string Id, double Inches, double Feet, double Boardfeet, double MoisturePercent, string Owner, bool Vacuum) row)
    {
        var thicker = row.Inches / (row.Inches + 0.75) * 1.75;
        return new(
            row.Id, "hardwood", Length.FromInches(row.Inches), Length.FromFeet(row.Feet), BoardFeet.From(row.Boardfeet), BoardFeet.From(row.Boardfeet / thicker), BoardFeet.From(0.9 * row.Boardfeet),
            MoistureContent.FromPercent(row.MoisturePercent), new(row.Inches > 1.3 ? 5 : 8, row.MoisturePercent > 30 ? 2 : 4), row.Owner, true, row.Id == "S-02", null, SmallYard.Monday, null,
            [Drying("conventional", row.Inches, row.MoisturePercent, 9, row.Boardfeet), .. row.Vacuum ? new[] { Drying("vacuum", row.Inches, row.MoisturePercent, 4, row.Boardfeet) } : []],
            (decimal)Math.Round(0.6 * row.Boardfeet), Math.Round(0.0005m * (decimal)row.Boardfeet, 2));
    }

    private static DryingTime Drying(string kind, double inches, double moisturePercent, double daysPerFold, double boardfeet)
    {
        // Invented: time as the logarithm of moisture, a little less for each week the stack waits in the yard.
        var half = Enumerable.Range(0, 42).Select(day => 24 * daysPerFold * Math.Pow(inches, 1.3) * Math.Log(Math.Max(9, moisturePercent - 0.6 * (day / 7)) / 7)).ToList();
        var water = boardfeet * 0.00236 * 550 * Math.Max(0, moisturePercent - 8) / 100;
        return new(
            kind, [.. half.Select(Elapsed.FromHours)], [.. half.Select(hours => Elapsed.FromHours(1.25 * hours))], Energy.FromKilowattHours(boardfeet * 0.035),
            Power.FromKilowatts(water / half[0]), Energy.FromKilowattHours(water));
    }

    private static Stack Standing(string id, double boardfeet, double yield) =>
        SmallYard.Stack(id) with { Load = BoardFeet.From(boardfeet), Volume = BoardFeet.From(boardfeet), Yield = BoardFeet.From(yield), DryingTimes = [] };

    private static Kiln Kiln(string id, string kind, double capacity, double feet, double celsius, double? coilKw, double load, double unload, decimal perDay, double[] warmUps, Power[] holding) => new(
        id, kind, BoardFeet.From(capacity), Length.FromFeet(feet), Temperature.FromCelsius(celsius), coilKw is { } kw ? Power.FromKilowatts(kw) : null, Elapsed.FromHours(load), Elapsed.FromHours(unload),
        [.. warmUps.Select(Elapsed.FromHours)], Energy.FromKilowattHours(15), holding, perDay, coilKw is null ? 0.16m : 0.04m, []);

    private static Order Order(string id, int due, double quantity, int runs, int importance, decimal perDay, params string[] wood) =>
        new(id, SmallYard.Monday.AddDays(due), BoardFeet.From(quantity), [.. wood.Select(stack => new OrderWood(stack, true, 0m))], runs, importance, perDay);

    private static double Outside(int halfDay) => 3 - 0.12 * halfDay / 2 - (halfDay / 2 is >= 17 and <= 20 ? 9 : 0);

    private static Power Shop(int halfDay) => Power.FromKilowatts(0.55 * (16 - Outside(halfDay)));

    private static Power[] Hold(int days, double atTen) => [.. Enumerable.Range(0, 2 * days).Select(halfDay => Power.FromKilowatts(atTen * (55 - Outside(halfDay)) / 45))];

    private static (TimeOnly, TimeOnly)? Work(DateOnly day) => day.DayOfWeek switch
    {
        DayOfWeek.Sunday => null,
        DayOfWeek.Saturday => (new TimeOnly(7, 30), new TimeOnly(13, 0)),
        _ => (new TimeOnly(7, 30), new TimeOnly(16, 0)),
    };
}
