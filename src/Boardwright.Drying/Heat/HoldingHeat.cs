using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>Power that holds a hot kiln, known from one observed week and scaled with inside minus outside.</summary>
/// <param name="Observed">Power then.</param>
/// <param name="Inside">Kiln temperature then.</param>
/// <param name="Outside">Mean outside temperature then; below the inside.</param>
public sealed record HoldingHeat(Power Observed, Temperature Inside, Temperature Outside)
{
    /// <summary>Power in kW at another outside temperature, the kiln as hot as then.</summary>
    public double KilowattsAt(Temperature outside) =>
        Math.Max(0.0, Observed.Kilowatts * (Inside.Celsius - outside.Celsius) / (Inside.Celsius - Outside.Celsius));
}
