namespace Boardwright.Drying;

/// <summary>The outdoor air of one day.</summary>
/// <param name="Date">The day.</param>
/// <param name="MeanCelsius">Mean temperature, C.</param>
/// <param name="HumidityPercent">Mean relative humidity, percent.</param>
/// <param name="WindMetresPerSecond">Mean wind in the open, m/s; null where not known, taken as 3.</param>
/// <param name="Interpolated">True where the day was missing and filled between its neighbours.</param>
public readonly record struct DailyWeather(DateOnly Date, double MeanCelsius, double HumidityPercent, double? WindMetresPerSecond, bool Interpolated = false);
