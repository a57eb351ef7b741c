namespace Boardwright.Drying.Schedules;

/// <summary>Which source rules the end of a charge.</summary>
public enum FinishRule
{
    /// <summary>Equalize from a driest sample 2 % under target (Dry Kiln Operator's Manual).</summary>
    Ah188,

    /// <summary>Equalize from a driest sample 3 % under target (Dry Kiln Schedules for Commercial Woods, appendix A).</summary>
    Gtr57,
}
