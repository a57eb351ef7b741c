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

    /// <summary>The same steps as stretches that do not touch one another, in the order of time: a kiln that is down already may be supposed out of use as well.</summary>
    public static IReadOnlyList<StepRange> Joined(IEnumerable<StepRange> stretches)
    {
        ArgumentNullException.ThrowIfNull(stretches);
        var joined = new List<StepRange>();
        foreach (var next in stretches.Where(stretch => stretch.Length > 0).OrderBy(stretch => stretch.From))
        {
            if (joined.Count > 0 && next.From <= joined[^1].To)
                joined[^1] = new(joined[^1].From, Math.Max(joined[^1].To, next.To));
            else
                joined.Add(next);
        }

        return joined;
    }
}
