using Boardwright.Quantities;

namespace Boardwright.Documents.Kilns;

/// <summary>The sheet at the kiln door: what to set, what to weigh, what to write.</summary>
public sealed record KilnRunSheetContent
{
    public required string Yard { get; init; }

    public required string Kiln { get; init; }

    public required string Charge { get; init; }

    /// <summary>Wood and amount in one line: northern red oak 4/4, 3,150 bf, stack S-10.</summary>
    public required string Load { get; init; }

    public required MoistureContent Target { get; init; }

    public required DateOnly Started { get; init; }

    /// <summary>For when the sheet is printed.</summary>
    public required DateTime At { get; init; }

    public required KilnSetting Now { get; init; }

    /// <summary>Since when the present setting holds.</summary>
    public required string NowSince { get; init; }

    /// <summary>The setting to make next; null when the present one stays.</summary>
    public KilnSetting? Next { get; init; }

    /// <summary>When, or at what moisture, to make it.</summary>
    public string? NextWhen { get; init; }

    /// <summary>The days of the earlier weighings, oldest first; at most five are printed, the latest.</summary>
    public IReadOnlyList<DateOnly> WeighingDays { get; init; } = [];

    public IReadOnlyList<KilnSample> Samples { get; init; } = [];

    /// <summary>Moisture lost a day that will not check the wood.</summary>
    public Share? SafeDailyLoss { get; init; }

    /// <summary>Where the safe figure comes from, and where it stops being the limit.</summary>
    public string? SafeDailyLossBasis { get; init; }

    /// <summary>Loss of the wettest sample over the last day measured.</summary>
    public Share? LastDailyLoss { get; init; }

    public string? ScheduleCode { get; init; }

    public string? ScheduleSource { get; init; }

    public IReadOnlyList<ScheduleStep> Steps { get; init; } = [];

    /// <summary>Index of the step the charge is in.</summary>
    public int? StepNow { get; init; }

    /// <summary>Index of the step whose bulbs are set; null where the setting is no step's.</summary>
    public int? StepSet { get; init; }

    /// <summary>What has to be known before going on: a sample that lost wood, a power cut.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    public MoistureContent? EqualizeEmc { get; init; }

    public MoistureContent? ConditionEmc { get; init; }
}
