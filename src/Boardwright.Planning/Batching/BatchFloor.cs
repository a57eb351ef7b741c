namespace Boardwright.Planning.Batching;

/// <summary>A bound by counting alone, at once: jobs that cannot be in time are late; jobs that ask for some length fill so many batches of it.</summary>
/// <source id="fekete-schepers-2001" locator="function u(k)"/>
/// <method page="docs/methods/batching.md"/>
public static class BatchFloor
{
    /// <summary>Roundings tried, into 1 to so many parts.</summary>
    internal const int PartsMost = 6;

    /// <summary>No schedule costs less, undivided.</summary>
    public static long Cost(BatchInstance instance)
    {
        ArgumentNullException.ThrowIfNull(instance);
        var tables = new BatchTables(instance);
        var capacity = tables.Capacity.Max();
        var cost = instance.Weights.Late * (tables.Jobs.Length - tables.Hopeful.Length);
        for (var attribute = 0; attribute < tables.Attributes; attribute++)
        {
            var (own, below) = (attribute, 0);
            foreach (var level in tables.OfAttribute[attribute].Select(job => tables.Jobs[job].Least).Distinct().Order())
            {
                var batches = Batches([.. tables.OfAttribute[attribute].Where(job => tables.Jobs[job].Least >= level).Select(job => tables.Jobs[job].Size)], capacity);
                var setup = below == 0 ? Enumerable.Range(0, tables.Attributes).Min(before => tables.SetupCost(before, own)) : 0;
                cost += batches * (instance.Weights.Running * (level - below) + setup);
                below = level;
            }
        }

        return cost;
    }

    /// <summary>Batches that jobs of these sizes fill at least.</summary>
    internal static long Batches(IReadOnlyList<int> sizes, int capacity) =>
        Math.Max(Ceiling(sizes.Sum(size => (long)size), capacity), Enumerable.Range(1, PartsMost).Max(parts => Ceiling(sizes.Sum(size => Rounded(size, capacity, parts)), (long)parts * capacity)));

    /// <summary>Size times parts, rounded: sizes that share a batch sum to at most parts times capacity, and so do these; a size above half the capacity counts as all of it when parts is 1.</summary>
    internal static long Rounded(int size, int capacity, int parts) =>
        (parts + 1L) * size % capacity == 0 ? (long)parts * size : capacity * ((parts + 1L) * size / capacity);

    private static long Ceiling(long sum, long part) => (sum + part - 1) / part;
}
