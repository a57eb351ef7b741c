using Boardwright.Quantities;

namespace Boardwright.Documents.Kilns;

/// <summary>What the kiln is told to hold.</summary>
public abstract record KilnSetting
{
    private KilnSetting()
    {
    }

    /// <summary>A kiln that dries with air.</summary>
    public sealed record Air(Temperature DryBulb, Temperature WetBulb) : KilnSetting;

    /// <summary>A radio-frequency vacuum kiln: temperature in the wood, pressure in the vessel.</summary>
    public sealed record Vacuum(Temperature Wood, Pressure Vessel) : KilnSetting;
}
