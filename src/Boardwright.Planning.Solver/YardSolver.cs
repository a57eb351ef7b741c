using System.Diagnostics;

using Boardwright.Quantities;

using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver;

/// <summary>Makes the kiln plan of a yard by constraint programming.</summary>
/// <remarks>
/// <para>Levels are settled one after the other: lateness, then risk among plans no later, then cost among plans no later and no riskier.
/// A pass in one go gives the first plan, so that there is an answer however short the time; a search by small changes makes it better, prices of what
/// orders share bound it, and the constraint model settles what they leave open.</para>
/// <para>Method: docs/methods/kiln-plan.md.</para>
/// </remarks>
public static class YardSolver
{
    private const int FirstTries = 40;
    private const double SmallSearchShare = 0.7; // of the seconds; what is left is the constraint model's
    private const int ModelStacksMost = 45;
    private const double LateBoundShare = 0.85; // of the bounds' time; the rest is the risk's
    private const int BoundSteps = 2000; // for a unit of repeatable work
    private const double VisitsPerPair = 40.0; // plans the search visits for a unit of repeatable work: by pairs of stacks
    private const double VisitsMost = 2e5;
    private const double NearerWork = 0.4; // units of repeatable work for a plan with fewer changes
    private const double NearerSeconds = 1.0;
    private const double SecondsPerStack = 0.02; // below this the model is not worth building
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

    /// <summary>An earlier plan's loads that can still be done, under today's facts, each as early as may be: no search is made, and the bounds are those of each order alone in the yard.</summary>
    /// <param name="input">The yard.</param>
    /// <param name="earlier">The plan.</param>
    /// <returns>Refused for unsound input; otherwise done.</returns>
    public static Outcome<PlanAnswer> Carried(PlanInput input, Plan earlier)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(earlier);
        var refusals = PlanInputCheck.Refusals(input);
        if (refusals.Count > 0)
        {
            return new Outcome<PlanAnswer>.Refused(refusals);
        }

        var tables = new PlanTables(input);
        var (plan, score) = Again(tables, earlier);
        var bounds = FirstBounds(tables);
        return new PlanAnswer(plan, PlanOutlook.Of(tables, plan), [.. LevelNames.Select((_, level) => Level(score, level, bounds[level]))]);
    }

    private static PlanAnswer Solved(PlanTables tables, SolverLimits limits, Action<PlanProgress>? better, CancellationToken cancel)
    {
        var watch = Stopwatch.StartNew();
        var best = GreedyPlan.BestOf(tables, FirstTries, (ulong)limits.Seed);
        var score = PlanOutlook.Of(tables, best).Score;
        (Plan Plan, PlanScore Score)? kept = limits.Start is { } start ? Again(tables, start) : null;
        if (kept is { } earlier && earlier.Score < score)
        {
            (best, score) = earlier;
        }

        var bounds = FirstBounds(tables);
        better?.Invoke(new(best, score, Level(score, 0, bounds[0])));
        if (score.LateCents > bounds[0] || score.RiskCents > bounds[1] || tables.Orders.Length == 0)
        {
            Searched(tables, limits, better, watch, bounds, ref best, ref score, cancel);
        }

        var answer = ByModel(tables, limits, better, watch, bounds, best, score, cancel);
        return kept is not { } same ? answer
            : Stays(same.Score, answer.Outlook.Score, limits.ChangeWorthCents) ? Told(tables, same.Plan, answer)
            : limits.ChangeWorthCents > 0 && !cancel.IsCancellationRequested ? Nearer(tables, limits, same.Plan, answer, watch, cancel)
            : answer;
    }

    // As good a plan with fewer changes, where a short search finds one.
    private static PlanAnswer Nearer(PlanTables tables, SolverLimits limits, Plan earlier, PlanAnswer found, Stopwatch watch, CancellationToken cancel)
    {
        var search = new PlanSearch(tables, (ulong)limits.Seed);
        var until = Math.Max(limits.Seconds, watch.Elapsed.TotalSeconds) + NearerSeconds;
        search.FewerChanges(earlier, found.Plan, limits.ChangeWorthCents, Visits(tables, NearerWork), () => cancel.IsCancellationRequested || watch.Elapsed.TotalSeconds > until);
        return Told(tables, search.Best, found);
    }

    private static int Visits(PlanTables tables, double work) => (int)Math.Max(1.0, work * Math.Min(VisitsMost, VisitsPerPair * tables.Stacks.Length * tables.Stacks.Length));

    // An earlier plan's loads under today's facts, each as early as may be.
    private static (Plan Plan, PlanScore Score) Again(PlanTables tables, Plan start)
    {
        var plan = HandPlan.Of(tables, start.Charges.Where(charge => charge.Started is null).OrderBy(charge => charge.LoadStep).Select(charge => new HandCharge(charge.Kiln, charge.Stacks, default))).Plan;
        return (plan, PlanOutlook.Of(tables, plan).Score);
    }

    private static bool Stays(PlanScore kept, PlanScore found, long worth) =>
        found < kept && kept.LateCents == found.LateCents && kept.RiskCents - found.RiskCents + kept.CostCents - found.CostCents < worth;

    // Bounds of a level hold among plans as good on the levels before; of a plan that is worse on risk only those of the first two are known.
    private static PlanAnswer Told(PlanTables tables, Plan plan, PlanAnswer found)
    {
        var outlook = PlanOutlook.Of(tables, plan);
        var worseRisk = outlook.Score.RiskCents > found.Outlook.Score.RiskCents;
        return new(plan, outlook, [.. found.Levels.Select((level, index) => Level(outlook.Score, index, index == 2 && worseRisk ? -tables.Stacks.Sum(stack => stack.GainCents) : level.BoundCents))]);
    }

    // Plans and bounds at once: the search for better plans needs one core, the bounds another.
    private static void Searched(PlanTables tables, SolverLimits limits, Action<PlanProgress>? better, Stopwatch watch, long[] bounds, ref Plan best, ref PlanScore score, CancellationToken cancel)
    {
        var search = new PlanSearch(tables, (ulong)limits.Seed);
        var (start, reached, seconds) = (best, new[] { score.LateCents, score.RiskCents }, SearchShare(tables) * limits.Seconds);
        var most = limits.RepeatableWork is { } work ? Visits(tables, work) : int.MaxValue;
        var steps = limits.RepeatableWork is { } share ? (int)Math.Max(1.0, share * BoundSteps) : int.MaxValue;
        double Progress(int visited) => cancel.IsCancellationRequested || limits.IsEnough(Volatile.Read(ref reached[0]), Volatile.Read(ref bounds[0])) ? 1.0 : Math.Max((double)visited / most, watch.Elapsed.TotalSeconds / seconds);
        void Search() => search.Run(start, Progress, (plan, found) =>
        {
            (reached[0], reached[1]) = (found.LateCents, Math.Min(reached[1], found.RiskCents));
            better?.Invoke(new(plan, found, Level(found, 0, Math.Min(bounds[0], found.LateCents))));
        });
        void Bound()
        {
            for (var level = 0; level < 2; level++)
            {
                var (one, until) = (level, level == 0 ? seconds * LateBoundShare : seconds);
                bool More(int done) => !limits.IsEnough(Volatile.Read(ref reached[0]), Volatile.Read(ref bounds[0])) && done < steps && !cancel.IsCancellationRequested && watch.Elapsed.TotalSeconds < until;
                if (bounds[one] < reached[one] && More(0))
                {
                    bounds[one] = Math.Max(bounds[one], ChargeBound.Of(tables, one == 1, () => Volatile.Read(ref reached[one]), More, found => bounds[one] = Math.Max(bounds[one], found)));
                }
            }
        }

        if (limits.Workers > 1 && limits.RepeatableWork is null)
        {
            Parallel.Invoke(Search, Bound);
        }
        else
        {
            Search(); // better plans first: people wait for them, and the bounds look no further than the best
            Bound();
        }

        (best, score) = (search.Best, search.Score);
    }

    // What is left is the constraint model's; on large yards it adds nothing.
    private static double SearchShare(PlanTables tables) => tables.Stacks.Length <= ModelStacksMost ? SmallSearchShare : 1.0;

    private static PlanAnswer ByModel(PlanTables tables, SolverLimits limits, Action<PlanProgress>? better, Stopwatch watch, long[] bounds, Plan best, PlanScore score, CancellationToken cancel)
    {
        YardModel? model = null;
        for (var level = 0; level < LevelNames.Length; level++)
        {
            var left = limits.Seconds - watch.Elapsed.TotalSeconds;
            if (cancel.IsCancellationRequested || limits.IsEnough(score.LateCents, bounds[0]) || LevelRun.ValueOf(score, level) <= bounds[level] || (limits.RepeatableWork is null && (tables.Stacks.Length > ModelStacksMost || left < tables.Stacks.Length * SecondsPerStack)))
            {
                continue; // nothing better exists, or there is no time to build the model
            }

            model ??= new YardModel(tables, limits.ChargesEachKiln, best);
            for (var before = 0; before < level; before++)
            {
                model.Model.Add(Objective(model, before) <= LevelRun.ValueOf(score, before));
            }

            var run = new LevelRun(tables, model, LevelNames[level], level, better, best, score, bounds[level]);
            var seconds = (limits.Seconds - watch.Elapsed.TotalSeconds) / (LevelNames.Length - level == 1 ? 1.0 : 2.0);
            _ = run.Solve(Objective(model, level), limits.Parameters(Math.Max(0.01, seconds)), cancel);
            (best, score, bounds[level]) = (run.Best, run.Score, run.Bound);
        }

        return new(best, PlanOutlook.Of(tables, best), [.. LevelNames.Select((_, level) => Level(score, level, bounds[level]))]);
    }

    private static LinearExpr Objective(YardModel model, int level) => level switch { 0 => model.Late, 1 => model.Risk, _ => model.Cost };

    private static PlanLevel Level(PlanScore score, int level, long bound) => new(LevelNames[level], LevelRun.ValueOf(score, level), Math.Min(bound, LevelRun.ValueOf(score, level)));

    private static long[] FirstBounds(PlanTables tables) => [Alone(tables, false), Alone(tables, true), -tables.Stacks.Sum(stack => stack.GainCents)];

    private static long Alone(PlanTables tables, bool most) => tables.Orders.Sum(order => AloneInYard.DaysLate(tables, order, most) * order.CentsPerDay);
}
