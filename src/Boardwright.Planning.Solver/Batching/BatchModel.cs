using Boardwright.Planning.Batching;

using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver.Batching;

/// <summary>The instance as a constraint model in which each batch is represented by its longest job, so that its length is a constant.</summary>
/// <remarks>Equations: docs/methods/batching.md.</remarks>
internal sealed class BatchModel
{
    private readonly BatchInstance instance;
    private readonly int horizon;
    private readonly BoolVar?[,] inBatch; // [representative, job]
    private readonly BoolVar?[,] onOven; // [representative, oven]
    private readonly IntVar[] start;
    private readonly BoolVar[] late;
    private readonly List<LinearExpr>[] setup;
    private readonly List<(int Oven, int Before, int Own, BoolVar Follows)> arcs = [];
    private readonly List<LinearExpr> cost = [];

    /// <param name="instance">The instance.</param>
    /// <param name="bound">A cost that is known not to be undercut.</param>
    public BatchModel(BatchInstance instance, long bound)
    {
        this.instance = instance;
        var jobs = instance.Jobs.Count;
        horizon = instance.Ovens.SelectMany(oven => oven.Open).Select(open => open.To).DefaultIfEmpty(0).Max();
        inBatch = new BoolVar?[jobs, jobs];
        onOven = new BoolVar?[jobs, instance.Ovens.Count];
        start = [.. instance.Jobs.Select(job => Model.NewIntVar(Math.Min(job.EarliestStart, horizon), horizon, "start"))];
        late = [.. instance.Jobs.Select(_ => Model.NewBoolVar("late"))];
        setup = [.. instance.Jobs.Select(_ => new List<LinearExpr>())];
        Variables();
        Membership();
        for (var oven = 0; oven < instance.Ovens.Count; oven++)
        {
            Sequence(oven);
        }

        for (var job = 0; job < jobs; job++)
        {
            Intervals(job);
            cost.Add(inBatch[job, job]! * (instance.Weights.Running * instance.Jobs[job].LeastTime));
            cost.Add(late[job] * instance.Weights.Late);
        }

        Model.Add(LinearExpr.Sum(cost) >= bound);
        Redundant(new BatchRelaxation(instance, Model));
        Model.Minimize(LinearExpr.Sum(cost));
    }

    public CpModel Model { get; } = new();

    /// <summary>The schedule a solution stands for.</summary>
    public IReadOnlyList<Batch> Read(Func<IntVar, long> value)
    {
        var batches = new List<Batch>();
        for (var r = 0; r < instance.Jobs.Count; r++)
        {
            for (var oven = 0; oven < instance.Ovens.Count; oven++)
            {
                if (onOven[r, oven] is { } on && value(on) == 1)
                {
                    batches.Add(new(oven, (int)value(start[r]), instance.Jobs[r].LeastTime, [.. Enumerable.Range(0, instance.Jobs.Count).Where(job => inBatch[r, job] is { } member && value(member) == 1)]));
                }
            }
        }

        return batches;
    }

    /// <summary>Tells the solver to start from a schedule.</summary>
    public void Hint(IReadOnlyList<Batch> batches)
    {
        var representative = batches.ToDictionary(batch => batch.Jobs.OrderByDescending(job => instance.Jobs[job].LeastTime).ThenBy(job => job).First());
        for (var r = 0; r < instance.Jobs.Count; r++)
        {
            var batch = representative.GetValueOrDefault(r);
            if (batch is not null)
            {
                Model.AddHint(start[r], batch.Start);
            }

            for (var job = 0; job < instance.Jobs.Count; job++)
            {
                if (inBatch[r, job] is { } member)
                {
                    Model.AddHint(member, batch?.Jobs.Contains(job) == true);
                }
            }

            for (var oven = 0; oven < instance.Ovens.Count; oven++)
            {
                if (onOven[r, oven] is { } on)
                {
                    Model.AddHint(on, batch?.Oven == oven);
                }
            }
        }

        foreach (var batch in batches)
        {
            foreach (var job in batch.Jobs)
            {
                Model.AddHint(late[job], batch.End > instance.Jobs[job].Due);
            }
        }
    }

    // A job may be represented by one of its attribute that runs at least as long, the first of equals, and not longer than it bears.
    private bool MayRepresent(int r, int job)
    {
        var (longer, member) = (instance.Jobs[r], instance.Jobs[job]);
        return r == job || (longer.Attribute == member.Attribute && longer.LeastTime <= member.MostTime
            && (longer.LeastTime > member.LeastTime || (longer.LeastTime == member.LeastTime && r < job)) && longer.Ovens.Intersect(member.Ovens).Any());
    }

    private void Variables()
    {
        for (var r = 0; r < instance.Jobs.Count; r++)
        {
            for (var job = 0; job < instance.Jobs.Count; job++)
            {
                inBatch[r, job] = MayRepresent(r, job) ? Model.NewBoolVar("in") : null;
            }

            foreach (var oven in instance.Jobs[r].Ovens)
            {
                onOven[r, oven] = Model.NewBoolVar("on");
            }

            Model.Add(LinearExpr.Sum(instance.Jobs[r].Ovens.Select(oven => onOven[r, oven]!)) == inBatch[r, r]!);
        }
    }

    private void Membership()
    {
        for (var job = 0; job < instance.Jobs.Count; job++)
        {
            var of = job;
            Model.AddExactlyOne(Enumerable.Range(0, instance.Jobs.Count).Where(r => inBatch[r, of] is not null).Select(r => inBatch[r, of]!));
            for (var r = 0; r < instance.Jobs.Count; r++)
            {
                if (inBatch[r, job] is not { } member)
                {
                    continue;
                }

                if (r != job)
                {
                    Model.AddImplication(member, inBatch[r, r]!);
                    Model.Add(start[r] >= instance.Jobs[job].EarliestStart).OnlyEnforceIf(member);
                    foreach (var oven in instance.Jobs[r].Ovens.Except(instance.Jobs[job].Ovens))
                    {
                        Model.AddBoolOr([member.Not(), onOven[r, oven]!.Not()]);
                    }
                }

                Model.Add(start[r] + instance.Jobs[r].LeastTime <= instance.Jobs[job].Due).OnlyEnforceIf([member, late[job].Not()]);
            }
        }

        for (var r = 0; r < instance.Jobs.Count; r++)
        {
            var members = Enumerable.Range(0, instance.Jobs.Count).Where(job => inBatch[r, job] is not null).ToList();
            Model.Add(
                LinearExpr.WeightedSum(members.Select(job => inBatch[r, job]!), members.Select(job => (long)instance.Jobs[job].Size))
                <= LinearExpr.WeightedSum(instance.Jobs[r].Ovens.Select(oven => onOven[r, oven]!), instance.Jobs[r].Ovens.Select(oven => (long)instance.Ovens[oven].Capacity)));
        }
    }

    // Who follows whom in an oven: one circuit through its batches and back; it carries the set-ups.
    private void Sequence(int oven)
    {
        var circuit = Model.AddCircuit();
        var here = Enumerable.Range(0, instance.Jobs.Count).Where(r => onOven[r, oven] is not null).ToList();
        var intervals = new List<IntervalVar>();
        circuit.AddArc(0, 0, Model.NewBoolVar("idle"));
        for (var a = 0; a < here.Count; a++)
        {
            var (r, on) = (here[a], onOven[here[a], oven]!);
            circuit.AddArc(a + 1, a + 1, on.Not());
            circuit.AddArc(a + 1, 0, Model.NewBoolVar("last"));
            Arc(circuit, oven, 0, a + 1, instance.Ovens[oven].InitialAttribute, r);
            intervals.Add(Model.NewOptionalFixedSizeIntervalVar(start[r], instance.Jobs[r].LeastTime, on, "runs"));
            for (var b = 0; b < here.Count; b++)
            {
                if (a != b && instance.Jobs[r].EarliestStart + instance.Jobs[r].LeastTime + instance.Jobs[here[b]].LeastTime <= horizon)
                {
                    var follows = Arc(circuit, oven, a + 1, b + 1, instance.Jobs[r].Attribute, here[b]);
                    Model.Add(start[here[b]] >= start[r] + (instance.Jobs[r].LeastTime + instance.SetupTimes[instance.Jobs[r].Attribute, instance.Jobs[here[b]].Attribute])).OnlyEnforceIf(follows);
                }
            }
        }

        Model.AddNoOverlap(intervals);
    }

    // The counts of the relaxation are those of this schedule: its linear part knows much that this model alone learns slowly.
    private void Redundant(BatchRelaxation relaxation)
    {
        for (var oven = 0; oven < instance.Ovens.Count; oven++)
        {
            var here = oven;
            foreach (var alike in Enumerable.Range(0, instance.Jobs.Count).Where(r => onOven[r, here] is not null).GroupBy(r => (instance.Jobs[r].Attribute, instance.Jobs[r].LeastTime)))
            {
                var batches = LinearExpr.Sum(alike.Select(r => onOven[r, here]!));
                Model.Add(batches == (relaxation.Count(alike.Key.Attribute, oven, alike.Key.LeastTime) is { } count ? count : LinearExpr.Constant(0)));
            }
        }

        foreach (var pair in arcs.GroupBy(arc => (arc.Oven, arc.Before, arc.Own)))
        {
            Model.Add(LinearExpr.Sum(pair.Select(arc => arc.Follows)) == relaxation.Follows(pair.Key.Oven, pair.Key.Before, pair.Key.Own));
        }

        for (var job = 0; job < instance.Jobs.Count; job++)
        {
            Model.Add(LinearExpr.Sum(relaxation.InTimeOf(job)) + late[job] == 1);
        }
    }

    private BoolVar Arc(CircuitConstraint circuit, int oven, int from, int to, int attribute, int next)
    {
        var follows = Model.NewBoolVar("follows");
        circuit.AddArc(from, to, follows);
        var own = instance.Jobs[next].Attribute;
        arcs.Add((oven, attribute, own, follows));
        setup[next].Add(follows * instance.SetupTimes[attribute, own]);
        cost.Add(follows * (instance.Weights.SetupTime * instance.SetupTimes[attribute, own] + instance.Weights.SetupCost * instance.SetupCosts[attribute, own]));
        return follows;
    }

    // A batch and its set-up lie inside one open interval.
    private void Intervals(int r)
    {
        var before = LinearExpr.Sum(setup[r]);
        foreach (var oven in instance.Jobs[r].Ovens)
        {
            var open = new List<BoolVar>();
            foreach (var (from, to) in instance.Ovens[oven].Open)
            {
                if (Math.Max(from, instance.Jobs[r].EarliestStart) + instance.Jobs[r].LeastTime <= to)
                {
                    var inside = Model.NewBoolVar("inside");
                    Model.Add(start[r] - before >= from).OnlyEnforceIf(inside);
                    Model.Add(start[r] <= to - instance.Jobs[r].LeastTime).OnlyEnforceIf(inside);
                    open.Add(inside);
                }
            }

            Model.Add(LinearExpr.Sum(open) == onOven[r, oven]!);
        }
    }
}
