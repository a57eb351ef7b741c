namespace Boardwright.Sawing;

/// <summary>What flitches are clipped to: two upright lines, and a heart taken out of each that meets it. Millimetres.</summary>
internal readonly record struct FlitchClip(double LowMm, double HighMm, double HeartRadiusMm = 0.0)
{
    /// <summary>Nothing clipped.</summary>
    public static FlitchClip None => new(double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Nothing clipped, so that natural edges stay.</summary>
    public bool IsWhole => double.IsInfinity(LowMm) && double.IsInfinity(HighMm) && HeartRadiusMm == 0.0;

    /// <summary>The same, seen with the log turned over.</summary>
    public FlitchClip TurnedOver => new(-HighMm, -LowMm, HeartRadiusMm);
}
