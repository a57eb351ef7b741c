using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>The air around a kiln.</summary>
/// <param name="Temperature">Dry bulb.</param>
/// <param name="Humidity">Relative humidity.</param>
public readonly record struct OutsideAir(Temperature Temperature, RelativeHumidity Humidity);
