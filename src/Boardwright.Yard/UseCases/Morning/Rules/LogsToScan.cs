using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Logs that must not meet the blade before somebody looks for metal.</summary>
internal static class LogsToScan
{
    public static IEnumerable<DayTask> Of(YardState state) =>
        state.Logs.Values.Where(log => !log.IsSawn && log.MetalScan is MetalScan.NotScanned or MetalScan.FenceLineNotScanned or MetalScan.HitsNotDug).Select(log =>
        {
            var strikes = state.Setting(log.MetalScan == MetalScan.FenceLineNotScanned ? "strikes_fence_line" : "strikes_not_scanned") ?? 0.35;
            var cost = state.Setting("metal_strike") ?? 0.0;
            return new DayTask(log.Tag, log.MetalScan == MetalScan.HitsNotDug ? $"Dig out {log.MetalHits} hits before {log.Tag} goes on the mill." : $"Scan {log.Tag} for metal before anyone saws it.",
                $"{log.Species.CommonName} from {log.Source}: {Words(log)}.",
                new("A strike", $"{cost:0}", "money", $"{strikes:0.##} expected without it") { Source = "strikes per log and cost of a strike, settings of the house", Inputs = [("expected strikes", $"{strikes:0.##}"), ("each", $"{cost:0}")] },
                new((decimal)(strikes * cost), 1, "expected strikes at the cost of a blade and the stop"), Duties.Mill | (log.MetalScan == MetalScan.FenceLineNotScanned ? Duties.Office : Duties.None), $"/write/entry/metal_scanned?log={log.Tag}", "Write the scan");
        });

    private static string Words(Log log) => log.MetalScan switch
    {
        MetalScan.FenceLineNotScanned => "from a fence line, not scanned",
        MetalScan.HitsNotDug => $"{log.MetalHits} hits found, not dug out",
        _ => "not scanned",
    };
}
