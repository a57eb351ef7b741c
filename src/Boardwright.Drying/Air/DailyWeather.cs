namespace Boardwright.Drying;

/// <summary>The outdoor air of one day.</summary>
/// <param name="Date">The day.</param>
/// <param name="MeanCelsius">Mean temperature, C.</param>
/// <param name="HumidityPercent">Mean relative humidity, percent.</param>
/// <param name="WindMetresPerSecond">Mean wind in the open, m/s; null where not known, taken as 3.</param>
/// <param name="Interpolated">True where the day was missing and filled between its neighbours.</param>
/// <param name="Hours">The 24 hours of the day from midnight; null where only the day's means are known.</param>
/// <param name="FilledHours">How many of the hours were missing and filled between their neighbours.</param>
/// <param name="RainMillimetres">Rain of the day; null where not known.</param>
public readonly record struct DailyWeather(
    DateOnly Date,
    double MeanCelsius,
    double HumidityPercent,
    double? WindMetresPerSecond,
    bool Interpolated = false,
    IReadOnlyList<HourlyAir>? Hours = null,
    int FilledHours = 0,
    double? RainMillimetres = null)
{
    /// <summary>What the air of the day holds wood at, fraction: the mean over its hours where they are known, else the equilibrium of its mean air, about a point less.</summary>
    public double EquilibriumFraction => Hours is { } hours
        ? hours.Average(hour => FutureWeather.EquilibriumFraction(hour.Celsius, hour.HumidityPercent))
        : FutureWeather.EquilibriumFraction(MeanCelsius, HumidityPercent);
}
