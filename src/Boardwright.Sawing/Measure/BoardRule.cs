namespace Boardwright.Sawing;

/// <summary>How a board's footage is counted.</summary>
public enum BoardRule
{
    /// <summary>Hardwood rule: length dropped to whole feet, surface measure to the whole foot, under 1 in counted as 1 in.</summary>
    Nhla,

    /// <summary>Nothing rounded: width x length x thickness.</summary>
    Exact,
}
