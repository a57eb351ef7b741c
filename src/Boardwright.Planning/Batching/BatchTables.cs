namespace Boardwright.Planning.Batching;

/// <summary>An instance as flat tables, so that the search reads neighbours in memory.</summary>
internal sealed class BatchTables
{
    /// <summary>An oven is one bit of a word.</summary>
    public const int OvensMax = 64;

    private readonly int[] setupTime;
    private readonly long[] setupCost;

    public BatchTables(BatchInstance instance)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(instance.Ovens.Count, OvensMax);
        Instance = instance;
        Attributes = instance.SetupTimes.GetLength(0);
        Jobs = [.. instance.Jobs.Select(job => new Job(job.Attribute, job.Size, job.LeastTime, job.MostTime, job.EarliestStart, job.Due, job.Ovens.Aggregate(0UL, (bits, oven) => bits | (1UL << oven))))];
        Capacity = [.. instance.Ovens.Select(oven => oven.Capacity)];
        Initial = [.. instance.Ovens.Select(oven => oven.InitialAttribute)];
        Open = [.. instance.Ovens.Select(oven => oven.Open.ToArray())];
        OfAttribute = [.. Enumerable.Range(0, Attributes).Select(a => Enumerable.Range(0, Jobs.Length).Where(job => Jobs[job].Attribute == a).ToArray())];
        Hopeful = [.. Enumerable.Range(0, Jobs.Length).Where(job => CanBeInTime(instance.Jobs[job]))];
        setupTime = [.. from before in Enumerable.Range(0, Attributes) from own in Enumerable.Range(0, Attributes) select instance.SetupTimes[before, own]];
        setupCost = [.. setupTime.Select((time, index) => instance.Weights.SetupTime * time + instance.Weights.SetupCost * instance.SetupCosts[index / Attributes, index % Attributes])];
    }

    public BatchInstance Instance { get; }

    public int Attributes { get; }

    public Job[] Jobs { get; }

    public int[] Capacity { get; }

    public int[] Initial { get; }

    public (int From, int To)[][] Open { get; }

    /// <summary>Jobs of each attribute.</summary>
    public int[][] OfAttribute { get; }

    public int SetupTime(int before, int own) => setupTime[before * Attributes + own];

    /// <summary>Weighted time and cost of a set-up.</summary>
    public long SetupCost(int before, int own) => setupCost[before * Attributes + own];

    /// <summary>Jobs that can be in time at all: in some open interval of some oven, behind the least set-up.</summary>
    public int[] Hopeful { get; }

    // Opening, set-up and the job alone, against its due time.
    private bool CanBeInTime(BatchJob job) => job.Ovens.Any(oven => Instance.Ovens[oven].Open.Any(open =>
        Math.Max(job.EarliestStart, open.From + Enumerable.Range(0, Attributes).Min(before => Instance.SetupTimes[before, job.Attribute])) + job.LeastTime <= Math.Min(job.Due, open.To)));

    /// <summary>A job; ovens as bits.</summary>
    internal readonly record struct Job(int Attribute, int Size, int Least, int Most, int Earliest, int Due, ulong Ovens);
}
