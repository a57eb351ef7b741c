using Boardwright.Planning.Batching;
using Boardwright.Quantities;

using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver.Batching;

/// <summary>A schedule and how near it is to the best, undivided.</summary>
/// <param name="Batches">The schedule.</param>
/// <param name="Cost">Its cost.</param>
/// <param name="Bound">No schedule costs less.</param>
public sealed record BatchAnswer(IReadOnlyList<Batch> Batches, long Cost, long Bound)
{
    /// <summary>True when nothing better exists.</summary>
    public bool Proven => Bound >= Cost;

    /// <summary>Distance to the bound in percent of the cost.</summary>
    public double GapPercent => Proven ? 0.0 : 100.0 * (Cost - Bound) / Math.Max(1.0, Cost);
}

/// <summary>Solves batch-scheduling instances by the planner's constraint solver.</summary>
/// <method page="docs/methods/batching.md"/>
public static class BatchSolver
{
    /// <summary>The best schedule found, with a bound that holds always.</summary>
    /// <returns>No answer when none was found in the time, or none exists.</returns>
    public static Outcome<BatchAnswer> Solve(BatchInstance instance, SolverLimits limits, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(instance);
        ArgumentNullException.ThrowIfNull(limits);
        var model = new BatchModel(instance);
        var first = BatchStart.Build(instance);
        if (first is not null)
        {
            model.Hint(first);
        }

        var solver = new CpSolver { StringParameters = limits.Parameters(limits.Seconds) };
        CpSolverStatus status;
        using (cancel.Register(solver.StopSearch))
        {
            status = solver.Solve(model.Model);
        }

        // Running time alone is a bound before the search has one: each job runs somewhere, jobs of an oven together as long as the longest.
        var bound = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible or CpSolverStatus.Unknown ? Math.Max(0L, (long)Math.Ceiling(Math.Max(-1.0, solver.BestObjectiveBound) - 1e-6)) : 0L;
        var found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? model.Read(variable => solver.Value(variable)) : null;
        var best = new[] { found, first }.OfType<IReadOnlyList<Batch>>().MinBy(batches => BatchCost.Of(instance, batches));
        return best is not null ? new BatchAnswer(best, BatchCost.Of(instance, best), Math.Min(bound, BatchCost.Of(instance, best)))
            : new Outcome<BatchAnswer>.NoAnswer(status is CpSolverStatus.Infeasible ? "There is no schedule: some job fits no oven in its open time." : "No schedule was found in the time; give it more seconds.");
    }
}
