using Boardwright.Planning.Batching;
using Boardwright.Planning.Solver;
using Boardwright.Planning.Solver.Batching;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A public batch-scheduling instance through the planner's engine.</summary>
public static class PlanBatching
{
    private const double UsualSeconds = 20.0;
    private const double SecondsMax = 3600.0;
    private const int Workers = 2;

    public static Command Command { get; } = Command.Of("plan", "batching", "Schedules a batch-scheduling instance by the planner's engine, with a bound", Run) with
    {
        Argument = new Argument("FILE.dzn", "an instance in the open data format of constraint models: jobs, ovens, set-ups, open intervals"),
        Options = [Option.Optional("seconds", "N", "search this long (default 20; ends sooner when proven)")],
        Examples = ["plan batching demo/examples/batching-small.dzn"],
    };

    /// <summary>A batch; ovens and jobs are counted from 1 as in the file.</summary>
    public sealed record BatchLine(int Oven, int Start, int Length, IReadOnlyList<int> Jobs);

    public sealed record Answer(double Cost, double Bound, double GapPct, bool Feasible, IReadOnlyList<BatchLine> Batches, bool Proven, int LateJobs, long CostUndivided);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var seconds = ask.Number("seconds", UsualSeconds);
        if (!ask.Refuses && seconds is not (> 0.0 and <= SecondsMax))
        {
            ask.Refuse("seconds", ask.Text("seconds"), $"more than 0, at most {SecondsMax:0}");
        }

        var text = ask.ArgumentFile();
        return ask.Refuses ? ask.Refused<Answer>() : DznText.Read("FILE.dzn", text).Then(instance => Solved(instance, seconds));
    }

    private static Outcome<Answer> Solved(BatchInstance instance, double seconds) => BatchSolver.Solve(instance, new SolverLimits(seconds, Workers), TimeProvider.System).Then<Answer>(found =>
    {
        var divisor = Math.Max(1L, instance.Weights.Divisor);
        return new Answer(
            (double)found.Cost / divisor, (double)found.Bound / divisor, found.GapPercent, BatchCheck.Faults(instance, found.Batches).Count == 0,
            [.. found.Batches.OrderBy(batch => batch.Oven).ThenBy(batch => batch.Start).Select(batch => new BatchLine(batch.Oven + 1, batch.Start, batch.Length, [.. batch.Jobs.Order().Select(job => job + 1)]))],
            found.Proven, found.Batches.Sum(batch => batch.Jobs.Count(job => batch.End > instance.Jobs[job].Due)), found.Cost);
    });
}
