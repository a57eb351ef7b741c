using Boardwright.Quantities;

namespace Boardwright.Documents.Packs;

/// <summary>Everything a pack tag says. What is null is not known and is left as an empty box to be filled in by hand.</summary>
public sealed record PackTagContent
{
    public required string Yard { get; init; }

    /// <summary>Pack number, the largest thing on the tag: P-118.</summary>
    public required string Pack { get; init; }

    public required string Species { get; init; }

    /// <summary>As the trade writes it: 4/4, or 28.6 mm.</summary>
    public required string Thickness { get; init; }

    /// <summary>Rough, S2S and the like.</summary>
    public required string Surface { get; init; }

    /// <summary>Grade with the rule it stands under.</summary>
    public required string Grade { get; init; }

    public required int Pieces { get; init; }

    public Length? ShortestPiece { get; init; }

    public Length? LongestPiece { get; init; }

    public required BoardFeet Footage { get; init; }

    public required FootageBasis Basis { get; init; }

    /// <summary>How the footage was counted: surface measure board by board.</summary>
    public required string FootageRule { get; init; }

    public Volume? Volume { get; init; }

    /// <summary>Nominal or actual size.</summary>
    public string VolumeBasis { get; init; } = "nominal size";

    public Mass? Weight { get; init; }

    public MoistureContent? MoistureLow { get; init; }

    public MoistureContent? MoistureHigh { get; init; }

    /// <summary>How, where and when the moisture was measured.</summary>
    public string? MoistureBasis { get; init; }

    /// <summary>What the order asks for and how the measured compares: "wetter than ordered: 6 to 8 %"; null without an order.</summary>
    public string? MoistureOrdered { get; init; }

    /// <summary>The wood is wetter than its order asks: what was ordered stands white on black, so that nobody loads it unseen.</summary>
    public bool IsWetter { get; init; }

    /// <summary>Kiln charge the wood was dried in; null for wood that saw no kiln.</summary>
    public string? Charge { get; init; }

    public required HeatTreatment HeatTreatment { get; init; }

    /// <summary>The measured core temperature and time, or why it is unproven.</summary>
    public string? HeatTreatmentProof { get; init; }

    public string? Order { get; init; }

    public string? Customer { get; init; }

    /// <summary>Whose wood it is when it is not the mill's: then it stands large on the tag.</summary>
    public string? Owner { get; init; }

    public required DateOnly Date { get; init; }

    public required string TalliedBy { get; init; }

    /// <summary>What the QR code holds: the pack's address on the yard's own server, or its number.</summary>
    public required string CodeText { get; init; }
}
