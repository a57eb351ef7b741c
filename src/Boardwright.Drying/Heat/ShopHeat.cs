using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>Heat of shop and house on the same boiler.</summary>
/// <param name="NeedsNoneAt">Outside mean temperature from which no heat is wanted.</param>
/// <param name="KilowattsPerKelvin">Power for each kelvin below that.</param>
/// <method page="docs/methods/boiler-and-shop-heat.md"/>
public sealed record ShopHeat(Temperature NeedsNoneAt, double KilowattsPerKelvin)
{
    private const double AirWattHoursPerCubicMetreKelvin = 0.33;

    /// <summary>Power in kW at an outside mean temperature.</summary>
    public double KilowattsAt(Temperature outside) => KilowattsPerKelvin * Math.Max(0.0, NeedsNoneAt.Celsius - outside.Celsius);

    /// <summary>From the building itself: (UA + 0.33 n V) for each kelvin inside above outside.</summary>
    /// <param name="lossWattsPerKelvin">UA of walls, roof, windows and floor.</param>
    /// <param name="air">Volume of air inside.</param>
    /// <param name="airChangesPerHour">Leaks and ventilation; dust extraction vented outdoors is ventilation.</param>
    /// <param name="inside">Temperature held inside.</param>
    public static ShopHeat OfBuilding(double lossWattsPerKelvin, Volume air, double airChangesPerHour, Temperature inside) =>
        new(inside, (lossWattsPerKelvin + AirWattHoursPerCubicMetreKelvin * airChangesPerHour * air.CubicMetres) / 1000.0);
}
