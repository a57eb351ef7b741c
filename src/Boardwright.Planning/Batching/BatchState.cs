namespace Boardwright.Planning.Batching;

/// <summary>A schedule under search: the order of batches in each oven, each batch as early as it can be; changes are tried and kept or taken back.</summary>
/// <remarks>
/// <para>Between two calls of <see cref="Keep"/> or <see cref="TakeBack"/> any number of changes may be made; <see cref="Settle"/> then tells what they cost.
/// Only batches from the first changed place on are timed again, and only until one starts when it started before.</para>
/// <para>Cost: a move of one job in a row of b batches is some 10 + b operations, no allocation.</para>
/// </remarks>
internal sealed class BatchState
{
    private readonly BatchTables tables;
    private readonly BatchContent[] contents; // by batch
    private readonly BatchTiming[] timings; // by batch
    private readonly BatchChains chains;
    private readonly BatchRow[] rows;
    private readonly Stack<int> free = new();

    private readonly List<(int Job, int Batch)> moved = [];
    private readonly List<(int Batch, BatchContent Content)> contentBefore = [];
    private readonly List<(int Batch, BatchTiming Timing)> timingBefore = [];
    private readonly List<int> opened = [];
    private readonly List<int> emptied = [];
    private readonly int[] contentStamp;
    private int stamp;
    private long change;

    public BatchState(BatchTables tables, IReadOnlyList<Batch> batches)
    {
        this.tables = tables;
        var jobs = tables.Jobs.Length;
        (contents, timings, chains, contentStamp) = (new BatchContent[jobs + 1], new BatchTiming[jobs + 1], new BatchChains(tables), new int[jobs + 1]);
        rows = [.. tables.Capacity.Select(_ => new BatchRow(jobs + 1))];
        Load(batches);
    }

    /// <summary>Cost of what was kept, undivided.</summary>
    public long Cost { get; private set; }

    public int BatchOf(int job) => chains.BatchOf[job];

    public ref readonly BatchContent Of(int batch) => ref contents[batch];

    public int Start(int batch) => timings[batch].Start;

    public int Late(int batch) => timings[batch].Late;

    public ReadOnlySpan<int> RowOf(int oven) => rows[oven].Batches.AsSpan(0, rows[oven].Count);

    public int PlaceOf(int batch) => RowOf(contents[batch].Oven).IndexOf(batch);

    /// <summary>First of the jobs of a batch; the rest by <see cref="NextOf"/>, below 0 after the last.</summary>
    public int FirstOf(int batch) => contents[batch].First;

    public int NextOf(int job) => chains.NextOf[job];

    /// <summary>True when the job fits the batch by attribute, oven, room and times.</summary>
    public bool Fits(int job, int batch)
    {
        ref readonly var one = ref tables.Jobs[job];
        ref readonly var content = ref contents[batch];
        return content.Attribute == one.Attribute && content.Size + one.Size <= tables.Capacity[content.Oven] && (one.Ovens >> content.Oven & 1) != 0
            && Math.Max(content.Length, one.Least) <= Math.Min(content.Most, one.Most);
    }

    /// <summary>True when the batch may run in the oven.</summary>
    public bool Fits(in BatchContent content, int oven) => (content.Ovens >> oven & 1) != 0 && content.Size <= tables.Capacity[oven];

    /// <summary>Replaces everything by a sound schedule.</summary>
    public void Load(IReadOnlyList<Batch> batches)
    {
        free.Clear();
        for (var batch = contents.Length - 1; batch >= batches.Count; batch--)
        {
            free.Push(batch);
        }

        foreach (var row in rows)
        {
            row.Count = 0;
        }

        var ordered = batches.OrderBy(batch => batch.Start).ToList();
        for (var number = 0; number < ordered.Count; number++)
        {
            contents[number] = BatchContent.Empty(tables.Instance.Jobs[ordered[number].Jobs[0]].Attribute, ordered[number].Oven);
            timings[number] = default;
            foreach (var job in ordered[number].Jobs)
            {
                chains.Link(ref contents[number], job, number);
            }

            chains.Measure(ref contents[number]);
            rows[ordered[number].Oven].Insert(number, rows[ordered[number].Oven].Count);
        }

        change = contents.Take(ordered.Count).Sum(content => tables.Instance.Weights.Running * content.Length);
        Cost = 0;
        if (Settle() is null)
        {
            throw new ArgumentException("the schedule to start from breaks a rule of its instance", nameof(batches));
        }

        Keep();
    }

    /// <summary>The schedule.</summary>
    public IReadOnlyList<Batch> Read()
    {
        var found = new List<Batch>();
        for (var oven = 0; oven < rows.Length; oven++)
        {
            foreach (var batch in RowOf(oven))
            {
                var jobs = new List<int>();
                for (var job = contents[batch].First; job >= 0; job = chains.NextOf[job])
                {
                    jobs.Add(job);
                }

                found.Add(new(oven, timings[batch].Start, contents[batch].Length, jobs));
            }
        }

        return found;
    }

    /// <summary>Moves a job into another batch; its own is closed when it was the last.</summary>
    public void Move(int job, int batch)
    {
        var from = chains.BatchOf[job];
        moved.Add((job, from));
        Remember(from);
        chains.Unlink(ref contents[from], job);
        Measured(from);
        Remember(batch);
        chains.Link(ref contents[batch], job, batch);
        Measured(batch);
        Touch(batch);
        if (contents[from].First < 0)
        {
            Close(from);
        }
        else
        {
            Touch(from);
        }
    }

    /// <summary>An empty batch at a place of a row; jobs are then moved into it.</summary>
    public int Open(int attribute, int oven, int place)
    {
        var batch = free.Pop();
        opened.Add(batch);
        contents[batch] = BatchContent.Empty(attribute, oven);
        timings[batch] = default;
        contentStamp[batch] = stamp; // nothing to remember: it is opened by this change
        rows[oven].Insert(batch, place);
        return batch;
    }

    /// <summary>Each of two jobs goes into the batch of the other; whether times allow it is for the caller to look at.</summary>
    public void Exchange(int job, int other)
    {
        var (own, others) = (chains.BatchOf[job], chains.BatchOf[other]);
        Remember(own);
        Remember(others);
        moved.Add((job, own));
        moved.Add((other, others));
        chains.Unlink(ref contents[own], job);
        chains.Unlink(ref contents[others], other);
        chains.Link(ref contents[others], job, others);
        chains.Link(ref contents[own], other, own);
        Measured(own);
        Measured(others);
        Touch(own);
        Touch(others);
    }

    /// <summary>Moves a batch to a place of a row, counted without the batch itself.</summary>
    public void Shift(int batch, int oven, int place)
    {
        Lift(batch);
        Drop(batch, oven, place);
    }

    /// <summary>Takes a batch out of its row; it must be dropped before the next <see cref="Settle"/>.</summary>
    public void Lift(int batch)
    {
        Remember(batch);
        rows[contents[batch].Oven].RemoveAt(PlaceOf(batch));
    }

    /// <summary>Puts a lifted batch at a place of a row.</summary>
    public void Drop(int batch, int oven, int place)
    {
        contents[batch].Oven = oven;
        rows[oven].Insert(batch, place);
    }

    /// <summary>Change of the cost by what was done since the last <see cref="Keep"/>; null when some batch fits no open interval any more.</summary>
    public long? Settle()
    {
        for (var oven = 0; oven < rows.Length; oven++)
        {
            if (rows[oven].First < rows[oven].Count && !Time(oven))
            {
                return null;
            }
        }

        return change;
    }

    /// <summary>What was done stays.</summary>
    public void Keep()
    {
        foreach (var batch in emptied)
        {
            free.Push(batch);
        }

        Cost += change;
        Next();
    }

    /// <summary>What was done since the last <see cref="Keep"/> is undone.</summary>
    public void TakeBack()
    {
        foreach (var row in rows)
        {
            row.Restore();
        }

        for (var index = moved.Count - 1; index >= 0; index--)
        {
            var (job, batch) = moved[index];
            chains.Unlink(ref contents[chains.BatchOf[job]], job);
            chains.Link(ref contents[batch], job, batch);
        }

        for (var index = contentBefore.Count - 1; index >= 0; index--)
        {
            // The chain of jobs was restored above and may begin with another job than before.
            var first = contents[contentBefore[index].Batch].First;
            contents[contentBefore[index].Batch] = contentBefore[index].Content with { First = first };
        }

        for (var index = timingBefore.Count - 1; index >= 0; index--)
        {
            timings[timingBefore[index].Batch] = timingBefore[index].Timing;
        }

        for (var index = opened.Count - 1; index >= 0; index--)
        {
            free.Push(opened[index]);
        }

        Next();
    }

    private void Next()
    {
        foreach (var row in rows)
        {
            row.Settled();
        }

        moved.Clear();
        contentBefore.Clear();
        timingBefore.Clear();
        opened.Clear();
        emptied.Clear();
        stamp++;
        change = 0;
    }

    private bool Time(int oven)
    {
        var row = rows[oven];
        var open = tables.Open[oven];
        var (attribute, end, interval) = (tables.Initial[oven], int.MinValue / 2, 0);
        if (row.First > 0)
        {
            var before = row.Batches[row.First - 1];
            (attribute, end, interval) = (contents[before].Attribute, timings[before].Start + contents[before].Length, timings[before].Interval);
        }

        for (var place = row.First; place < row.Count; place++)
        {
            var batch = row.Batches[place];
            ref readonly var content = ref contents[batch];
            var setup = tables.SetupTime(attribute, content.Attribute);
            var free = Math.Max(content.Earliest, end + setup);
            var start = 0;
            while (interval < open.Length && (start = Math.Max(free, open[interval].From + setup)) + content.Length > open[interval].To)
            {
                interval++;
            }

            if (interval == open.Length)
            {
                return false;
            }

            ref var timing = ref timings[batch];
            if (place > row.Last && start == timing.Start)
            {
                break;
            }

            end = start + content.Length;
            var now = new BatchTiming(start, interval, chains.LateIn(content, end), tables.SetupCost(attribute, content.Attribute));
            timingBefore.Add((batch, timing));
            change += tables.Instance.Weights.Late * (now.Late - timing.Late) + now.Setup - timing.Setup;
            timing = now;
            attribute = content.Attribute;
        }

        return true;
    }

    private void Measured(int batch)
    {
        var before = contents[batch].Length;
        chains.Measure(ref contents[batch]);
        change += tables.Instance.Weights.Running * (contents[batch].Length - before);
    }

    private void Remember(int batch)
    {
        if (contentStamp[batch] != stamp)
        {
            contentStamp[batch] = stamp;
            contentBefore.Add((batch, contents[batch]));
        }
    }

    private void Close(int batch)
    {
        rows[contents[batch].Oven].RemoveAt(PlaceOf(batch));
        emptied.Add(batch);
        timingBefore.Add((batch, timings[batch]));
        change -= tables.Instance.Weights.Late * timings[batch].Late + timings[batch].Setup;
        timings[batch] = default;
    }

    private void Touch(int batch)
    {
        var place = PlaceOf(batch);
        rows[contents[batch].Oven].Touch(place, place);
    }
}
