using Boardwright.Numerics;
using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>What the readings of boards picked at random say about their lot.</summary>
/// <param name="Count">Boards read.</param>
/// <param name="MeanPercent">Mean moisture content.</param>
/// <param name="StandardDeviationPercent">Spread between boards, with n - 1; null for one board.</param>
/// <param name="MeanLowPercent">Lower end of the 95 % interval of the mean; null for one board.</param>
/// <param name="MeanHighPercent">Upper end of the 95 % interval of the mean; null for one board.</param>
/// <remarks>
/// <para>Interval: mean ± t(0.975, n - 1) s/√n, Student's t. It holds for boards picked at random; samples chosen as the wettest and driest are not.</para>
/// </remarks>
/// <source id="student-1908" locator="distribution of the mean"/>
/// <method page="docs/methods/lot-moisture.md"/>
public sealed record LotStatistics(int Count, double MeanPercent, double? StandardDeviationPercent, double? MeanLowPercent, double? MeanHighPercent)
{
    private const double UpperTail = 0.975;

    /// <summary>Statistics of readings; no readings at all are refused under the name "readings".</summary>
    public static Outcome<LotStatistics> Of(IReadOnlyList<MoistureContent> readings)
    {
        if (readings.Count == 0)
            return new Refusal("readings", "none", "at least one reading");

        var mean = readings.Average(reading => reading.Percent);
        if (readings.Count == 1)
            return new LotStatistics(1, mean, null, null, null);

        var deviation = Math.Sqrt(readings.Sum(reading => (reading.Percent - mean) * (reading.Percent - mean)) / (readings.Count - 1));
        var half = HalfWidth(deviation, readings.Count);
        return new LotStatistics(readings.Count, mean, deviation, mean - half, mean + half);
    }

    /// <summary>True where the mean is shown to lie within a target: its whole 95 % interval does. One board shows nothing.</summary>
    /// <param name="targetPercent">Moisture content wanted.</param>
    /// <param name="allowPercent">How far the mean may be from it, either way.</param>
    public bool AcceptsMean(double targetPercent, double allowPercent) => MeanLowPercent >= targetPercent - allowPercent && MeanHighPercent <= targetPercent + allowPercent;

    /// <summary>Share of boards expected within a band, taking the boards as normally distributed; null for one board.</summary>
    public double? ShareWithin(double lowPercent, double highPercent) => StandardDeviationPercent switch
    {
        null => null,
        0.0 => MeanPercent >= lowPercent && MeanPercent <= highPercent ? 1.0 : 0.0,
        { } deviation => Distributions.NormalProbability((highPercent - MeanPercent) / deviation) - Distributions.NormalProbability((lowPercent - MeanPercent) / deviation),
    };

    /// <summary>Boards to measure so that the mean is known this closely at 95 %, with the spread found here; null for one board.</summary>
    public int? BoardsToMeasure(double halfWidthPercent) => StandardDeviationPercent is { } deviation ? BoardsFor(deviation, halfWidthPercent) : null;

    /// <summary>Smallest count n of at least 2 with t(0.975, n - 1) s/√n at most the half width.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The half width is not above 0.</exception>
    public static int BoardsFor(double deviationPercent, double halfWidthPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(halfWidthPercent);

        // Student's t is wider than the normal, so the normal count is where the search starts from below.
        var count = Math.Max(2, (int)Math.Min(Math.Ceiling(NormalCount(deviationPercent, halfWidthPercent)), int.MaxValue / 2));
        while (HalfWidth(deviationPercent, count) > halfWidthPercent)
            count++;

        return count;
    }

    /// <summary>Boards to measure in a lot of limited size, by the normal deviate: n0/(1 + (n0 - 1)/N), rounded up.</summary>
    public static int BoardsFor(double deviationPercent, double halfWidthPercent, int lotSize)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(halfWidthPercent);
        ArgumentOutOfRangeException.ThrowIfLessThan(lotSize, 1);
        var unlimited = Math.Max(1.0, NormalCount(deviationPercent, halfWidthPercent));
        return (int)Math.Ceiling(unlimited / (1.0 + (unlimited - 1.0) / lotSize));
    }

    private static double NormalCount(double deviationPercent, double halfWidthPercent)
    {
        var ratio = Distributions.NormalQuantile(UpperTail) * deviationPercent / halfWidthPercent;
        return ratio * ratio;
    }

    private static double HalfWidth(double deviationPercent, int count) =>
        deviationPercent == 0.0 ? 0.0 : Distributions.StudentQuantile(UpperTail, count - 1) * deviationPercent / Math.Sqrt(count);
}
