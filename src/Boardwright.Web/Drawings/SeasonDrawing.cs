namespace Boardwright.Web.Drawings;

/// <summary>The plan as a time chart: kilns above, the heat they want under what the boilers give.</summary>
public sealed record SeasonDrawing(DateOnly From, DateOnly To, DateOnly Today, IReadOnlyList<KilnRow> Kilns)
{
    public IReadOnlyList<HeatWanted> Heat { get; init; } = [];

    /// <summary>Names of what wants heat, in the order of <see cref="HeatWanted.KilowattsByUse"/>: shop, K1, K2.</summary>
    public IReadOnlyList<string> HeatUses { get; init; } = [];

    /// <summary>What the boilers give, in order of time.</summary>
    public IReadOnlyList<BoilerSpan> Boilers { get; init; } = [];

    public HeatShortage? Shortage { get; init; }
}
