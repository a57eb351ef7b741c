using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Specific gravity and density of wood at a moisture content.</summary>
/// <remarks>
/// <para>Equations: Gx = Gb/(1 - Sx/100) with Sx = S0 (1 - x/Ms) the shrinkage of volume from green (none above the start Ms);
/// density = 1000 Gx (1 + x/100) kg/m³. S0 is the printed shrinkage of volume, and 26.5 Gb where none is printed.</para>
/// <para>Accuracy: the handbook's own routes to the same wood differ by 1.3 %; single trees by 10 %.</para>
/// </remarks>
/// <source id="fpl-wood-handbook-2021" locator="eqs 4-9, 4-11 to 4-14"/>
/// <method page="docs/methods/density.md"/>
public static class WoodDensity
{
    /// <summary>Density of water in the definition of specific gravity, kg/m³.</summary>
    internal const double Water = 1000.0;

    /// <summary>Mass over volume, both at this moisture content.</summary>
    public static Density At(Species species, MoistureContent moisture) =>
        Density.Trusted(Water * SpecificGravity(species, moisture) * (1.0 + moisture.Fraction));

    /// <summary>Oven-dry mass over volume at this moisture content, over the density of water.</summary>
    public static double SpecificGravity(Species species, MoistureContent moisture) => SpecificGravityAt(
        species.BasicSpecificGravity, VolumetricPercent(species), species.ShrinkageStart.Percent, moisture.Percent);

    /// <summary>Shrinkage of volume, green to oven-dry: printed, or estimated from the basic specific gravity.</summary>
    public static double VolumetricPercent(Species species) => species.ShrinkageVolumetricPercent ?? EstimatedVolumetricPercent(species.BasicSpecificGravity);

    /// <summary>Shrinkage of volume, percent, where none is printed: 26.5 Gb.</summary>
    public static double EstimatedVolumetricPercent(double basicSpecificGravity) => 26.5 * basicSpecificGravity;

    /// <summary>Kernel: specific gravity at a moisture content, percentages as numbers, unchecked.</summary>
    public static double SpecificGravityAt(double basicSpecificGravity, double volumetricPercent, double startPercent, double moisturePercent) =>
        basicSpecificGravity / Shrinkage.FractionOfGreen(volumetricPercent, startPercent, moisturePercent);
}
