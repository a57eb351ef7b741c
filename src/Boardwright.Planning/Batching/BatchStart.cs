namespace Boardwright.Planning.Batching;

/// <summary>A schedule in one pass, where the search starts from: jobs by due time, each joins a batch that it does not make longer or opens one where it ends first.</summary>
public static class BatchStart
{
    /// <summary>The schedule; null when a job finds no place.</summary>
    public static IReadOnlyList<Batch>? Build(BatchInstance instance)
    {
        ArgumentNullException.ThrowIfNull(instance);
        var batches = new List<Batch>();
        foreach (var job in Enumerable.Range(0, instance.Jobs.Count).OrderBy(job => instance.Jobs[job].Due).ThenByDescending(job => instance.Jobs[job].LeastTime))
        {
            if (!Join(instance, batches, job) && !Open(instance, batches, job))
            {
                return null;
            }
        }

        return batches;
    }

    private static bool Join(BatchInstance instance, List<Batch> batches, int number)
    {
        var job = instance.Jobs[number];
        var best = -1;
        for (var b = 0; b < batches.Count; b++)
        {
            var batch = batches[b];
            var fits = instance.Jobs[batch.Jobs[0]].Attribute == job.Attribute && job.Ovens.Contains(batch.Oven) && batch.Start >= job.EarliestStart
                && batch.Length >= job.LeastTime && batch.Length <= job.MostTime && batch.Jobs.Sum(other => instance.Jobs[other].Size) + job.Size <= instance.Ovens[batch.Oven].Capacity;
            if (fits && (best < 0 || batch.End < batches[best].End) && (batch.End <= job.Due || instance.Weights.Late == 0))
            {
                best = b;
            }
        }

        if (best >= 0)
        {
            batches[best] = batches[best] with { Jobs = [.. batches[best].Jobs, number] };
        }

        return best >= 0;
    }

    // Behind the last batch of each oven.
    private static bool Open(BatchInstance instance, List<Batch> batches, int number)
    {
        var job = instance.Jobs[number];
        var best = job.Ovens.Where(oven => instance.Ovens[oven].Capacity >= job.Size).Select(oven => Behind(instance, batches, oven, number)).OfType<Batch>().MinBy(batch => batch.End);
        if (best is not null)
        {
            batches.Add(best);
        }

        return best is not null;
    }

    private static Batch? Behind(BatchInstance instance, List<Batch> batches, int oven, int number)
    {
        var job = instance.Jobs[number];
        var last = batches.Where(batch => batch.Oven == oven).MaxBy(batch => batch.End);
        var setup = instance.SetupTimes[last is null ? instance.Ovens[oven].InitialAttribute : instance.Jobs[last.Jobs[0]].Attribute, job.Attribute];
        foreach (var (from, to) in instance.Ovens[oven].Open)
        {
            var start = Math.Max(Math.Max(job.EarliestStart, from + setup), (last?.End ?? 0) + setup);
            if (start + job.LeastTime <= to)
            {
                return new(oven, start, job.LeastTime, [number]);
            }
        }

        return null;
    }
}
