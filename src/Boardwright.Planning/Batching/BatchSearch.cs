namespace Boardwright.Planning.Batching;

/// <summary>Tries every schedule of a tiny instance: every way to part the jobs into batches, every oven, every order; each batch as early as it can be.</summary>
/// <remarks>
/// A batch is as long as its longest job asks, because running time and lateness only grow with it. Starting as early as possible in a given order is best:
/// neither cost nor set-up depends on waiting. For some six jobs.
/// </remarks>
public static class BatchSearch
{
    /// <summary>Least cost, undivided; null when there is no schedule.</summary>
    public static long? LeastCost(BatchInstance instance)
    {
        ArgumentNullException.ThrowIfNull(instance);
        long? least = null;
        foreach (var groups in Partitions(instance, 0, []))
        {
            Place(instance, groups, new bool[groups.Count], [], ref least);
        }

        return least;
    }

    private static IEnumerable<List<List<int>>> Partitions(BatchInstance instance, int job, List<List<int>> groups)
    {
        if (job == instance.Jobs.Count)
        {
            yield return groups;
            yield break;
        }

        foreach (var group in groups.Where(group => instance.Jobs[group[0]].Attribute == instance.Jobs[job].Attribute).ToList())
        {
            group.Add(job);
            foreach (var found in Partitions(instance, job + 1, groups))
            {
                yield return found;
            }

            group.RemoveAt(group.Count - 1);
        }

        groups.Add([job]);
        foreach (var found in Partitions(instance, job + 1, groups))
        {
            yield return found;
        }

        groups.RemoveAt(groups.Count - 1);
    }

    private static void Place(BatchInstance instance, List<List<int>> groups, bool[] placed, List<Batch> batches, ref long? least)
    {
        if (batches.Count == groups.Count)
        {
            var cost = BatchCost.Of(instance, batches);
            least = least is { } known && known <= cost ? known : cost;
            return;
        }

        for (var g = 0; g < groups.Count; g++)
        {
            for (var oven = 0; oven < instance.Ovens.Count && !placed[g]; oven++)
            {
                if (Earliest(instance, oven, groups[g], batches) is not { } batch)
                {
                    continue;
                }

                placed[g] = true;
                batches.Add(batch);
                Place(instance, groups, placed, batches, ref least);
                batches.RemoveAt(batches.Count - 1);
                placed[g] = false;
            }
        }
    }

    private static Batch? Earliest(BatchInstance instance, int oven, List<int> group, List<Batch> batches)
    {
        var jobs = group.Select(job => instance.Jobs[job]).ToList();
        var length = jobs.Max(job => job.LeastTime);
        if (jobs.Any(job => !job.Ovens.Contains(oven) || job.MostTime < length) || jobs.Sum(job => job.Size) > instance.Ovens[oven].Capacity)
        {
            return null;
        }

        var last = batches.LastOrDefault(batch => batch.Oven == oven);
        var setup = instance.SetupTimes[last is null ? instance.Ovens[oven].InitialAttribute : instance.Jobs[last.Jobs[0]].Attribute, jobs[0].Attribute];
        var free = Math.Max(jobs.Max(job => job.EarliestStart), (last?.End ?? 0) + setup);
        var start = instance.Ovens[oven].Open.Select(open => (Start: Math.Max(free, open.From + setup), open.To)).Where(one => one.Start + length <= one.To).Select(one => (int?)one.Start).Min();
        return start is { } at ? new(oven, at, length, [.. group]) : null;
    }
}
