namespace Boardwright.Planning.Batching;

/// <summary>Cost of a schedule.</summary>
public static class BatchCost
{
    /// <summary>Running time of all batches, late jobs, set-up times and set-up costs, each by its weight; undivided.</summary>
    public static long Of(BatchInstance instance, IReadOnlyList<Batch> batches)
    {
        ArgumentNullException.ThrowIfNull(instance);
        var weights = instance.Weights;
        long cost = batches.Sum(batch => weights.Running * batch.Length + weights.Late * batch.Jobs.Count(job => batch.End > instance.Jobs[job].Due));
        foreach (var row in batches.GroupBy(batch => batch.Oven))
        {
            var before = instance.Ovens[row.Key].InitialAttribute;
            foreach (var batch in row.OrderBy(batch => batch.Start))
            {
                var attribute = instance.Jobs[batch.Jobs[0]].Attribute;
                cost += weights.SetupTime * instance.SetupTimes[before, attribute] + weights.SetupCost * instance.SetupCosts[before, attribute];
                before = attribute;
            }
        }

        return cost;
    }
}
