namespace Boardwright.Numerics;

/// <summary>How good a forecast by an ensemble was, as weather forecasts are verified.</summary>
public static class EnsembleScore
{
    /// <summary>Continuous ranked probability score: mean distance from the members to the outcome less half their mean distance from each other, in the unit of the
    /// outcome. Zero for a sure and right forecast; for a single value it is the absolute error, so that the two may be compared.</summary>
    /// <source id="hersbach-2000"/>
    /// <method page="docs/methods/air-drying.md"/>
    /// <param name="members">Values of the members, finite, at least one.</param>
    /// <param name="outcome">What came.</param>
    public static double Crps(ReadOnlySpan<double> members, double outcome)
    {
        var sorted = members.ToArray();
        Array.Sort(sorted);
        var (distance, spread) = (0.0, 0.0);
        for (var i = 0; i < sorted.Length; i++)
        {
            distance += Math.Abs(sorted[i] - outcome);
            spread += sorted[i] * (2 * i - sorted.Length + 1);
        }

        return distance / sorted.Length - spread / ((double)sorted.Length * sorted.Length);
    }
}
