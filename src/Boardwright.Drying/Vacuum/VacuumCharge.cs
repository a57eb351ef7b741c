using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Vacuum;

/// <summary>A charge for a radio-frequency vacuum kiln.</summary>
/// <param name="Species">One species.</param>
/// <param name="Thickness">Of the boards.</param>
/// <param name="Length">Of the boards; what decides in wood that passes little steam.</param>
/// <param name="From">At the start.</param>
/// <param name="To">At the end.</param>
/// <param name="Volume">Wood, when green.</param>
/// <param name="Chamber">Absolute pressure.</param>
/// <param name="Platen">Radio-frequency power at the platen.</param>
public sealed record VacuumCharge(
    Species Species, Length Thickness, Length Length, MoistureContent From, MoistureContent To, Volume Volume, Pressure Chamber, Power Platen)
{
    /// <summary>Wood when it goes in.</summary>
    public Temperature Start { get; init; } = Temperature.FromCelsius(20.0);

    /// <summary>Hottest the wood may get below fibre saturation.</summary>
    public Temperature HottestWood { get; init; } = Temperature.FromCelsius(60.0);

    /// <summary>Hottest oak and other close wood may get while it holds free water.</summary>
    public Temperature HottestGreenOak { get; init; } = Temperature.FromCelsius(45.0);

    /// <summary>The operator raises the electrode voltage as the wood dries and takes less at the same voltage; else it stays as it was set at the start.</summary>
    public bool VoltageRaised { get; init; }

    /// <summary>Most power in a cubic metre of wood, kW: a generator strong for its load is turned down to it, against checks inside. 3 in oak, 5 in the rest (common practice) where the house has no figure of its own.</summary>
    public double MostKilowattsPerCubicMetre { get => field > 0.0 ? field : Species.CommonName.EndsWith("oak", StringComparison.Ordinal) ? 3.0 : 5.0; init; }

    internal bool IsOakOrClose => Species.VacuumClass == "nearly-impermeable" || Species.CommonName.EndsWith("oak", StringComparison.Ordinal);
}
