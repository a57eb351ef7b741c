using System.Collections.Immutable;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

public enum StackStage
{
    AirDrying,
    InKiln,
    KilnDried,
    Dressed,
    Gone,
}

#pragma warning disable CA1711 // a stack is the trade's word for boards on stickers, not a collection
/// <summary>Boards on stickers: what they are, where, how wet, and where they came from.</summary>
public sealed record Stack : ITagged
{
    public required string Tag { get; init; }

    public required Species Species { get; init; }

    public bool Proven { get; init; } = true;

    public ImmutableList<string> ConfusedWith { get; init; } = [];

    public required NominalThickness Thickness { get; init; }

    /// <summary>Thickness as sawn, where it is known.</summary>
    public Length? SawnThickness { get; init; }

    public required Product Product { get; init; }

    public Grain Grain { get; init; }

    /// <summary>Footage on the stack now: what it measured last, less what was taken off since. Boards tallied into a pack are off it.</summary>
    public required BoardFeet Footage { get; init; }

    /// <summary>Footage when the card was opened, or the sum sawn onto it.</summary>
    public required BoardFeet FootageBuilt { get; init; }

    /// <summary>When footage first left it without a count since; null while the footage is counted.</summary>
    public DateTime? AboutSince { get; init; }

    /// <summary>False when footage left it without a count since: "about".</summary>
    public bool FootageSure => AboutSince is null;

    /// <summary>What the card said each time it was counted, oldest first.</summary>
    public ImmutableList<FootageCount> Counts { get; init; } = [];

    public int? Pieces { get; init; }

    public required DateOnly SawnOn { get; init; }

    public required string Place { get; init; }

    public required string Owner { get; init; }

    public string? ReservedFor { get; init; }

    public bool NeverKiln { get; init; }

    public Length? ShortestPiece { get; init; }

    public Length? LongestPiece { get; init; }

    public Length? PieceWidth { get; init; }

    public StackStage Stage { get; init; }

    /// <summary>The charge it is in now.</summary>
    public string? Charge { get; init; }

    /// <summary>Every charge it has been in.</summary>
    public ImmutableList<string> Charges { get; init; } = [];

    /// <summary>Readings, oldest first; all stay.</summary>
    public ImmutableList<MoistureReading> Readings { get; init; } = [];

    /// <summary>Logs sawn onto it.</summary>
    public ImmutableList<string> FromLogs { get; init; } = [];

    /// <summary>The stack it was planed from, or that came out of a kiln under this tag.</summary>
    public string? FromStack { get; init; }

    /// <summary>Stacks made of it.</summary>
    public ImmutableList<string> IntoStacks { get; init; } = [];

    /// <summary>Packs tallied from it.</summary>
    public ImmutableList<string> IntoPacks { get; init; } = [];

    public string? Note { get; init; }

    public ImmutableList<long> History { get; init; } = [];

    /// <summary>The newest reading with a figure.</summary>
    public MoistureReading? Moisture => Readings.LastOrDefault(reading => reading.Mean is not null);

    public bool IsHere => Stage != StackStage.Gone;
}

/// <summary>A count of a stack beside what its card said until then.</summary>
/// <param name="At">When.</param>
/// <param name="Card">Footage on the card.</param>
/// <param name="Counted">Footage counted.</param>
public sealed record FootageCount(DateTime At, BoardFeet Card, BoardFeet Counted)
{
    private const double SurprisePercent = 5.0; // common practice, no source

    /// <summary>True where the count is more than 5 % off the card, or of a card that said none.</summary>
    public bool IsSurprise => Math.Abs(Counted.Count - Card.Count) > SurprisePercent / 100.0 * Card.Count + 0.5;
}

/// <summary>A moisture reading as it was taken and as it is understood now.</summary>
/// <param name="Entry">The entry it stands in.</param>
/// <param name="At">When it was read.</param>
/// <param name="Method">How.</param>
/// <param name="Mean">Mean on the oven-dry basis; of a meter, corrected for wood temperature and, where that is known, for species.</param>
/// <param name="SdPct">Standard deviation between boards, points of moisture content.</param>
/// <param name="Boards">Boards read.</param>
public sealed record MoistureReading(long Entry, DateTime At, MoistureMethod Method, MoistureContent? Mean, double? SdPct, int? Boards)
{
    /// <summary>What the meter showed, kept for ever.</summary>
    public MoistureContent? Raw { get; init; }

    /// <summary>Temperature of the wood.</summary>
    public Temperature? Wood { get; init; }

    /// <summary>The species the meter was set to.</summary>
    public MeterSetting? SetTo { get; init; }

    /// <summary>How the raw reading is understood: corrections, whether it may be relied on, how far the oven may differ, and what to know.</summary>
    public MeterReading? Meter { get; init; }

    /// <summary>The wood on the scale and its volume when it was green, kept for ever; null for a reading that is no weight.</summary>
    public (Mass Wood, Volume Green)? Weighed { get; init; }

    /// <summary>True when the wood is not what the meter was set to and no correction is published: ask for an oven section before a promise.</summary>
    public bool SpeciesUnknown => Meter is { Corrected: null };
}
