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
        var variance = boards.Count > 1 ? boards.Sum(board => Math.Pow(board.Percent - mean, 2.0)) / (boards.Count - 1) / boards.Count : 0.0;
        var method = mean > 30.0 ? WetErrorShare * mean : MeterErrorPercent;
        return new(date, MoistureContent.FromPercent(mean), Math.Sqrt(variance + method * method));
    }
}
