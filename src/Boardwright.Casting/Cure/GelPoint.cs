namespace Boardwright.Casting.Cure;

/// <summary>Conversion at which one molecule first spans the casting and it no longer flows.</summary>
/// <remarks>
/// Flory and Stockmayer: a² = 1 / ((f − 1)(g − 1)) for parts in ratio. Measured values run a few hundredths higher.
/// </remarks>
/// <source id="cure-terms-glossary" locator="gelation"/>
/// <method page="docs/methods/resin-cure.md"/>
public static class GelPoint
{
    /// <summary>Gel conversion of two parts in ratio.</summary>
    /// <param name="resinFunctionality">Epoxide groups in one molecule of resin, above 1; usually 2.</param>
    /// <param name="hardenerFunctionality">Active hydrogens in one molecule of hardener, above 1.</param>
    public static double Conversion(double resinFunctionality, double hardenerFunctionality)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(resinFunctionality, 1.0);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(hardenerFunctionality, 1.0);
        return 1.0 / Math.Sqrt((resinFunctionality - 1.0) * (hardenerFunctionality - 1.0));
    }
}
