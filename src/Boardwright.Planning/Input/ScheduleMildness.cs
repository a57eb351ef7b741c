namespace Boardwright.Planning;

/// <summary>How mild a stack's schedule is: the lower of the numbers rules a shared charge.</summary>
/// <param name="TemperatureNumber">Number of the temperature schedule (T1 is the coolest).</param>
/// <param name="DepressionNumber">Number of the wet-bulb depression schedule (1 is the most humid).</param>
public readonly record struct ScheduleMildness(int TemperatureNumber, int DepressionNumber)
{
    /// <summary>The numbers that are safe for both.</summary>
    public static ScheduleMildness Mildest(ScheduleMildness a, ScheduleMildness b) =>
        new(Math.Min(a.TemperatureNumber, b.TemperatureNumber), Math.Min(a.DepressionNumber, b.DepressionNumber));
}
