using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>A log as the tape gave it, inside bark and without trim.</summary>
/// <param name="SmallEnd">Scaling diameter: small end, inside bark.</param>
/// <param name="Length">Scaling length, without trim.</param>
public sealed record MeasuredLog(Length SmallEnd, Length Length)
{
    /// <summary>Large-end diameter inside bark; null when it was not measured.</summary>
    public Length? LargeEnd { get; init; }

    /// <summary>Diameter inside bark half way along; null when it was not measured.</summary>
    public Length? Middle { get; init; }

    /// <summary>Sweep: greatest departure of the log from a straight line between its ends; null when it is straight.</summary>
    public Length? Sweep { get; init; }

    /// <summary>Faults to deduct.</summary>
    public IReadOnlyList<LogDefect> Defects { get; init; } = [];
}
