using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver;

/// <summary>The search of one level, starting from the best plan of the levels before.</summary>
internal sealed class LevelRun(PlanTables tables, YardModel model, string name, int level, Action<PlanProgress>? better, Plan best, PlanScore score, long bound) : CpSolverSolutionCallback
{
    private readonly Lock gate = new();

    public Plan Best { get; private set; } = best;

    public PlanScore Score { get; private set; } = score;

    public long Reached => ValueOf(Score, level);

    /// <summary>No plan as good on the levels before has less.</summary>
    public long Bound { get; private set; } = bound;

    public static long ValueOf(PlanScore score, int level) => level switch { 0 => score.LateCents, 1 => score.RiskCents, _ => score.CostCents };

    /// <returns>Seconds used.</returns>
    public double Solve(LinearExpr objective, string parameters, CancellationToken cancel)
    {
        if (cancel.IsCancellationRequested || Reached <= Bound)
        {
            return 0.0; // nothing better exists
        }

        model.Model.Minimize(objective);
        model.Hint(Best);
        var solver = new CpSolver { StringParameters = parameters };
        solver.SetBestBoundCallback(Tighten);
        CpSolverStatus status;
        using (cancel.Register(solver.StopSearch))
        {
            status = solver.Solve(model.Model, this);
        }

        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
        {
            Tighten(solver.BestObjectiveBound);
            return solver.WallTime();
        }

        if (status is CpSolverStatus.Unknown)
        {
            return solver.WallTime(); // what it then calls its bound is 0, which no cost below 0 respects
        }

        throw new InvalidOperationException($"The kiln plan's model has no solution ({status} {model.Model.Validate()}), though the first plan breaks no rule.");
    }

    public override void OnSolutionCallback()
    {
        lock (gate)
        {
            var plan = model.Read(variable => Value(variable));
            var found = PlanOutlook.Of(tables, plan).Score;
            if (found < Score)
            {
                (Best, Score) = (plan, found);
                better?.Invoke(new(plan, found, new(name, ValueOf(found, level), Math.Min(Bound, ValueOf(found, level)))));
            }
        }
    }

    private void Tighten(double bound)
    {
        lock (gate)
        {
            if (Math.Abs(bound) < 1e15) // before the search has a bound it reports an enormous one
            {
                Bound = Math.Max(Bound, (long)Math.Ceiling(bound - 1e-6));
            }
        }
    }
}
