namespace Boardwright.Numerics;

/// <summary>Roots of functions of one variable.</summary>
public static class Root
{
    /// <summary>The root of a function that changes sign between two ends (Brent's method of a general-purpose library).</summary>
    /// <param name="function">Continuous on the interval.</param>
    /// <param name="low">One end.</param>
    /// <param name="high">The other end; the function has the other sign there.</param>
    /// <param name="tolerance">Largest error of the root, in its own unit.</param>
    /// <returns>The root, or null when the ends do not bracket one.</returns>
    public static double? Between(Func<double, double> function, double low, double high, double tolerance = 1e-12) =>
        MathNet.Numerics.RootFinding.Brent.TryFindRoot(function, low, high, tolerance, 200, out var root) ? root : null;
}
