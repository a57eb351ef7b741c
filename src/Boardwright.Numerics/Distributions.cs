using MathNet.Numerics.Distributions;

namespace Boardwright.Numerics;

/// <summary>Distribution functions and their inverses, from a general-purpose numerical library.</summary>
public static class Distributions
{
    /// <summary>Probability that a standard normal deviate is at most <paramref name="z"/>.</summary>
    public static double NormalProbability(double z) => Normal.CDF(0.0, 1.0, z);

    /// <summary>Standard normal deviate below which the share <paramref name="probability"/> (0 to 1, exclusive) lies.</summary>
    public static double NormalQuantile(double probability) => Normal.InvCDF(0.0, 1.0, probability);

    /// <summary>Student's t below which the share <paramref name="probability"/> lies, for <paramref name="degreesOfFreedom"/> at least 1.</summary>
    public static double StudentQuantile(double probability, double degreesOfFreedom) => StudentT.InvCDF(0.0, 1.0, degreesOfFreedom, probability);
}
