namespace Boardwright.Web.Drawings;

/// <summary>A control chart of board thickness in the order of sawing. Sizes in inches.</summary>
/// <param name="Words">What was sawn.</param>
/// <param name="Boards">Mean of each board, and whether it says something.</param>
/// <param name="Centre">Mean of the means.</param>
/// <param name="Low">Lower limit.</param>
/// <param name="High">Upper limit.</param>
public sealed record SizeChartDrawing(string Words, IReadOnlyList<(string Board, double Mean, bool Signal)> Boards, double Centre, double Low, double High)
{
    /// <summary>Thickness the saw should be set to; null leaves the line out.</summary>
    public double? Target { get; init; }
}
