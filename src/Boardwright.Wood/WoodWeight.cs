using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>Weight of wood by volume and by footage.</summary>
/// <remarks>Nominal footage is taken as full size: 1000 board feet are 83.333 cubic feet. Rough lumber sawn thicker weighs more in proportion.</remarks>
/// <source id="fpl-wood-handbook-2021" locator="eqs 4-11, 4-14"/>
/// <method page="docs/methods/density.md"/>
public static class WoodWeight
{
    /// <summary>Moisture content of wood by its weight: the oven-dry mass is taken from its green volume and the basic gravity of the species, which a single load misses by 5 % or so.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="weight">On the scale now, wood alone.</param>
    /// <param name="green">Its volume when green.</param>
    /// <returns>The moisture content; refused where the weight is less than bone-dry or more than water-logged wood of that volume would weigh.</returns>
    public static Outcome<MoistureContent> MoistureOf(Species species, Mass weight, Volume green)
    {
        ArgumentNullException.ThrowIfNull(species);
        var dry = OfGreenVolume(species, MoistureContent.OvenDry, green);
        var most = OfGreenVolume(species, MoistureLimits.Maximum(species), green);
        return weight >= dry && weight <= most
            ? MoistureContent.FromFraction(weight.Kilograms / dry.Kilograms - 1.0)
            : new Refusal("weight", $"{weight.Kilograms:0} kg", $"{dry.Kilograms:0} kg, bone-dry {species.CommonName} of this footage, to {most.Kilograms:0} kg, water-logged");
    }

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
