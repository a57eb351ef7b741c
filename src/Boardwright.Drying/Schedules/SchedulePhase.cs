namespace Boardwright.Drying.Schedules;

/// <summary>What a row of a house's own schedule is for.</summary>
public enum SchedulePhase
{
    /// <summary>A step of drying.</summary>
    Dry,

    /// <summary>Bring dry and wet boards together.</summary>
    Equalize,

    /// <summary>Free the stress of drying.</summary>
    Condition,
}
