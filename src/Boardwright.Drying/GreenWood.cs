using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>Moisture content at which wood of a species comes from the saw.</summary>
public static class GreenWood
{
    private const double UnknownPercent = 75.0;

    /// <summary>Mean of heartwood and sapwood where both are printed, else the printed average or heartwood; 75 % where nothing is printed (common practice).</summary>
    /// <source id="fpl-wood-handbook-2010" locator="table 4-1"/>
    /// <source id="usfs-fiadb-ref-species-2021"/>
    /// <method page="docs/methods/species.md"/>
    public static MoistureContent Moisture(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return species is { GreenMoistureHeartwood: { } heart, GreenMoistureSapwood: { } sap }
            ? MoistureContent.FromFraction(0.5 * (heart.Fraction + sap.Fraction))
            : species.GreenMoistureAverage ?? species.GreenMoistureHeartwood ?? MoistureContent.FromPercent(UnknownPercent);
    }
}
