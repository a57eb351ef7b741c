namespace Boardwright.Sawing;

/// <summary>Sections of the log at the places where boards may be trimmed, and which pairs of them a board may span. Millimetres.</summary>
internal sealed class Stations
{
    private Stations(IReadOnlyList<LogSection> sections, double stepMm, int stepsMin, bool nested)
    {
        Count = sections.Count;
        IsNested = nested;
        AtMm = [.. sections.Select(one => one.At.Millimetres)];
        SemiX = [.. sections.Select(one => one.DiameterX.Millimetres / 2.0)];
        SemiY = [.. sections.Select(one => one.DiameterY.Millimetres / 2.0)];
        OffsetX = [.. sections.Select(one => one.OffsetXMm)];
        OffsetY = [.. sections.Select(one => one.OffsetYMm)];
        StepsBetween = new int[Count * Count];
        LongestFrom = new int[Count];
        for (var p = 0; p < Count; p++)
        {
            for (var q = p + 1; q < Count; q++)
            {
                var steps = Math.Round((AtMm[q] - AtMm[p]) / stepMm);
                if (steps < stepsMin || Math.Abs((steps * stepMm) - (AtMm[q] - AtMm[p])) > 1e-4)
                    continue;

                StepsBetween[(p * Count) + q] = (int)steps;
                LongestFrom[p] = (int)steps;
            }
        }
    }

    public int Count { get; }

    /// <summary>Every section lies in the next: a board trimmed at the small end is never worse than one of its length elsewhere.</summary>
    public bool IsNested { get; }

    public double[] AtMm { get; }

    public double[] SemiX { get; }

    public double[] SemiY { get; }

    public double[] OffsetX { get; }

    public double[] OffsetY { get; }

    /// <summary>Length in trim steps of a board from station p to station q, at p x Count + q; 0 where no board may span them.</summary>
    public int[] StepsBetween { get; }

    /// <summary>Longest board that begins at a station, in trim steps.</summary>
    public int[] LongestFrom { get; }

    /// <summary>Trim places: whole steps from either end; the log's own sections beside them unless every section lies in the next.</summary>
    public static Stations Of(LogShape shape, double stepMm, int stepsMin)
    {
        var length = shape.Length.Millimetres;
        var longest = (int)Math.Floor((length / stepMm) + 1e-6);
        var nested = Nested(shape);
        var fromLarge = Enumerable.Range(0, longest + 1).Where(n => n == 0 || n >= stepsMin || !nested).Select(n => Math.Max(0.0, length - (n * stepMm)));
        var all = nested ? fromLarge : fromLarge.Concat(Enumerable.Range(0, longest + 1).Select(n => n * stepMm)).Concat(shape.Sections.Select(one => one.At.Millimetres));
        var at = all.Order().ToList();
        return new([.. at.Where((z, i) => i == 0 || z - at[i - 1] > 1e-4).Select(z => LogShape.At(shape.Sections, z / 1000.0))], stepMm, Math.Max(1, stepsMin), nested);
    }

    private static bool Nested(LogShape shape) => shape.Sections.Zip(shape.Sections.Skip(1)).All(pair =>
        pair.First.OffsetXMm == pair.Second.OffsetXMm && pair.First.OffsetYMm == pair.Second.OffsetYMm
        && pair.First.DiameterX <= pair.Second.DiameterX && pair.First.DiameterY <= pair.Second.DiameterY);
}
