namespace Boardwright.Drying;

/// <summary>What a station reported at a time; what it did not report is null.</summary>
/// <param name="Time">Local standard time; counts for the hour it lies in, and several reports of an hour count by their mean.</param>
/// <param name="Celsius">Temperature, C.</param>
/// <param name="HumidityPercent">Relative humidity, percent.</param>
/// <param name="WindMetresPerSecond">Wind in the open, m/s.</param>
/// <param name="RainMillimetres">Rain since the last report, mm.</param>
public readonly record struct WeatherHour(DateTime Time, double? Celsius, double? HumidityPercent, double? WindMetresPerSecond, double? RainMillimetres = null);
