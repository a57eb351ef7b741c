namespace Boardwright.Numerics;

/// <summary>A quantity known by its p10, p50 and p90: normal on either side of the middle, each side with its own spread.</summary>
/// <param name="Low">One time in ten it is less.</param>
/// <param name="Likely">As likely less as more.</param>
/// <param name="High">One time in ten it is more.</param>
public readonly record struct SplitNormal(double Low, double Likely, double High)
{
    private const double TenPercentQuantile = 1.2815515655446004;

    /// <summary>Chance that the quantity is at least a value.</summary>
    public double AtLeast(double value)
    {
        var deviation = (value < Likely ? Likely - Low : High - Likely) / TenPercentQuantile;
        return deviation > 0.0 ? Distributions.NormalProbability((Likely - value) / deviation) : value <= Likely ? 1.0 : 0.0;
    }
}
