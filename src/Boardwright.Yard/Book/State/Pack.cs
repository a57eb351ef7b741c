using System.Collections.Immutable;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>Boards counted one by one and kept together.</summary>
public sealed record Pack : ITagged
{
    public required string Tag { get; init; }

    public required Species Species { get; init; }

    public bool Proven { get; init; } = true;

    public ImmutableList<string> ConfusedWith { get; init; } = [];

    public required NominalThickness Thickness { get; init; }

    /// <summary>The stack its boards are from.</summary>
    public required string Stack { get; init; }

    /// <summary>How that stack was when the boards left it: what becomes of the stack afterwards says nothing of the pack.</summary>
    public required StackStage Stage { get; init; }

    public string? Order { get; init; }

    public int? Line { get; init; }

    /// <summary>Every tally, in the order they were made.</summary>
    public ImmutableList<Tally> Tallies { get; init; } = [];

    /// <summary>The tally chosen among several.</summary>
    public long? Chosen { get; init; }

    public string? ChosenWhy { get; init; }

    public DateTime? LabelledAt { get; init; }

    /// <summary>The shipment it left with.</summary>
    public string? Shipment { get; init; }

    /// <summary>The stack its boards were put on again; the pack is no more then.</summary>
    public string? Restacked { get; init; }

    /// <summary>True while it lies in the yard as a pack.</summary>
    public bool IsHere => Shipment is null && Restacked is null;

    public ImmutableList<long> History { get; init; } = [];

    /// <summary>When its boards left their stack: its first tally.</summary>
    public DateTime At => Tallies[0].At;

    /// <summary>What it took off its stack: the tally that holds, until one does the first.</summary>
    public BoardFeet Footage => (Agreed ?? Tallies[0]).Footage;

    /// <summary>Tallies that were called to their end.</summary>
    public IEnumerable<Tally> Closed => Tallies.Where(tally => !tally.Open);

    /// <summary>The tally that holds: the chosen one, or the only one, or any when all agree board by board. Null while they differ or none is closed.</summary>
    public Tally? Agreed => Chosen is { } chosen ? Tallies.Find(tally => tally.Entry == chosen)
        : Closed.FirstOrDefault() is { } first && Closed.All(tally => tally.Boards.SequenceEqual(first.Boards)) ? first : null;

    public bool IsDisputed => Restacked is null && Closed.Any() && Agreed is null;

    /// <summary>True while somebody is still calling boards.</summary>
    public bool IsBeingTallied => Tallies.Exists(tally => tally.Open);

    /// <summary>True when a tag may be printed: one tally holds, nobody is still counting, and the species is proven.</summary>
    public bool MayBeLabelled => Restacked is null && Proven && Agreed is not null && !IsBeingTallied;
}

/// <summary>One person's count of a pack.</summary>
public sealed record Tally(long Entry, DateTime At, string By, BoardFeet Footage, string Rule, MoistureContent? Moisture, ImmutableList<TallyBoard> Boards, bool Open = false);
