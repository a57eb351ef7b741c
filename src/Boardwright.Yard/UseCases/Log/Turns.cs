using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;
using LogState = Boardwright.Yard.Book.State.Log;

namespace Boardwright.Yard.UseCases;

/// <summary>An order line whose own wood does not reach, so that a log is wanted for it.</summary>
/// <param name="MissingBf">Asked, less what its stacks likely yield.</param>
/// <param name="OpenBy">The last day to open a log for it: due, less sawing and stacking, less the kiln from green.</param>
/// <param name="Words">For a person.</param>
public sealed record LogWanted(string Order, DateOnly Due, double MissingBf, DateOnly OpenBy, string Words);

/// <summary>A waiting log in its turn.</summary>
/// <param name="Left">Days before stain, borers or end checks; null where none is expected.</param>
/// <param name="Wanted">The order it is wanted for; null for none.</param>
/// <param name="Days">Days it can wait: the sooner of damage and order; null where neither presses.</param>
/// <param name="Alike">Other waiting logs of the same wood and plan: one setting of the mill for all.</param>
public sealed record QueuedLog(LogState Log, (Sawing.DamageClock Clock, int Since, double MeanC)? Left, LogWanted? Wanted, int? Days, IReadOnlyList<string> Alike);

/// <summary>Which log first: by what may spoil it, and by orders whose own stacks do not reach.</summary>
/// <remarks>
/// An order moves a log up only where it can still be met: opened by the day that leaves the kiln time from green (nine times in ten) and three days for sawing, stacking and loading (common practice).
/// Logs are given to the order that is due first, the one that spoils first before others, until their footage covers what is missing.
/// </remarks>
public static class LogTurns
{
    private const int HandlingDays = 3;
    private const double Enough = 1.0;
    private static readonly MoistureContent UsualTarget = MoistureContent.FromPercent(7.0);

    /// <summary>Every waiting log, the most pressing first.</summary>
    public static IReadOnlyList<QueuedLog> Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var waiting = state.Logs.Values.Where(log => !log.IsSawn).Select(log => (Log: log, Left: YardLog.DaysLeft(state, log))).OrderBy(one => one.Left?.Clock.Days ?? int.MaxValue).ThenBy(one => one.Log.Tag, StringComparer.Ordinal).ToList();
        var wanted = Given(state, [.. waiting.Select(one => one.Log)]);
        return [.. waiting.Select(one =>
        {
            var order = wanted.GetValueOrDefault(one.Log.Tag);
            int? slack = order is null ? null : order.OpenBy.DayNumber - state.Today.DayNumber;
            return new QueuedLog(one.Log, one.Left, order, Least(one.Left?.Clock.Days, slack), [.. waiting.Where(other => IsAlike(one.Log, other.Log)).Select(other => other.Log.Tag)]);
        }).OrderBy(one => one.Days ?? int.MaxValue).ThenBy(one => one.Log.Tag, StringComparer.Ordinal)];
    }

    private static int? Least(int? left, int? right) => left is { } a && right is { } b ? Math.Min(a, b) : left ?? right;

    private static bool IsAlike(LogState log, LogState other) => other.Tag != log.Tag && log.Proven && other.Proven && other.Species == log.Species && other.PlannedFor == log.PlannedFor && log.PlannedFor is not null and not "hold";

    private static Dictionary<string, LogWanted> Given(YardState state, List<LogState> waiting)
    {
        var given = new Dictionary<string, LogWanted>(StringComparer.Ordinal);
        foreach (var (order, line) in state.Orders.Values.Where(order => order.IsOpen).SelectMany(order => order.Lines.Where(line => !line.IsFilled).Select(line => (order, line.Asked))).OrderBy(pair => pair.Asked.DueOn))
        {
            var missing = Missing(state, order, line);
            if (missing < Enough)
                continue;

            var total = missing;
            foreach (var log in waiting.Where(log => !given.ContainsKey(log.Tag) && Fits(state, log, line)))
            {
                if (missing < Enough)
                    break;
                if (OpenBy(state, log, line) is not { } day || day < state.Today)
                    continue;
                given[log.Tag] = new(order.Tag, line.DueOn, total, day, string.Create(CultureInfo.InvariantCulture, $"{order.Customer} misses {total:#,0} bf of {line.Goods} ({order.Tag}, due {DayWords.Of(line.DueOn, state.Today)}); opened by {DayWords.Of(day, state.Today)} it can be dry in time"));
                missing -= YardLog.Scale(log) is Outcome<Sawing.ScaledLog>.Done({ GrossUnrounded: { } bf }) ? bf * LogYield.SoldPerScale(state, log.Species.CommonName).Likely : 0.0;
            }
        }

        return given;
    }

    /// <summary>Board feet, dry, an order still wants beyond what its named stacks likely yield; 0 for goods that are not counted in board feet and for a customer's own wood.</summary>
    public static double Missing(YardState state, Order order, OrderLine line)
    {
        if (line.CustomerWood || line.Species is null || line.ThicknessQuarters is null || LineFootage.Of(state, order, order.Lines.First(one => one.Asked == line)) is not { } wanted)
            return 0.0;
        var kept = state.Stacks.Values.Where(stack => stack is { IsHere: true, Proven: true } && (line.Stacks.Contains(stack.Tag) || stack.ReservedFor == order.Tag));
        return Math.Max(0.0, wanted.Rough - kept.Sum(stack => Yield(state, stack)));
    }

    private static double Yield(YardState state, Stack stack) => StackYield.Of(state, stack)?.Likely ?? stack.Footage.Count;

    private static bool Fits(YardState state, LogState log, OrderLine line) =>
        log is { Proven: true, Owner: "mill" } && log.Species.CommonName == line.Species && log.PlannedFor != "hold"
        && LogCutting.Planned(state, log).Any(one => one.Quarters == line.ThicknessQuarters)
        && (line.Grain == Grain.Quarter) == (log.PlannedFor?.Contains("quarter", StringComparison.OrdinalIgnoreCase) == true);

    private static DateOnly? OpenBy(YardState state, LogState log, OrderLine line)
    {
        var target = line is { McLowPct: { } low, McHighPct: { } high } ? MoistureContent.FromPercent(0.5 * (low + high)) : UsualTarget;
        var days = state.Kilns.Values.Where(kiln => !PlanTimes.IsVacuum(kiln))
            .Select(kiln => PlanTimes.InKiln(kiln, log.Species, NominalThickness.FromQuarters(line.ThicknessQuarters!.Value).Length, target, HouseRules.Steps(state)).From(GreenWood.Moisture(log.Species)) is Outcome<TimeBand>.Done(var band) ? band.Most.Hours / 24.0 : (double?)null)
            .OfType<double>().DefaultIfEmpty(double.NaN).Min();
        return double.IsNaN(days) ? null : line.DueOn.AddDays(-(HandlingDays + (int)Math.Ceiling(days)));
    }
}
