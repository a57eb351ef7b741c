namespace Boardwright.Planning;

/// <summary>A stretch of the plan's time, in whole steps since the first midnight: the first step inside, the first one after.</summary>
/// <param name="From">First step inside.</param>
/// <param name="To">First step after; not before <paramref name="From"/>.</param>
public readonly record struct StepRange(int From, int To)
{
    /// <summary>Number of steps.</summary>
    public int Length => To - From;

    /// <summary>True when some step lies in both.</summary>
    public bool Touches(StepRange other) => From < other.To && other.From < To;

    /// <summary>True when <paramref name="other"/> lies wholly inside.</summary>
    public bool Holds(StepRange other) => From <= other.From && other.To <= To;
}
