namespace Boardwright.Web.Drawings;

/// <summary>A pack's end, its boards laid in tiers in the order of the tally.</summary>
/// <param name="Tag">P-118.</param>
/// <param name="Species">Common name.</param>
/// <param name="WidthsInches">Width of each board, first board first.</param>
public sealed record PackEndDrawing(string Tag, string Species, IReadOnlyList<double> WidthsInches)
{
    /// <summary>Width of the board being written now; null when none is.</summary>
    public double? EnteringInches { get; init; }

    /// <summary>A tier is full when the next board would pass this width.</summary>
    public double TierInches { get; init; } = 42;

    /// <summary>Numbers of boards to mark, such as those on which two tallies differ.</summary>
    public IReadOnlySet<int> Marked { get; init; } = new HashSet<int>();
}
