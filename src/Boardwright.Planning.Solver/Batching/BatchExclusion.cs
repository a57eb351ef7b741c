namespace Boardwright.Planning.Solver.Batching;

/// <summary>Which of the batches that might run in an oven exclude each other, set-ups counted, said in few rows: of each row at most one batch runs.</summary>
internal sealed class BatchExclusion(BatchGaps gaps, int attributes)
{
    /// <summary>Rows of numbers of batches; every two that exclude each other share a row, and no other two do.</summary>
    public IReadOnlyList<int[]> Rows(IReadOnlyList<(int Attribute, int Start, int End)> batches)
    {
        var byStart = Enumerable.Range(0, batches.Count).OrderBy(batch => batches[batch].Start).ToList();
        var windows = Enumerable.Range(0, attributes).SelectMany(focus => new[] { Windows(focus, late: false), Windows(focus, late: true) }).ToList();
        var (rows, known, said) = (new List<int[]>(), new HashSet<string>(StringComparer.Ordinal), new HashSet<(int, int)>());
        foreach (var moment in byStart.Select(batch => batches[batch].Start).Distinct())
        {
            foreach (var window in windows)
            {
                var row = byStart.Where(batch => window[batches[batch].Attribute] is { } own && batches[batch].Start - own.Before <= moment + own.At && moment + own.At < batches[batch].End).ToArray();
                if (row.Length > 1 && known.Add(string.Join(',', row)))
                {
                    rows.Add(row);
                    said.UnionWith(from one in row from two in row select (one, two));
                }
            }
        }

        // Where set-ups differ much the windows miss some.
        rows.AddRange(from one in byStart from two in byStart where one != two && !said.Contains((one, two)) && said.Add((two, one)) && Exclude(batches[one], batches[two]) select new[] { one, two });
        return rows;
    }

    /// <summary>True when neither can run behind the other.</summary>
    public bool Exclude((int Attribute, int Start, int End) one, (int Attribute, int Start, int End) two) =>
        two.Start < one.End + gaps.Between(one.Attribute, two.Attribute) && one.Start < two.End + gaps.Between(two.Attribute, one.Attribute);

    // For each attribute a moment, relative to that of the one in focus, and by how much its batches are lengthened in front, so that any two that cover their moments exclude each other:
    // at_d + before_d - at_c <= gap from c to d. Null where an attribute finds no such moment beside those before it.
    private (int At, int Before)?[] Windows(int focus, bool late)
    {
        var windows = new (int At, int Before)?[attributes];
        for (var turn = 0; turn < attributes; turn++)
        {
            var own = (focus + turn) % attributes;
            var others = Enumerable.Range(0, attributes).Where(other => windows[other] is not null).Select(other => (Attribute: other, windows[other]!.Value.At, windows[other]!.Value.Before)).ToList();
            var low = others.Select(other => other.At + other.Before - gaps.Between(own, other.Attribute)).DefaultIfEmpty(0).Max();
            var high = others.Select(other => other.At + gaps.Between(other.Attribute, own)).DefaultIfEmpty(gaps.Between(own, own)).Min();
            var before = Math.Min(gaps.Between(own, own), high - low);
            windows[own] = high < low ? null : (late && turn > 0 ? high - before : low, before);
        }

        return windows;
    }
}
