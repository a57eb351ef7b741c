using Boardwright.Quantities;

namespace Boardwright.Documents.Packs;

/// <summary>One pack with its boards, as a packing list prints it.</summary>
public sealed record PackTally
{
    public required string Pack { get; init; }

    public required string Species { get; init; }

    public required string Thickness { get; init; }

    public required string Surface { get; init; }

    /// <summary>Grade with the rule it stands under.</summary>
    public required string Grade { get; init; }

    public TallyUnits Units { get; init; } = TallyUnits.InchesAndFeet;

    public required IReadOnlyList<TallyBoard> Boards { get; init; }

    public required IReadOnlyList<LengthSubtotal> ByLength { get; init; }

    public required BoardFeet Footage { get; init; }

    /// <summary>The same boards without any rounding, so that nobody argues about the difference.</summary>
    public BoardFeet? FootageUnrounded { get; init; }

    public required FootageBasis Basis { get; init; }

    public required string FootageRule { get; init; }

    public Volume? Volume { get; init; }

    public string VolumeBasis { get; init; } = "nominal size";

    public Mass? Weight { get; init; }

    public MoistureContent? MoistureLow { get; init; }

    public MoistureContent? MoistureHigh { get; init; }

    public string? MoistureBasis { get; init; }

    /// <summary>What the order asks for and how the measured compares: "wetter than ordered: 6 to 8 %"; null without an order.</summary>
    public string? MoistureOrdered { get; init; }

    public string? Charge { get; init; }

    public required HeatTreatment HeatTreatment { get; init; }

    public string? HeatTreatmentProof { get; init; }

    public required string TalliedBy { get; init; }

    public required DateOnly TalliedOn { get; init; }

    /// <summary>A list that goes out signed must add up: the subtotals against the boards.</summary>
    /// <exception cref="ArgumentException">Pieces or surface measures of the subtotals are not those of the boards.</exception>
    internal void MustAddUp()
    {
        var pieces = ByLength.Sum(length => length.Pieces);
        if (pieces != Boards.Count)
            throw new ArgumentException($"Pack {Pack}: the subtotals count {pieces} pieces, the boards are {Boards.Count}.");

        var subtotals = ByLength.Sum(length => length.SurfaceMeasure ?? 0);
        var boards = Boards.Sum(board => board.SurfaceMeasure ?? 0);
        if (subtotals != boards)
            throw new ArgumentException($"Pack {Pack}: the subtotals come to {subtotals} ft² surface measure, the boards to {boards}.");
    }
}
