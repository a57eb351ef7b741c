using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Weight of wood by volume and by footage.</summary>
/// <remarks>Nominal footage is taken as full size: 1000 board feet are 83.333 cubic feet. Rough lumber sawn thicker weighs more in proportion.</remarks>
/// <source id="fpl-wood-handbook-2021" locator="eqs 4-11, 4-14"/>
/// <method page="docs/methods/density.md"/>
public static class WoodWeight
{
    /// <summary>Mass of a volume measured at this moisture content.</summary>
    public static Mass Of(Species species, MoistureContent moisture, Volume volume) =>
        Mass.FromKilograms(WoodDensity.At(species, moisture).KilogramsPerCubicMetre * volume.CubicMetres);

    /// <summary>Mass at this moisture content of wood whose volume was measured green: it has shrunk since, and holds the same wood.</summary>
    public static Mass OfGreenVolume(Species species, MoistureContent moisture, Volume greenVolume) =>
        Mass.FromKilograms(WoodDensity.Water * species.BasicSpecificGravity * (1.0 + moisture.Fraction) * greenVolume.CubicMetres);

    /// <summary>Mass of footage tallied at this moisture content.</summary>
    public static Mass OfFootage(Species species, MoistureContent moisture, BoardFeet tally) => Of(species, moisture, tally.NominalVolume);

    /// <summary>Mass at this moisture content of footage tallied green.</summary>
    public static Mass OfFootageTalliedGreen(Species species, MoistureContent moisture, BoardFeet tally) => OfGreenVolume(species, moisture, tally.NominalVolume);
}
