using Boardwright.Planning.Batching;

namespace Boardwright.Planning.Solver.Batching;

/// <summary>Least time between batches by their attributes, whatever runs between them; set-ups need not obey the triangle inequality.</summary>
internal sealed class BatchGaps
{
    private readonly BatchInstance instance;
    private readonly int attributes;
    private readonly int[] shortest; // least length of a batch, by attribute
    private readonly int[,] between;
    private readonly Dictionary<int, int[][]> first = []; // by oven: interval, attribute

    public BatchGaps(BatchInstance instance)
    {
        this.instance = instance;
        attributes = instance.SetupTimes.GetLength(0);
        shortest = [.. Enumerable.Range(0, attributes).Select(a => instance.Jobs.Where(job => job.Attribute == a).Select(job => job.LeastTime).DefaultIfEmpty(int.MaxValue / 8).Min())];
        between = (int[,])instance.SetupTimes.Clone();
        for (var via = 0; via < attributes; via++)
        {
            for (var before = 0; before < attributes; before++)
            {
                for (var own = 0; own < attributes; own++)
                {
                    between[before, own] = Math.Min(between[before, own], between[before, via] + shortest[via] + between[via, own]);
                }
            }
        }

        Largest = between.Cast<int>().DefaultIfEmpty(0).Max();
        for (var oven = 0; oven < instance.Ovens.Count; oven++)
        {
            first[oven] = Earliest(instance.Ovens[oven]);
        }
    }

    /// <summary>From the end of a batch to the start of a later one.</summary>
    public int Between(int before, int own) => between[before, own];

    /// <summary>The largest of them.</summary>
    public int Largest { get; }

    /// <summary>No batch of the attribute starts sooner in the open interval.</summary>
    public int Earliest(int oven, int interval, int attribute) => first[oven][interval][attribute];

    // A batch is the first of its oven, or comes behind one of an interval before, or behind one of the same interval.
    private int[][] Earliest(BatchOven oven)
    {
        var ran = new HashSet<int>();
        var found = new List<int[]>();
        foreach (var (from, to) in oven.Open)
        {
            var starts = Enumerable.Range(0, attributes).Select(own => ran.Append(oven.InitialAttribute).Min(before => from + instance.SetupTimes[before, own])).ToArray();
            for (var round = 0; round < attributes; round++)
            {
                for (var own = 0; own < attributes; own++)
                {
                    starts[own] = Math.Min(starts[own], Enumerable.Range(0, attributes).Min(before => starts[before] + shortest[before] + instance.SetupTimes[before, own]));
                }
            }

            ran.UnionWith(Enumerable.Range(0, attributes).Where(own => starts[own] + shortest[own] <= to));
            found.Add(starts);
        }

        return [.. found];
    }
}
