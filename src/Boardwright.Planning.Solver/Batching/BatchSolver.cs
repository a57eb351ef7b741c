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

/// <summary>Schedules batch-scheduling instances: annealing finds, the solver proves.</summary>
/// <remarks>One worker searches first and proves then; with more, one thread searches while another proves. Ends when the bound meets the cost.</remarks>
/// <method page="docs/methods/batching.md"/>
public static class BatchSolver
{
    private const int JobsExactMost = 100; // the arcs of the exact model grow with the square of the jobs
    private const double SearchShareAlone = 0.4;
    private const double RelaxationShare = 0.5; // of what is left, where the exact model comes behind it
    private const double RelaxationShareAlone = 0.8;
    private const double LooksEachWork = 2000.0; // one unit of the solver's deterministic time is about a second
    private const string Linear = ",linearization_level:2";
    private const string AllLinear = Linear + ",add_lp_constraints_lazily:false,cp_model_probing_level:0"; // for the relaxation: all rows at once; probing takes seconds and fixes nothing there
    private static readonly double[] RoundEnds = [0.03, 0.15, 1.0];

    /// <summary>The best schedule found, with a bound that holds always.</summary>
    /// <param name="instance">The instance.</param>
    /// <param name="limits">How long to search; with an amount of repeatable work and one worker two runs agree.</param>
    /// <param name="clock">Tells when the seconds are over.</param>
    /// <param name="better">Called for each better schedule, from any thread, one call at a time.</param>
    /// <param name="cancel">Ends the search early; the best schedule so far is the answer.</param>
    /// <returns>No answer when none was found in the time, or none exists.</returns>
    public static Outcome<BatchAnswer> Solve(BatchInstance instance, SolverLimits limits, TimeProvider clock, Action<BatchAnswer>? better = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(instance);
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(clock);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        var run = new Run(instance, limits, clock, new BatchRecord(instance, better, stop));
        return run.Answer();
    }

    /// <summary>A bound by the relaxation alone: no schedule costs less, undivided.</summary>
    public static long Relaxed(BatchInstance instance, SolverLimits limits) => Relaxed(instance, limits, BatchRelaxation.StartsMost);

    internal static long Relaxed(BatchInstance instance, SolverLimits limits, long startsMost)
    {
        ArgumentNullException.ThrowIfNull(instance);
        ArgumentNullException.ThrowIfNull(limits);
        using var stop = new CancellationTokenSource();
        var record = new BatchRecord(instance, null, stop);
        var solver = new CpSolver { StringParameters = limits.Parameters(limits.Seconds) + AllLinear };
        solver.Solve(Relaxation(instance, startsMost));
        record.Raise(solver.BestObjectiveBound);
        return record.Bound;
    }

    private static CpModel Relaxation(BatchInstance instance, long startsMost)
    {
        var relaxation = new BatchRelaxation(instance, new CpModel(), startsMost);
        relaxation.Model.Minimize(relaxation.Cost);
        return relaxation.Model;
    }

    private sealed class Run(BatchInstance instance, SolverLimits limits, TimeProvider clock, BatchRecord record)
    {
        private readonly long began = clock.GetTimestamp();
        private bool impossible;

        private bool Exact => instance.Jobs.Count <= JobsExactMost;

        private double SecondsLeft => Math.Max(0.01, limits.Seconds - clock.GetElapsedTime(began).TotalSeconds);

        public Outcome<BatchAnswer> Answer()
        {
            if (BatchStart.Build(instance) is { } first)
            {
                record.Offer(first);
            }

            record.Raise(BatchFloor.Cost(instance));

            if (limits.Workers > 1)
            {
                var search = Task.Run(() => Search(0, 1.0));
                Prove();
                Search(1, 1.0);
                search.GetAwaiter().GetResult();
            }
            else
            {
                Search(0, SearchShareAlone);
                Prove();
            }

            return record.Best is { } best ? best
                : new Outcome<BatchAnswer>.NoAnswer(impossible ? "There is no schedule: some job fits no oven in its open time." : "No schedule was found in the time; give it more seconds.");
        }

        // Ever longer rounds of annealing, so that a good schedule is there early and the last round has most of the time.
        private void Search(int thread, double share)
        {
            if (instance.Ovens.Count > BatchTables.OvensMax || record.Best is not { } first)
            {
                return;
            }

            var spent = Spent(share);
            var begin = spent();
            for (var round = 0; round < RoundEnds.Length && spent() < 1.0; round++)
            {
                var (from, to) = (spent(), begin + (1.0 - begin) * RoundEnds[round]);
                BatchAnneal.Improve(instance, first.Batches, (ulong)(limits.Seed + 1000 * thread + round), () => record.Ended ? 1.0 : (spent() - from) / Math.Max(1e-9, to - from), (batches, _) => record.Offer(batches));
            }
        }

        // Share of the search's effort that is spent, from 0 to 1: by the clock, or by how often it is asked.
        private Func<double> Spent(double share)
        {
            if (limits.RepeatableWork is { } work)
            {
                var looks = 0;
                return () => looks++ / (work * LooksEachWork);
            }

            return () => clock.GetElapsedTime(began).TotalSeconds / (limits.Seconds * share);
        }

        private void Prove()
        {
            Solve(Relaxation(instance, BatchRelaxation.StartsMost), (Exact ? RelaxationShare : RelaxationShareAlone) * SecondsLeft, null);
            if (record.Ended || !(Exact || record.Best is null))
            {
                return;
            }

            var model = new BatchModel(instance, record.Bound);
            if (record.Best is { } best)
            {
                model.Hint(best.Batches);
            }

            impossible = Solve(model.Model, SecondsLeft, model) is CpSolverStatus.Infeasible;
        }

        private CpSolverStatus Solve(CpModel model, double seconds, BatchModel? exact)
        {
            if (record.Ended)
            {
                return CpSolverStatus.Unknown;
            }

            var solver = new CpSolver { StringParameters = (limits with { Workers = 1 }).Parameters(seconds) + (exact is null ? AllLinear : Linear) };
            solver.SetBestBoundCallback(record.Raise);
            using var callback = exact is null ? null : new Found(exact, record);
            using var registered = record.Stop.Register(solver.StopSearch);
            var status = callback is null ? solver.Solve(model) : solver.Solve(model, callback);
            if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible or CpSolverStatus.Unknown)
            {
                record.Raise(solver.BestObjectiveBound);
            }

            return status;
        }
    }

    private sealed class Found(BatchModel model, BatchRecord record) : CpSolverSolutionCallback
    {
        public override void OnSolutionCallback() => record.Offer(model.Read(Value));
    }
}
