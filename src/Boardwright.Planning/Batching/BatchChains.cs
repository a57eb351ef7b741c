namespace Boardwright.Planning.Batching;

/// <summary>Which job is in which batch of the search: the jobs of a batch are a chain, so that moving one allocates nothing.</summary>
internal sealed class BatchChains(BatchTables tables)
{
    /// <summary>By job: the next in its batch, below 0 after the last.</summary>
    public int[] NextOf { get; } = new int[tables.Jobs.Length];

    /// <summary>By job.</summary>
    public int[] BatchOf { get; } = new int[tables.Jobs.Length];

    public void Link(ref BatchContent content, int job, int batch)
    {
        NextOf[job] = content.First;
        content.First = job;
        BatchOf[job] = batch;
    }

    public void Unlink(ref BatchContent content, int job)
    {
        if (content.First == job)
        {
            content.First = NextOf[job];
            return;
        }

        var before = content.First;
        while (NextOf[before] != job)
        {
            before = NextOf[before];
        }

        NextOf[before] = NextOf[job];
    }

    /// <summary>Sums and extremes from the chain.</summary>
    public void Measure(ref BatchContent content)
    {
        var measured = BatchContent.Empty(content.Attribute, content.Oven);
        for (var job = content.First; job >= 0; job = NextOf[job])
        {
            ref readonly var one = ref tables.Jobs[job];
            measured.Count++;
            measured.Size += one.Size;
            measured.Length = Math.Max(measured.Length, one.Least);
            measured.Most = Math.Min(measured.Most, one.Most);
            measured.Earliest = Math.Max(measured.Earliest, one.Earliest);
            measured.DueFirst = Math.Min(measured.DueFirst, one.Due);
            measured.DueLast = Math.Max(measured.DueLast, one.Due);
            measured.Ovens &= one.Ovens;
        }

        measured.First = content.First;
        content = measured;
    }

    /// <summary>Late jobs when the batch ends then; mostly one comparison.</summary>
    public int LateIn(in BatchContent content, int end)
    {
        if (end <= content.DueFirst)
        {
            return 0;
        }

        if (end > content.DueLast)
        {
            return content.Count;
        }

        var late = 0;
        for (var job = content.First; job >= 0; job = NextOf[job])
        {
            late += end > tables.Jobs[job].Due ? 1 : 0;
        }

        return late;
    }
}
