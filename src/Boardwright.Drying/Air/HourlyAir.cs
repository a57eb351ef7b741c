namespace Boardwright.Drying;

/// <summary>The outdoor air of one hour.</summary>
/// <param name="Celsius">Temperature, C.</param>
/// <param name="HumidityPercent">Relative humidity, percent.</param>
/// <param name="WindMetresPerSecond">Wind in the open, m/s; null where not known.</param>
public readonly record struct HourlyAir(double Celsius, double HumidityPercent, double? WindMetresPerSecond);
