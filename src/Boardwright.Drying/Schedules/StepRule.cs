namespace Boardwright.Drying.Schedules;

/// <summary>Which samples lead a charge through its schedule.</summary>
public enum StepRule
{
    /// <summary>The mean of the wettest half (Dry Kiln Operator's Manual): safer and slower.</summary>
    WettestHalf,

    /// <summary>The mean of all (Dry Kiln Schedules for Commercial Woods, p. 9).</summary>
    MeanOfAll,
}
