using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>Firewood on hand and how long it lasts.</summary>
/// <param name="Cords">Stacked, 128 ft³ each.</param>
/// <param name="SolidShare">Wood in a stacked volume; loose slabs 0.4 to 0.5, bundled 0.55 to 0.6, split wood 0.65 to 0.7.</param>
/// <param name="OvenDry">Oven-dry mass per solid volume.</param>
/// <param name="DryMegajoulesPerKilogram">Heating value of oven-dry wood.</param>
/// <param name="Delivered">Share of it that reaches the water.</param>
/// <method page="docs/methods/fuel.md"/>
public sealed record FuelStock(double Cords, Share SolidShare, Density OvenDry, double DryMegajoulesPerKilogram, Share Delivered)
{
    /// <summary>Stacked volume of a cord, m³.</summary>
    public const double CordCubicMetres = 128.0 * 0.028316846592;

    /// <summary>Heat the stock delivers, kWh.</summary>
    public double KilowattHours =>
        Cords * CordCubicMetres * SolidShare.Fraction * OvenDry.KilogramsPerCubicMetre * DryMegajoulesPerKilogram * Delivered.Fraction / 3.6;

    /// <summary>Days it lasts at a mean power; null when nothing is drawn.</summary>
    public double? DaysAt(double meanKilowatts) => meanKilowatts > 0.0 ? KilowattHours / (24.0 * meanKilowatts) : null;
}
