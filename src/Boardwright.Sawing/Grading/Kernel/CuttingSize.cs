namespace Boardwright.Sawing;

/// <summary>The sizes of cutting a grade admits: at least one of the pairs of least width and length, and a least area.</summary>
/// <remarks>A larger cutting than an admitted one is always admitted; the search rests on it.</remarks>
internal sealed class CuttingSize
{
    private readonly (long Width, long Length)[] pairs;
    private readonly long areaMin;

    public CuttingSize(long areaMin, params (long Width, long Length)[] pairs)
    {
        (this.areaMin, this.pairs) = (areaMin, pairs);
        WidthMin = pairs.Min(pair => pair.Width);
        LengthMin = pairs.Min(pair => pair.Length);
    }

    /// <summary>The narrowest cutting of any length.</summary>
    public long WidthMin { get; }

    /// <summary>The shortest cutting of any width.</summary>
    public long LengthMin { get; }

    public IEnumerable<long> Widths => pairs.Select(pair => pair.Width);

    public IEnumerable<long> Lengths => pairs.Select(pair => pair.Length);

    public bool Admits(long width, long length)
    {
        foreach (var (widthMin, lengthMin) in pairs)
        {
            if (width >= widthMin && length >= lengthMin)
                return width * length >= areaMin;
        }

        return false;
    }
}
