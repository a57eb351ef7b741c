using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Logs by the days left before stain, borers or end checks, or until an order wants them: what to open next, and how thick.</summary>
internal static class LogsToOpen
{
    private const int Shown = 5;
    private const int LookDays = 14;
    private static readonly int[] Quarters = [4, 5, 6, 8, 10, 12];

    public static IEnumerable<DayTask> Of(YardState state) =>
        LogTurns.Of(state).Where(one => one.Log is { Proven: true, MetalScan: MetalScan.Clear or MetalScan.HitsDugOut } && one.Days <= LookDays).Take(Shown).Select(one => one.Wanted is { } wanted && one.Days < (one.Left?.Clock.Days ?? int.MaxValue)
            ? For(state, one.Log, wanted)
            : Open(state, one.Log, (one.Left!.Value.Clock.Days, YardLog.Words(one.Left.Value.Clock.What), one.Left.Value.Since, one.Left.Value.MeanC)));

    private static DayTask For(YardState state, Log log, LogWanted wanted)
    {
        var days = wanted.OpenBy.DayNumber - state.Today.DayNumber;
        return new(log.Tag, $"Open {log.Tag} {(days <= 0 ? "today" : $"within {days} days")} for {wanted.Order}: {log.Species.CommonName}, {log.PlannedFor ?? "no plan"}.", $"{wanted.Words}. {Thickness(state, log)}",
            new("Days left", $"{days}", "days", $"to be dry by {DayWords.Of(wanted.Due, state.Today)}") { Source = "due day less the kiln from green, 9 times in 10, and three days of handling", Method = "log-worth", Inputs = [("missing", $"{wanted.MissingBf:#,0} bf"), ("open by", $"{wanted.OpenBy:d MMM yyyy}")] },
            new(state.Orders[wanted.Order].LatePerDayMoney * 7m, Math.Max(1, days), "a week late of the order"), Duties.Mill, Paths.Log(log.Tag), $"See {log.Tag}")
        { Log = log.Tag };
    }

    private static DayTask Open(YardState state, Log log, (int Days, string What, int Since, double MeanC) left)
    {
        var paid = log.PaidMoney ?? 0m;
        var worth = state.Prices.TryGetValue(log.Species.CommonName, out var price) ? price.Green1cMoney : 1m;
        var footage = LogExpected.LikelyBf(state, log) is { } likely ? (decimal)likely : (decimal?)null;
        return new(log.Tag, $"Open {log.Tag} {(left.Days <= 0 ? "now" : $"within {left.Days} days")}: {log.Species.CommonName}, {log.PlannedFor ?? "no plan"}.",
            $"{left.What} {(left.Days <= 0 ? "may have begun" : "is next")}: {left.Since} days here at about {DayWords.Celsius(left.MeanC)}. {Thickness(state, log)}",
            new("Days left", left.Days <= 0 ? "0" : $"{left.Days}", "days", $"before {left.What.ToLowerInvariant()}") { Source = "days before damage, common practice, a table of the house", Inputs = [("here since", $"{log.ReceivedAt:d MMM yyyy}"), ("mean outside since", $"{left.MeanC:0.0} °C"), ("ends coated", log.EndCoated ? "yes" : "no"), ("owner", log.Owner), ("paid", $"{paid:0.00}")] },
            new(footage is { } bf ? bf * worth * 0.15m : paid, Math.Max(1, left.Days), footage is { } sawn ? $"about a seventh of the {sawn:#,0} bf likely from the saw, at {worth:0.00} green, when it stains or checks: common practice" : "what was paid for it"), Duties.Mill, Paths.Log(log.Tag), $"See {log.Tag}")
        { Log = log.Tag };
    }

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
