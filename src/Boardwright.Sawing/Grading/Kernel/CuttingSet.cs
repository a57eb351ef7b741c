namespace Boardwright.Sawing;

/// <summary>A set of cuttings found, with its area.</summary>
internal sealed record CuttingSet(long Area, IReadOnlyList<FaceBox> Cuttings)
{
    public static CuttingSet None { get; } = new(0L, []);

    public static CuttingSet operator +(CuttingSet left, CuttingSet right) => new(left.Area + right.Area, [.. left.Cuttings, .. right.Cuttings]);
}
