using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Vacuum;

/// <summary>Equilibrium moisture content in a chamber that holds vapour only: humidity is pressure over saturation at the wood.</summary>
/// <source id="chen-lamb-vacuum-emc" locator="concept; values computed from the sorption equation"/>
/// <method page="docs/methods/vacuum-drying.md"/>
public static class VacuumEmc
{
    /// <summary>Moisture content the wood cannot be dried below; null when the vapour is saturated at the wood and nothing dries.</summary>
    /// <param name="wood">Temperature of the wood, inside the sorption equation's range.</param>
    /// <param name="chamber">Absolute pressure.</param>
    public static MoistureContent? At(Temperature wood, Pressure chamber)
    {
        var humidity = chamber.Pascals / BoilingPoint.Pascals(wood.Kelvins);
        return humidity < 1.0 ? Emc.At(wood, RelativeHumidity.FromFraction(humidity)) : null;
    }

    /// <summary>True when free water in wood of this temperature boils at this pressure.</summary>
    public static bool Boils(Temperature wood, Pressure chamber) => BoilingPoint.Pascals(wood.Kelvins) > chamber.Pascals;
}
