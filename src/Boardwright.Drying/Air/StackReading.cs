using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>What was measured on a stack on a day: the mean of its boards and how far that mean may be off.</summary>
/// <param name="Date">The day.</param>
/// <param name="Mean">Mean moisture content.</param>
/// <param name="ErrorPercent">Standard error of the mean in percent moisture content, the meter's own error included.</param>
public readonly record struct StackReading(DateOnly Date, MoistureContent Mean, double ErrorPercent)
{
    private const double MeterErrorPercent = 1.0;
    private const double WetErrorShare = 0.05;

    /// <summary>From single board readings: the scatter of the boards over the root of their number, and 1 % of the method (5 % of the value above fiber saturation).</summary>
    public static StackReading Of(DateOnly date, IReadOnlyList<MoistureContent> boards)
    {
        ArgumentNullException.ThrowIfNull(boards);
        var mean = boards.Average(board => board.Percent);
        var deviation = boards.Count > 1 ? Math.Sqrt(boards.Sum(board => Math.Pow(board.Percent - mean, 2.0)) / (boards.Count - 1)) : 0.0;
        return Of(date, MoistureContent.FromPercent(mean), deviation, boards.Count, MeterErrorPercent);
    }

    /// <summary>From a mean and its scatter: the scatter over the root of the number of boards, and the error of the method, at least 5 % of the value above fiber saturation.</summary>
    /// <param name="date">The day.</param>
    /// <param name="mean">Mean moisture content.</param>
    /// <param name="deviationPercent">Standard deviation between boards, percent moisture content; 0 where unknown.</param>
    /// <param name="boards">Boards read, at least 1.</param>
    /// <param name="methodPercent">How far the method itself may be off, percent moisture content.</param>
    public static StackReading Of(DateOnly date, MoistureContent mean, double deviationPercent, int boards, double methodPercent)
    {
        var method = mean.Percent > 30.0 ? Math.Max(WetErrorShare * mean.Percent, methodPercent) : methodPercent;
        return new(date, mean, Math.Sqrt(deviationPercent * deviationPercent / Math.Max(boards, 1) + method * method));
    }
}
