using Boardwright.Casting.Cure;
using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>A two-part casting resin: how it is mixed, what its label says, and how it cures.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="HardenerPerResin">Mass of part B for one mass of part A.</param>
/// <param name="DensityA">Part A.</param>
/// <param name="DensityB">Part B.</param>
/// <param name="DensityMixed">Both parts mixed.</param>
/// <param name="Label">As printed.</param>
/// <param name="Curing">How it cures; null when the data do not say.</param>
/// <param name="Source">Where the data come from.</param>
/// <param name="Mark">P, M, C, computed or I (invented).</param>
public sealed record Resin(
    string Name, double HardenerPerResin, Density DensityA, Density DensityB, Density DensityMixed,
    ResinLabel Label, CuringResin? Curing, string Source, string Mark)
{
    /// <summary>Density of the mix when volumes add up.</summary>
    /// <param name="hardenerPerResin">Mass of part B for one mass of part A.</param>
    /// <param name="densityA">Part A.</param>
    /// <param name="densityB">Part B.</param>
    public static Density AdditiveDensity(double hardenerPerResin, Density densityA, Density densityB) => Density.FromKilogramsPerCubicMetre(
        (1.0 + hardenerPerResin) / (1.0 / densityA.KilogramsPerCubicMetre + hardenerPerResin / densityB.KilogramsPerCubicMetre));

    /// <summary>Mass of part B for one mass of part A, from a ratio by volume.</summary>
    /// <param name="volumeOfBPerA">Volume of part B for one volume of part A.</param>
    /// <param name="densityA">Part A.</param>
    /// <param name="densityB">Part B.</param>
    public static double RatioByMass(double volumeOfBPerA, Density densityA, Density densityB) =>
        volumeOfBPerA * densityB.KilogramsPerCubicMetre / densityA.KilogramsPerCubicMetre;

    /// <summary>Mass of hardener for one mass of resin from equivalent weights: AHEW / EEW.</summary>
    /// <source id="epoxy-formulation-notes" locator="phr = AHEW x 100 / EEW"/>
    /// <method page="docs/methods/resin-mix.md"/>
    /// <param name="epoxyEquivalentGrams">Grams of resin that hold one epoxide group (EEW).</param>
    /// <param name="hydrogenEquivalentGrams">Grams of hardener that hold one active hydrogen (AHEW).</param>
    public static double StoichiometricRatio(double epoxyEquivalentGrams, double hydrogenEquivalentGrams) => hydrogenEquivalentGrams / epoxyEquivalentGrams;
}
