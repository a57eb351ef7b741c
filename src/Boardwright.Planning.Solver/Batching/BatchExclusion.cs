namespace Boardwright.Planning.Solver.Batching;

/// <summary>Which of the batches that might run in an oven exclude each other, set-ups counted, said in few rows: of each row at most one batch runs.</summary>
internal sealed class BatchExclusion
{
    private readonly BatchGaps gaps;
    private readonly int attributes;
    private readonly Window?[][] windows; // by attribute inside

    public BatchExclusion(BatchGaps gaps, int attributes)
    {
        (this.gaps, this.attributes) = (gaps, attributes);
        windows = [.. Enumerable.Range(0, attributes).SelectMany(focus => new[] { Windows(focus, late: false), Windows(focus, late: true) }).DistinctBy(window => string.Join(' ', window))];
    }

    /// <summary>Rows of numbers of batches; every two that exclude each other share a row, and no other two do.</summary>
    public IReadOnlyList<int[]> Rows(IReadOnlyList<(int Attribute, int Start, int End)> batches)
    {
        var byStart = Enumerable.Range(0, batches.Count).OrderBy(batch => batches[batch].Start).ToArray();
        var moments = byStart.Select(batch => batches[batch].Start).Distinct().ToArray();
        var (rows, known) = (new List<int[]>(), new HashSet<string>(StringComparer.Ordinal));
        foreach (var moment in moments)
        {
            foreach (var window in windows)
            {
                var row = byStart.Where(batch => window[batches[batch].Attribute] is { } own && own.Covers(batches[batch], moment)).ToArray();
                if (row.Length > 1 && known.Add(string.Join(',', row)))
                {
                    rows.Add(row);
                }
            }
        }

        // Where set-ups differ much the windows miss some.
        for (var first = 0; first < byStart.Length; first++)
        {
            var one = batches[byStart[first]];
            rows.AddRange(byStart.Skip(first + 1).TakeWhile(second => batches[second].Start < one.End + gaps.Largest)
                .Where(second => Exclude(one, batches[second]) && !ShareWindow(one, batches[second], moments)).Select(second => new[] { byStart[first], second }));
        }

        return rows;
    }

    /// <summary>True when neither can run behind the other.</summary>
    public bool Exclude((int Attribute, int Start, int End) one, (int Attribute, int Start, int End) two) =>
        two.Start < one.End + gaps.Between(one.Attribute, two.Attribute) && one.Start < two.End + gaps.Between(two.Attribute, one.Attribute);

    private bool ShareWindow((int Attribute, int Start, int End) one, (int Attribute, int Start, int End) two, int[] moments)
    {
        foreach (var window in windows)
        {
            if (window[one.Attribute] is { } first && window[two.Attribute] is { } second)
            {
                var from = Math.Max(one.Start - first.Before - first.At, two.Start - second.Before - second.At);
                var at = Array.BinarySearch(moments, from);
                at = at < 0 ? ~at : at;
                if (at < moments.Length && moments[at] < Math.Min(one.End - first.At, two.End - second.At))
                {
                    return true;
                }
            }
        }

        return false;
    }

    // For each attribute a moment, relative to that of the one in focus, and by how much its batches are lengthened in front, so that any two that cover their moments exclude each other:
    // at_d + before_d - at_c <= gap from c to d. Null where an attribute finds no such moment beside those before it.
    private Window?[] Windows(int focus, bool late)
    {
        var found = new Window?[attributes];
        for (var turn = 0; turn < attributes; turn++)
        {
            var own = (focus + turn) % attributes;
            var others = Enumerable.Range(0, attributes).Where(other => found[other] is not null).Select(other => (Attribute: other, found[other]!.Value.At, found[other]!.Value.Before)).ToList();
            var low = others.Select(other => other.At + other.Before - gaps.Between(own, other.Attribute)).DefaultIfEmpty(0).Max();
            var high = others.Select(other => other.At + gaps.Between(other.Attribute, own)).DefaultIfEmpty(gaps.Between(own, own)).Min();
            var before = Math.Min(gaps.Between(own, own), high - low);
            found[own] = high < low ? null : new(late && turn > 0 ? high - before : low, before);
        }

        return found;
    }

    private readonly record struct Window(int At, int Before)
    {
        public bool Covers((int Attribute, int Start, int End) batch, int moment) => batch.Start - Before <= moment + At && moment + At < batch.End;
    }
}
