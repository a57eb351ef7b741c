using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>What was measured on a stack on a day: the mean of its boards and how far that mean may be off.</summary>
/// <param name="Date">The day.</param>
/// <param name="Mean">Mean moisture content.</param>
/// <param name="ErrorPercent">Standard error that is new in every reading, percent moisture content.</param>
/// <param name="SharedErrorPercent">Standard error that all readings of this kind on the stack have in common, percent moisture content.</param>
/// <param name="Kind">How it was found.</param>
public readonly record struct StackReading(
    DateOnly Date, MoistureContent Mean, double ErrorPercent, double SharedErrorPercent = 0.0, ReadingKind Kind = ReadingKind.Stated)
{
    /// <summary>The two errors together, percent moisture content.</summary>
    public double TotalErrorPercent => Math.Sqrt(ErrorPercent * ErrorPercent + SharedErrorPercent * SharedErrorPercent);

    /// <summary>From pin readings of single boards.</summary>
    public static StackReading Of(DateOnly date, IReadOnlyList<MoistureContent> boards)
    {
        ArgumentNullException.ThrowIfNull(boards);
        var mean = boards.Average(board => board.Percent);
        var deviation = boards.Count > 1 ? Math.Sqrt(boards.Sum(board => Math.Pow(board.Percent - mean, 2.0)) / (boards.Count - 1)) : 0.0;
        return ReadingErrorModel.Of(ReadingKind.PinMeter).Reading(date, MoistureContent.FromPercent(mean), deviation, boards.Count);
    }
}
