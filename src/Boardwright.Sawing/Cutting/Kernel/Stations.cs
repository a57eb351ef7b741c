namespace Boardwright.Sawing;

/// <summary>Sections of the log at the places where boards may be trimmed, and where the log's own sections lie between them. Millimetres.</summary>
internal sealed class Stations
{
    private Stations(IReadOnlyList<LogSection> sections, int[][] families, int stepsMin, double? trimKerfMm, bool nested, int[] slabAt)
    {
        Count = sections.Count;
        IsNested = nested;
        (Families, StepsMin, SlabAt) = (families, stepsMin, slabAt);
        AtMm = [.. sections.Select(one => one.At.Millimetres)];
        SemiX = [.. sections.Select(one => one.DiameterX.Millimetres / 2.0)];
        SemiY = [.. sections.Select(one => one.DiameterY.Millimetres / 2.0)];
        OffsetX = [.. sections.Select(one => one.OffsetXMm)];
        OffsetY = [.. sections.Select(one => one.OffsetYMm)];
        Rims = [.. sections.Select(one => one.RadiiMm is { } radii ? SectionRim.Of(radii).WithoutHollows() : null)];
        After = [.. AtMm.Select(at => Enumerable.Range(0, Count).FirstOrDefault(j => AtMm[j] >= at + trimKerfMm - 1e-6, Count))];
        CutsAcross = trimKerfMm is not null;
        PlaceIn = [.. families.Select(family => Enumerable.Range(0, Count).Select(j => Array.IndexOf(family, j)).ToArray())];
    }

    public int Count { get; }

    /// <summary>Every section lies in the next: what is clear at a section is clear all the way to the large end.</summary>
    public bool IsNested { get; }

    public double[] AtMm { get; }

    public double[] SemiX { get; }

    public double[] SemiY { get; }

    public double[] OffsetX { get; }

    public double[] OffsetY { get; }

    /// <summary>Convex rims of sections measured by radii; null for ellipses.</summary>
    public SectionRim?[] Rims { get; }

    /// <summary>Rows of stations one trim step apart: whole steps from the small end, and from the large end where those are others.</summary>
    public int[][] Families { get; }

    /// <summary>Place of a station in each row; -1 where it is not of it.</summary>
    public int[][] PlaceIn { get; }

    /// <summary>First station at which another board may begin after one that ends at a station; <see cref="Count"/> for none, as where flitches are not cut across.</summary>
    public int[] After { get; }

    /// <summary>Flitches may be cut across into several boards.</summary>
    public bool CutsAcross { get; }

    /// <summary>Shortest board in trim steps.</summary>
    public int StepsMin { get; }

    /// <summary>Where the widths of a slab are measured; empty where no slab is priced.</summary>
    public int[] SlabAt { get; }

    /// <summary>Trim places: whole steps from either end; the log's own sections beside them unless every section lies in the next.</summary>
    public static Stations Of(LogShape shape, double stepMm, int stepsMin, double? trimKerfMm, bool hasSlabs)
    {
        var length = shape.Length.Millimetres;
        var longest = (int)Math.Floor((length / stepMm) + 1e-6);
        var nested = Nested(shape);
        var slabAt = hasSlabs ? Enumerable.Range(0, SlabMeasure.Places).Select(k => length * k / (SlabMeasure.Places - 1)).ToList() : [];
        var fromSmall = Enumerable.Range(0, longest + 1).Select(n => n * stepMm).ToList();
        var fromLarge = Enumerable.Range(0, longest + 1).Select(n => Math.Max(0.0, length - (n * stepMm))).Order().ToList();
        var all = fromSmall.Concat(fromLarge).Concat(slabAt).Concat(nested ? [] : shape.Sections.Select(one => one.At.Millimetres)).Order().ToList();
        var at = all.Where((z, i) => i == 0 || z - all[i - 1] > 1e-4).ToList();
        int Nearest(double z) => at.FindIndex(one => Math.Abs(one - z) < 2e-4);
        int[][] families = [[.. fromSmall.Select(Nearest)], [.. fromLarge.Select(Nearest)]];
        return new(
            [.. at.Select(z => LogShape.At(shape.Sections, z / 1000.0))], families[0].SequenceEqual(families[1]) ? [families[0]] : families, Math.Max(1, stepsMin), trimKerfMm, nested, [.. slabAt.Select(Nearest)]);
    }

    private static bool Nested(LogShape shape) => shape.Sections.Zip(shape.Sections.Skip(1)).All(pair =>
        pair.First.RadiiMm is null && pair.First.OffsetXMm == pair.Second.OffsetXMm && pair.First.OffsetYMm == pair.Second.OffsetYMm
        && pair.First.DiameterX <= pair.Second.DiameterX && pair.First.DiameterY <= pair.Second.DiameterY);
}
