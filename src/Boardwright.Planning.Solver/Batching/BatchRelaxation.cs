using Boardwright.Planning.Batching;

using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver.Batching;

/// <summary>An easier model whose least cost no schedule undercuts: batches are counted by attribute, oven and length; only batches that bring jobs in time have a start.</summary>
/// <remarks>
/// Every schedule is a solution of it with the same cost, so its bound holds for schedules. What it leaves out: when late batches run, and which of the jobs counted together share a batch.
/// Equations: docs/methods/batching.md.
/// </remarks>
/// <source id="fekete-schepers-2001" locator="function u(k)"/>
internal sealed class BatchRelaxation
{
    private const int AttributesJoinedMost = 8;

    /// <summary>Ways to be in time, by start, up to which starts are told apart.</summary>
    public const long StartsMost = 60_000;

    private readonly BatchInstance instance;
    private readonly BatchGaps gaps;
    private readonly int attributes;
    private readonly int[][] lengths; // by attribute, ascending
    private readonly Dictionary<(int Attribute, int Oven, int Length), Group> groups = [];
    private readonly Dictionary<(int Attribute, int Oven, int Length, int Start), Timed> timed = [];
    private readonly List<LinearExpr> cost = [];
    private readonly List<BoolVar>[] inTime; // by job
    private readonly bool startsTold; // false where jobs have so much time that a model of every start would be too large
    private readonly IntVar[,,] follows; // oven, attribute before, own attribute

    /// <param name="instance">The instance.</param>
    /// <param name="model">Where the constraints are put.</param>
    /// <param name="startsMost">With more ways to be in time no starts are told apart: the bound is then weaker.</param>
    public BatchRelaxation(BatchInstance instance, CpModel model, long startsMost = StartsMost)
    {
        (this.instance, Model) = (instance, model);
        attributes = instance.SetupTimes.GetLength(0);
        gaps = new(instance);
        inTime = [.. instance.Jobs.Select(_ => new List<BoolVar>())];
        follows = new IntVar[instance.Ovens.Count, attributes, attributes];
        lengths = [.. Enumerable.Range(0, attributes).Select(a => instance.Jobs.Where(job => job.Attribute == a).Select(job => job.LeastTime).Distinct().Order().ToArray())];
        Groups();
        startsTold = Enumerable.Range(0, instance.Jobs.Count).SelectMany(InTime).Sum(one => one.Last - one.First + 1L) <= startsMost;
        foreach (var alike in Enumerable.Range(0, instance.Jobs.Count).GroupBy(Kind))
        {
            Assign([.. alike]);
        }

        foreach (var ((attribute, oven, length), group) in groups)
        {
            Room(oven, group);
            cost.Add(group.Count * (instance.Weights.Running * length));
        }

        foreach (var ((_, oven, _, _), batch) in timed)
        {
            foreach (var (_, member) in batch.Jobs)
            {
                Model.AddImplication(member, batch.Runs);
            }

            Model.Add(LinearExpr.WeightedSum(batch.Jobs.Select(job => job.In), batch.Jobs.Select(job => (long)instance.Jobs[job.Job].Size)) <= batch.Runs * instance.Ovens[oven].Capacity);
        }

        var exclusion = new BatchExclusion(gaps, attributes);
        for (var oven = 0; oven < instance.Ovens.Count; oven++)
        {
            OneAtATime(oven, exclusion);
            Setups(oven);
        }

        Levels();
    }

    public CpModel Model { get; }

    /// <summary>What no schedule undercuts.</summary>
    public LinearExpr Cost => LinearExpr.Sum(cost) + instance.Weights.Late * instance.Jobs.Count;

    /// <summary>Exactly one is true when the job is in time; empty when it cannot be.</summary>
    public IReadOnlyList<BoolVar> InTimeOf(int job) => inTime[job];

    /// <summary>Batches of a length; null when the oven can have none.</summary>
    public IntVar? Count(int attribute, int oven, int length) => groups.GetValueOrDefault((attribute, oven, length))?.Count;

    /// <summary>How often a batch of one attribute comes behind one of another.</summary>
    public IntVar Follows(int oven, int before, int own) => follows[oven, before, own];

    // Jobs that can be exchanged for each other are counted together, unless they can be in time.
    private (int, int, int, int, string, int) Kind(int number)
    {
        var job = instance.Jobs[number];
        return (job.Attribute, job.Size, job.LeastTime, lengths[job.Attribute].Last(length => length <= job.MostTime), string.Join(",", job.Ovens), InTime(number).Any() ? number : -1);
    }

    private void Groups()
    {
        for (var attribute = 0; attribute < lengths.Length; attribute++)
        {
            for (var oven = 0; oven < instance.Ovens.Count; oven++)
            {
                foreach (var length in lengths[attribute])
                {
                    var most = instance.Jobs.Count(job => job.Attribute == attribute && job.LeastTime <= length && job.MostTime >= length && job.Ovens.Contains(oven));
                    if (most > 0)
                    {
                        groups[(attribute, oven, length)] = new(Model.NewIntVar(0, most, "batches"));
                    }
                }
            }
        }
    }

    // Where a job can be in time: oven, batch length, first and last start.
    private IEnumerable<(int Oven, int Length, int First, int Last)> InTime(int number)
    {
        var job = instance.Jobs[number];
        return
            from oven in job.Ovens
            where job.Size <= instance.Ovens[oven].Capacity
            from length in lengths[job.Attribute]
            where length >= job.LeastTime && length <= job.MostTime
            from interval in Enumerable.Range(0, instance.Ovens[oven].Open.Count)
            let first = Math.Max(job.EarliestStart, gaps.Earliest(oven, interval, job.Attribute))
            let last = Math.Min(job.Due, instance.Ovens[oven].Open[interval].To) - length
            where last >= first
            select (oven, length, first, last);
    }

    // Each job is in time in some timed batch, or counted in some group.
    private void Assign(IReadOnlyList<int> alike)
    {
        var number = alike[0];
        var job = instance.Jobs[number];
        var ways = new List<LinearExpr>();
        foreach (var (oven, length, first, last) in alike.Count == 1 ? InTime(number) : [])
        {
            foreach (var start in startsTold ? Enumerable.Range(first, last - first + 1) : [first])
            {
                var member = Model.NewBoolVar("in time");
                if (startsTold)
                {
                    Run(job.Attribute, oven, length, start).Jobs.Add((number, member));
                }

                groups[(job.Attribute, oven, length)].Jobs.Add((job.Size, member));
                ways.Add(member);
                inTime[number].Add(member);
                cost.Add(member * -instance.Weights.Late);
            }
        }

        foreach (var oven in job.Ovens.Where(oven => job.Size <= instance.Ovens[oven].Capacity))
        {
            foreach (var length in lengths[job.Attribute].Where(length => length >= job.LeastTime && length <= job.MostTime))
            {
                var counted = Model.NewIntVar(0, alike.Count, "counted");
                groups[(job.Attribute, oven, length)].Jobs.Add((job.Size, counted));
                ways.Add(counted);
            }
        }

        Model.Add(LinearExpr.Sum(ways) == alike.Count);
    }

    private Timed Run(int attribute, int oven, int length, int start)
    {
        if (!timed.TryGetValue((attribute, oven, length, start), out var batch))
        {
            timed[(attribute, oven, length, start)] = batch = new(Model.NewBoolVar("runs"));
            groups[(attribute, oven, length)].Timed.Add(batch);
        }

        return batch;
    }

    // Room of all batches of a group; and the same by rounded sizes, which see that two jobs above half the room do not share a batch.
    private void Room(int oven, Group group)
    {
        var capacity = instance.Ovens[oven].Capacity;
        Model.Add(LinearExpr.Sum(group.Timed.Select(batch => batch.Runs)) <= group.Count);
        Model.Add(LinearExpr.WeightedSum(group.Jobs.Select(job => job.Count), group.Jobs.Select(job => (long)job.Size)) <= group.Count * capacity);
        for (var parts = 1; parts <= BatchFloor.PartsMost; parts++)
        {
            var sizes = group.Jobs.Select(job => BatchFloor.Rounded(job.Size, capacity, parts)).ToList();
            if (sizes.Zip(group.Jobs).Any(pair => pair.First > (long)parts * pair.Second.Size))
            {
                Model.Add(LinearExpr.WeightedSum(group.Jobs.Select(job => job.Count), sizes) <= group.Count * ((long)parts * capacity));
            }
        }
    }

    // No two timed batches of an oven at once, with the least set-up between them.
    private void OneAtATime(int oven, BatchExclusion exclusion)
    {
        var here = timed.Where(one => one.Key.Oven == oven).ToList();
        foreach (var row in exclusion.Rows([.. here.Select(one => (one.Key.Attribute, one.Key.Start, one.Key.Start + one.Key.Length))]))
        {
            Model.AddAtMostOne(row.Select(number => here[number].Value.Runs));
        }
    }

    // What goes into an attribute's batches comes from some attribute's batches, or from what the oven was last used for.
    private void Setups(int oven)
    {
        var count = new LinearExpr[attributes];
        for (var own = 0; own < attributes; own++)
        {
            count[own] = LinearExpr.Sum(groups.Where(group => group.Key.Attribute == own && group.Key.Oven == oven).Select(group => group.Value.Count));
            for (var before = 0; before < attributes; before++)
            {
                follows[oven, before, own] = Model.NewIntVar(0, instance.Jobs.Count, "follows");
                cost.Add(follows[oven, before, own] * (instance.Weights.SetupTime * instance.SetupTimes[before, own] + instance.Weights.SetupCost * instance.SetupCosts[before, own]));
            }
        }

        for (var own = 0; own < attributes; own++)
        {
            var into = LinearExpr.Sum(Enumerable.Range(0, attributes).Select(before => follows[oven, before, own]));
            var from = LinearExpr.Sum(Enumerable.Range(0, attributes).Select(next => follows[oven, own, next]));
            Model.Add(into == count[own]);
            Model.Add(from <= count[own] + (instance.Ovens[oven].InitialAttribute == own ? 1 : 0));
        }

        Joined(oven, count);
    }

    // Set-ups join into one row from what the oven was last used for: any attributes without that one, some of them used, are entered from outside.
    private void Joined(int oven, LinearExpr[] count)
    {
        var others = Enumerable.Range(0, attributes).Where(a => a != instance.Ovens[oven].InitialAttribute && groups.Keys.Any(group => group.Attribute == a && group.Oven == oven)).ToList();
        var used = others.ToDictionary(own => own, _ => Model.NewBoolVar("used"));
        foreach (var own in others)
        {
            Model.Add(count[own] <= used[own] * instance.Jobs.Count);
        }

        // Beyond some attributes only one at a time: the sets double with each.
        var sets = others.Count <= AttributesJoinedMost ? Enumerable.Range(1, (1 << others.Count) - 1) : Enumerable.Range(0, others.Count).Select(one => 1 << one);
        foreach (var set in sets)
        {
            var inside = others.Where((_, place) => (set >> place & 1) != 0).ToList();
            var entered = LinearExpr.Sum(from before in Enumerable.Range(0, attributes).Except(inside) from own in inside select follows[oven, before, own]);
            foreach (var own in inside)
            {
                Model.Add(entered >= used[own]);
            }
        }
    }

    // Jobs that ask for at least some length need so many batches of that length or more, whole ones.
    private void Levels()
    {
        var capacity = instance.Ovens.Max(oven => oven.Capacity);
        for (var attribute = 0; attribute < lengths.Length; attribute++)
        {
            foreach (var level in lengths[attribute])
            {
                var sizes = instance.Jobs.Where(job => job.Attribute == attribute && job.LeastTime >= level).Select(job => job.Size).ToList();
                Model.Add(LinearExpr.Sum(groups.Where(group => group.Key.Attribute == attribute && group.Key.Length >= level).Select(group => group.Value.Count)) >= BatchFloor.Batches(sizes, capacity));
            }
        }
    }

    private sealed record Group(IntVar Count)
    {
        public List<(int Size, IntVar Count)> Jobs { get; } = [];

        public List<Timed> Timed { get; } = [];
    }

    private sealed record Timed(BoolVar Runs)
    {
        public List<(int Job, BoolVar In)> Jobs { get; } = [];
    }
}
