namespace Boardwright.Planning.Batching;

/// <summary>Checks a schedule against every rule of its instance; shares nothing with the search.</summary>
public static class BatchCheck
{
    /// <summary>Every fault in words; none for a sound schedule.</summary>
    public static IReadOnlyList<string> Faults(BatchInstance instance, IReadOnlyList<Batch> batches)
    {
        ArgumentNullException.ThrowIfNull(instance);
        ArgumentNullException.ThrowIfNull(batches);
        var found = new List<string>();
        var times = new int[instance.Jobs.Count];
        foreach (var batch in batches)
        {
            if (batch.Oven < 0 || batch.Oven >= instance.Ovens.Count || batch.Jobs.Count == 0 || batch.Jobs.Any(job => job < 0 || job >= instance.Jobs.Count))
            {
                return ["a batch without jobs, or of an oven or job the instance does not have"];
            }

            foreach (var job in batch.Jobs)
            {
                times[job]++;
                One(instance.Jobs[job], job, batch, found);
            }

            if (batch.Jobs.Select(job => instance.Jobs[job].Attribute).Distinct().Count() > 1)
            {
                found.Add($"the batch at {batch.Start} in oven {batch.Oven} mixes attributes");
            }

            if (batch.Jobs.Sum(job => instance.Jobs[job].Size) > instance.Ovens[batch.Oven].Capacity)
            {
                found.Add($"the batch at {batch.Start} in oven {batch.Oven} is too full");
            }
        }

        found.AddRange(times.Select((count, job) => (count, job)).Where(one => one.count != 1).Select(one => $"job {one.job} is in {one.count} batches"));
        foreach (var row in batches.GroupBy(batch => batch.Oven))
        {
            Row(instance, row.Key, [.. row.OrderBy(batch => batch.Start)], found);
        }

        return found;
    }

    private static void One(BatchJob job, int number, Batch batch, List<string> found)
    {
        if (!job.Ovens.Contains(batch.Oven))
        {
            found.Add($"job {number} may not be in oven {batch.Oven}");
        }

        if (batch.Length < job.LeastTime || batch.Length > job.MostTime)
        {
            found.Add($"job {number} is in a batch of {batch.Length}, {job.LeastTime} to {job.MostTime} is asked");
        }

        if (batch.Start < job.EarliestStart)
        {
            found.Add($"job {number} starts at {batch.Start}, {job.EarliestStart} at the earliest");
        }
    }

    private static void Row(BatchInstance instance, int oven, IReadOnlyList<Batch> row, List<string> found)
    {
        var attribute = instance.Ovens[oven].InitialAttribute;
        var end = int.MinValue / 2;
        foreach (var batch in row)
        {
            var own = instance.Jobs[batch.Jobs[0]].Attribute;
            var setup = instance.SetupTimes[attribute, own];
            if (batch.Start - setup < end)
            {
                found.Add($"the batch at {batch.Start} in oven {oven} begins before the one before it and its set-up are over");
            }

            if (!instance.Ovens[oven].Open.Any(open => open.From <= batch.Start - setup && batch.End <= open.To))
            {
                found.Add($"the batch at {batch.Start} in oven {oven} and its set-up are not inside one open interval");
            }

            (attribute, end) = (own, batch.End);
        }
    }
}
