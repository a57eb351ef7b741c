namespace Boardwright.Sawing;

/// <summary>A log that was sawn: whose hands, which wood, and board feet sawn over board feet scaled.</summary>
/// <param name="Species">The wood.</param>
/// <param name="Sawyer">Who sawed it.</param>
/// <param name="Ratio">Green tally over International 1/4-inch scale, not rounded.</param>
public readonly record struct SawnRatio(string Species, string Sawyer, double Ratio)
{
    /// <summary>A log under half or over twice its scale tells of a part that went elsewhere or of a wrong entry, not of sawing.</summary>
    public bool Teaches => Ratio is >= 0.5 and <= 2.0;
}
