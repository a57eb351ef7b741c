using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>What to weigh for a pour. By mass: two to one by volume is not two to one by mass.</summary>
/// <param name="PartA">Resin.</param>
/// <param name="PartB">Hardener.</param>
/// <param name="VolumeA">The same part A as a volume, to see whether the bucket holds it.</param>
/// <param name="VolumeB">The same part B as a volume.</param>
public sealed record Mix(Mass PartA, Mass PartB, Volume VolumeA, Volume VolumeB)
{
    /// <summary>Both parts.</summary>
    public Mass Total => PartA + PartB;

    /// <summary>Masses of both parts that fill a volume and allow for waste.</summary>
    /// <remarks>Total = volume × mixed density × (1 + waste); A = total / (1 + r), B = r A, r = ratio by mass.</remarks>
    /// <method page="docs/methods/resin-mix.md"/>
    /// <param name="resin">Ratio and densities.</param>
    /// <param name="inPlace">Resin that stays in the mould.</param>
    /// <param name="waste">What sticks to buckets and leaks, a share of the volume in place.</param>
    public static Mix For(Resin resin, Volume inPlace, Share waste)
    {
        ArgumentNullException.ThrowIfNull(resin);
        var total = inPlace.CubicMetres * resin.DensityMixed.KilogramsPerCubicMetre * (1.0 + waste.Fraction);
        var partA = total / (1.0 + resin.HardenerPerResin);
        var partB = total - partA;
        return new(
            Mass.FromKilograms(partA), Mass.FromKilograms(partB),
            Volume.FromCubicMetres(partA / resin.DensityA.KilogramsPerCubicMetre), Volume.FromCubicMetres(partB / resin.DensityB.KilogramsPerCubicMetre));
    }
}
