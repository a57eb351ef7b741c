using Boardwright.Quantities;

using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver;

/// <summary>Makes the kiln plan of a yard by constraint programming.</summary>
/// <remarks>
/// <para>Levels are settled one after the other: lateness, then risk among plans no later, then cost among plans no later and no riskier.
/// A pass in one go gives the first plan, so that there is an answer however short the time.</para>
/// <para>Method: docs/methods/kiln-plan.md.</para>
/// </remarks>
public static class YardSolver
{
    private const int FirstTries = 40;
    private static readonly string[] LevelNames = ["late", "risk", "cost"];

    /// <summary>The best plan found within the limits, with a bound for each level.</summary>
    /// <param name="input">The yard.</param>
    /// <param name="limits">How long to search.</param>
    /// <param name="better">Called from solver threads, one call at a time, each time a better plan is found.</param>
    /// <param name="cancel">Ends the search early; the best plan so far is the answer.</param>
    /// <returns>Refused for unsound input; otherwise done.</returns>
    public static Outcome<PlanAnswer> Solve(PlanInput input, SolverLimits limits, Action<PlanProgress>? better = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(limits);
        var refusals = PlanInputCheck.Refusals(input);
        return refusals.Count > 0 ? new Outcome<PlanAnswer>.Refused(refusals) : Solved(new PlanTables(input), limits, better, cancel);
    }

    private static PlanAnswer Solved(PlanTables tables, SolverLimits limits, Action<PlanProgress>? better, CancellationToken cancel)
    {
        var best = GreedyPlan.BestOf(tables, FirstTries, (ulong)limits.Seed);
        var model = new YardModel(tables, limits.ChargesEachKiln, best);
        LinearExpr[] levels = [model.Late, model.Risk, model.Cost];
        var score = PlanOutlook.Of(tables, best).Score;
        better?.Invoke(new(best, score, new(LevelNames[0], score.LateCents, 0)));
        var settled = new List<PlanLevel>();
        var left = limits.Seconds;
        for (var level = 0; level < levels.Length; level++)
        {
            var run = new LevelRun(tables, model, LevelNames[level], level, better, best, score);
            var seconds = left / (levels.Length - level == 1 ? 1.0 : 2.0);
            left -= run.Solve(levels[level], limits.Parameters(Math.Max(0.01, seconds)), cancel);
            (best, score) = (run.Best, run.Score);
            settled.Add(new(LevelNames[level], run.Reached, Math.Min(run.Bound, run.Reached)));
            model.Model.Add(levels[level] <= run.Reached);
        }

        // A later level can only have kept or lowered the value of an earlier one.
        return new(best, PlanOutlook.Of(tables, best), [.. settled.Select((level, index) => level with { Cents = LevelRun.ValueOf(score, index) })]);
    }
}
