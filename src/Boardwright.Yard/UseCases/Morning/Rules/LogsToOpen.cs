using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Logs by the days left before stain, borers or end checks: what to open next, and how thick.</summary>
internal static class LogsToOpen
{
    private const int Shown = 5;
    private const int LookDays = 14;
    private static readonly int[] Quarters = [4, 5, 6, 8, 10, 12];

    public static IEnumerable<DayTask> Of(YardState state) =>
        state.Logs.Values.Where(log => log is { IsSawn: false, Proven: true } && log.MetalScan is MetalScan.Clear or MetalScan.HitsDugOut)
            .Select(log => (Log: log, Left: DaysLeft(state, log)))
            .Where(pair => pair.Left is { Days: <= LookDays })
            .OrderBy(pair => pair.Left!.Value.Days).Take(Shown)
            .Select(pair => Open(state, pair.Log, pair.Left!.Value));

    private static DayTask Open(YardState state, Log log, (int Days, string What, int Since, double MeanC) left)
    {
        var paid = log.PaidMoney ?? 0m;
        var worth = state.Prices.TryGetValue(log.Species.CommonName, out var price) ? price.Green1cMoney : 1m;
        var footage = (decimal)log.ScalingDiameter.Inches * (decimal)log.ScalingDiameter.Inches / 16m * (decimal)log.ScaleLength.Feet;
        return new(log.Tag, $"Open {log.Tag} {(left.Days <= 0 ? "now" : $"within {left.Days} days")}: {log.Species.CommonName}, {log.PlannedFor ?? "no plan"}.",
            $"{left.What} {(left.Days <= 0 ? "may have begun" : "is next")}: {left.Since} days here at about {left.MeanC:0} °C. {Thickness(state, log)}",
            new("Days left", left.Days <= 0 ? "0" : $"{left.Days}", "days", $"before {left.What.ToLowerInvariant()}") { Source = "days before damage, common practice, a table of the house", Inputs = [("here since", $"{log.ReceivedAt:d MMM yyyy}"), ("mean outside since", $"{left.MeanC:0.0} °C"), ("ends coated", log.EndCoated ? "yes" : "no"), ("owner", log.Owner), ("paid", $"{paid:0.00}")] },
            new(footage * worth * 0.15m, Math.Max(1, left.Days), $"about a seventh of {footage:#,0} bf at {worth:0.00} green, when it stains or checks: common practice"), Duties.Mill, Paths.Log(log.Tag), $"See {log.Tag}")
        { Log = log.Tag };
    }

    private static (int Days, string What, int Since, double MeanC)? DaysLeft(YardState state, Log log) =>
        YardLog.DaysLeft(state, log) is var (clock, since, mean) ? (clock.Days, YardLog.Words(clock.What), since, mean) : null;

    private static string Thickness(YardState state, Log log)
    {
        var quarters = Quarters.Where(one => log.PlannedFor?.Contains($"{one}/4", StringComparison.Ordinal) == true).ToList();
        return string.Join(" ", quarters.Select(one => state.Setting($"house_green_{one}_4") is { } inches ? $"{one}/4: set {Sixteenths(inches)} in." : ""));
    }

    /// <summary>Inches as the mill sets them: "1‑1/8", with a hyphen that does not break a line.</summary>
    internal static string Sixteenths(double inches)
    {
        var (whole, part) = ((int)inches, (int)Math.Round((inches - (int)inches) * 16.0));
        var over = 16;
        while (part > 0 && part % 2 == 0)
            (part, over) = (part / 2, over / 2);
        return part == 0 ? $"{whole}" : whole == 0 ? $"{part}/{over}" : $"{whole}‑{part}/{over}";
    }
}
