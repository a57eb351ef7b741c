namespace Boardwright.Sawing;

/// <summary>What is taken for true of board feet sawn over board feet scaled before a mill's own logs are in, and how far that may be off.</summary>
/// <remarks>Ratios of green tally to International 1/4-inch scale, not rounded. The spreads are common practice, no source: mills differ by a tenth, woods and sawyers by less, one log from the next by a tenth.</remarks>
/// <method page="docs/methods/sawn-yield.md"/>
/// <param name="Ratio">The house's record, or a guess.</param>
public sealed record YieldPrior(double Ratio)
{
    /// <summary>Standard deviation of a mill from the ratio taken.</summary>
    public double MillSd { get; init; } = 0.10;

    /// <summary>Of a wood from its mill.</summary>
    public double SpeciesSd { get; init; } = 0.05;

    /// <summary>Of a sawyer from the mill.</summary>
    public double SawyerSd { get; init; } = 0.04;

    /// <summary>Of one log from the next of the same wood and sawyer.</summary>
    public double LogSd { get; init; } = 0.10;

    /// <summary>How many logs the last figure is worth beside the mill's own.</summary>
    public double LogSdCount { get; init; } = 8.0;
}
