using System.Globalization;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What a sawn log gave beside what its plan promised, thickness by thickness.</summary>
/// <param name="Rows">By thickness; planned is null where no plan was kept.</param>
/// <param name="Figures">Footage, worth, and share of its scale beside what such logs usually give.</param>
public sealed record LogSawnSheet(IReadOnlyList<LogSawnRow> Rows, IReadOnlyList<Traced> Figures)
{
    /// <summary>Of a log; null while it is not sawn.</summary>
    public static LogSawnSheet? Of(YardState state, Log log)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(log);
        if (!log.IsSawn)
            return null;

        var sawn = log.Into.GroupBy(into => state.Stacks.GetValueOrDefault(into.Stack)?.Thickness.Quarters ?? 0).ToDictionary(group => group.Key, group => (Pieces: group.Sum(into => into.Pieces), Bf: group.Sum(into => into.Bf)));
        var planned = (log.SawnPlan?.Parts ?? []).ToDictionary(part => part.ThicknessQuarters);
        var rows = sawn.Keys.Union(planned.Keys).Order().Select(quarters => new LogSawnRow(
            quarters, planned.GetValueOrDefault(quarters)?.Pieces, planned.GetValueOrDefault(quarters)?.Bf, sawn.GetValueOrDefault(quarters).Pieces, sawn.GetValueOrDefault(quarters).Bf)).ToList();
        return new(rows, [.. FiguresOf(state, log)]);
    }

    private static IEnumerable<Traced> FiguresOf(YardState state, Log log)
    {
        if (log.SawnPlan is { Parts.Count: > 0 } plan)
        {
            var (bf, money) = (plan.Parts.Sum(part => part.Bf), plan.Parts.Sum(part => part.Money));
            yield return new("Sawn of planned", Text($"{100.0 * log.SawnBf / bf:0}"), "%", Text($"{log.SawnBf:0} of {bf:0} bf, green, nominal, {plan.Pattern} sawn"))
            {
                Method = "sawn-yield",
                Source = $"the plan as it stood that day; the count of {log.SawnBy}",
                Inputs = [.. plan.Parts.Select(part => ($"planned {part.ThicknessQuarters}/4", Text($"{part.Bf:0.0} bf")))],
            };
            yield return new("Worth of planned", Text($"{100.0 * plan.SawnMoney / money:0}"), "%", Text($"{plan.SawnMoney:#,0} of {money:#,0} money at the prices of the plan; {(log.SawnBoards.Count > 0 ? "by the sizes counted" : "by footage, sizes were not counted")}"))
            {
                Method = "sawn-yield",
                Source = "prices the log was planned at; grade is not in them",
                Inputs = [("sizes counted", Text($"{log.SawnBoards.Sum(board => board.Pieces)} boards"))],
            };
        }

        if (LogYield.RatioOf(log) is { } ratio)
        {
            var (usual, counts) = (LogYield.Of(state).Next(log.Species.CommonName, log.SawnBy), LogYield.Sawn(state).Any(sawn => sawn.Log.Tag == log.Tag && sawn.Counts));
            yield return new("Over its scale", Text($"{ratio:0.00}"), "bf/bf", Text($"{log.SawnBy} gets {usual.Ratio:0.00} from {log.Species.CommonName}, {usual.Low:0.00} to {usual.High:0.00} in 8 logs of 10{(counts ? "" : "; this log does not teach")}"))
            {
                Method = "sawn-yield",
                Source = $"{usual.Logs} such logs of this yard and the house’s record before them",
                Inputs = [("green tally", Text($"{log.SawnBf:0.#} bf")), ("International 1/4, not rounded", Text($"{log.SawnBf / ratio:0.0} bf"))],
            };
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A thickness of a sawn log.</summary>
public sealed record LogSawnRow(int ThicknessQuarters, int? PlannedPieces, double? PlannedBf, int SawnPieces, double SawnBf);
