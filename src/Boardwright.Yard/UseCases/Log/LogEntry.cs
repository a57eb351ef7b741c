namespace Boardwright.Yard.UseCases;

/// <summary>A log as a person types it in at the landing. A bare number counts in the unit that stands beside its field.</summary>
public sealed record LogEntry
{
    public string? Tag { get; init; }

    public string? Species { get; init; }

    public string? SmallEndA { get; init; }

    public string? SmallEndB { get; init; }

    public string? LargeEnd { get; init; }

    public string? ScaleLength { get; init; }

    public string? ActualLength { get; init; }

    /// <summary>Unit of bare diameters: in or cm.</summary>
    public string DiameterUnit { get; init; } = "in";

    /// <summary>Unit of bare lengths: ft or m.</summary>
    public string LengthUnit { get; init; } = "ft";

    public string? Source { get; init; }

    public string? Owner { get; init; }

    public string? Scan { get; init; }

    public string? Hits { get; init; }

    public bool EndCoated { get; init; }

    public string? Defect { get; init; }

    public string? Mid { get; init; }

    public string? Sweep { get; init; }

    public string? SweepHour { get; init; }

    public string? HeartRot { get; init; }

    public string? PithOff { get; init; }

    public string? PithHour { get; init; }

    public string? SplitSmall { get; init; }

    public string? SplitLarge { get; init; }

    public string? Bark { get; init; }

    public string? Grade { get; init; }

    public bool MetalMarks { get; init; }

    public string? PlannedFor { get; init; }

    public string? Paid { get; init; }

    public string? By { get; init; }
}
