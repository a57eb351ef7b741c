namespace Boardwright.Drying.Heat;

/// <summary>Coil power of a kiln run hour by hour.</summary>
/// <param name="CoilKilowatts">Mean of each hour from the start, after the fans' credit.</param>
public sealed record KilnHeatProfile(IReadOnlyList<double> CoilKilowatts)
{
    /// <summary>Highest hour.</summary>
    public double PeakKilowatts => CoilKilowatts.Count == 0 ? 0.0 : CoilKilowatts.Max();

    /// <summary>All hours together.</summary>
    public double KilowattHours => CoilKilowatts.Sum();

    /// <summary>Mean power on each calendar day of a run that begins at an hour of its first day, 0 to 23; the day's 24 hours count.</summary>
    public IReadOnlyList<double> DailyMeans(int startHour) => [.. Days(startHour).Select(day => day.Sum() / 24.0)];

    /// <summary>Highest hour of each calendar day.</summary>
    public IReadOnlyList<double> DailyPeaks(int startHour) => [.. Days(startHour).Select(day => day.Max())];

    private IEnumerable<IEnumerable<double>> Days(int startHour) =>
        CoilKilowatts.Select((kilowatts, hour) => (Day: (hour + startHour) / 24, Kilowatts: kilowatts)).GroupBy(hour => hour.Day, hour => hour.Kilowatts);
}
