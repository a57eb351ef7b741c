using Boardwright.Planning.Batching;

namespace Boardwright.Planning.Solver.Batching;

/// <summary>The best schedule and bound so far, from whichever thread; stops all work when they meet.</summary>
internal sealed class BatchRecord(BatchInstance instance, Action<BatchAnswer>? better, CancellationTokenSource stop)
{
    private readonly Lock turn = new();

    public BatchAnswer? Best { get; private set; }

    /// <summary>No schedule costs less.</summary>
    public long Bound { get; private set; }

    public bool Ended => stop.IsCancellationRequested;

    /// <summary>Work that the end of all work ends.</summary>
    public CancellationToken Stop => stop.Token;

    public void Offer(IReadOnlyList<Batch> batches)
    {
        var cost = BatchCost.Of(instance, batches);
        lock (turn)
        {
            if (Best is null || cost < Best.Cost)
            {
                Best = new(batches, cost, Math.Min(Bound, cost));
                better?.Invoke(Best);
            }
        }

        EndWhenProven();
    }

    /// <summary>A solver's bound, which may be a little above a whole number by rounding.</summary>
    public void Raise(double bound)
    {
        lock (turn)
        {
            Bound = Math.Max(Bound, (long)Math.Ceiling(Math.Max(-1.0, bound) - 1e-6));
            Best = Best is null ? null : Best with { Bound = Math.Min(Bound, Best.Cost) };
        }

        EndWhenProven();
    }

    private void EndWhenProven()
    {
        if (Best?.Proven == true)
        {
            stop.Cancel();
        }
    }
}
