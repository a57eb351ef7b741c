namespace Boardwright.Web.Drawings.Samples;

/// <summary>Invented season to look at the time chart with.</summary>
internal static class SampleSeason
{
    public static SeasonDrawing Drawing { get; } = new(new(2026, 10, 26), new(2026, 12, 14), new(2026, 11, 2),
    [
        new("K1", [Bar("C-61", "3,150 bf", "red oak", "northern red oak", "10-21", "11-13", "11-14", true), Bar("C-62", "2,130 bf", "sugar maple", "sugar maple", "11-14", "11-29", "12-01")]),
        new("K2",
        [
            Bar("D-41", "1,865 bf", "cherry, ash, maple", "black cherry", "11-03", "11-10", "11-11"),
            Bar("D-42", "990 bf", "slabs; customer maple", "American elm", "11-11", "11-21", "11-23"),
            Bar("D-43", "420 bf", "ash 8/4", "white ash", "11-23", "12-07", "12-09"),
        ]),
        new("K3",
        [
            Bar("V-19", "575 bf", "cherry", "black cherry", "10-31", "11-06", "11-06", true), Bar("V-20", "610 bf", "white oak", "white oak", "11-07", "11-12", "11-13"),
            Bar("V-21", "295 bf", "elm boule", "American elm", "11-13", "11-20", "11-21"), Bar("V-22", "85 bf", "sycamore", "sycamore", "11-21", "12-03", "12-05"),
        ]),
    ])
    {
        HeatUses = ["shop", "K1", "K2"],
        Heat = [.. Enumerable.Range(0, 49).Select(index => new DateOnly(2026, 10, 26).AddDays(index)).Select(Heat)],
        Boilers =
        [
            new(new(2026, 10, 26), new(2026, 10, 28), 80, 80), new(new(2026, 10, 28), new(2026, 11, 16), 30, 30, "B2 alone, 30 kW"),
            new(new(2026, 11, 16), new(2026, 11, 23), 30, 80, "B1 back, 16 to 23"), new(new(2026, 11, 23), new(2026, 12, 14), 80, 80, "both, 80 kW"),
        ],
        Shortage = new(new(2026, 11, 20), "20 Nov, −14 °C: short 0.5", "20 Nov: short 0.5"),
    };

    private static ChargeBar Bar(string charge, string amount, string wood, string species, string from, string to, string late, bool running = false) =>
        new(charge, amount, wood, species, Day(from), Day(to), Day(late)) { Running = running, Address = $"/charges/{charge}" };

    private static DateOnly Day(string monthDay) => DateOnly.ParseExact($"2026-{monthDay}", "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static HeatWanted Heat(DateOnly day)
    {
        double[] means = [8, 8, 7, 6, 6, 5, 4, 3, 1, 2, 4, 5, 4, 1, 0, 1, 2, 3, 1, 0, -2, 0, 1, -3, -8, -14, -10, -4, -1, 0, 1, -1, -3, -4, -3];
        var index = day.DayNumber - new DateOnly(2026, 10, 26).DayNumber;
        var mean = index < means.Length ? means[index] : -4;
        var k1 = day < Day("11-13") || (day >= Day("11-14") && day < Day("11-29")) ? 7.3 - (.13 * mean) : 0;
        var k2 = (day >= Day("11-03") && day < Day("11-10")) || (day >= Day("11-11") && day < Day("11-21")) || (day >= Day("11-23") && day < Day("12-07")) ? 4 - (.07 * mean) : 0;
        return new(day, [.55 * (16 - mean), k1, k2]);
    }
}
