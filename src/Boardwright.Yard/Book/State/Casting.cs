using System.Collections.Immutable;
using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>A table to be cast, or cast.</summary>
public sealed record Pour
{
    public required string Tag { get; init; }

    public required PourPlanned Plan { get; init; }

    public required DateOnly PourOn { get; init; }

    public required DateOnly DemouldOn { get; init; }

    /// <summary>Why it was moved, if it was.</summary>
    public string? MovedWhy { get; init; }

    /// <summary>Who wants it poured in spite of the warning about its wood, if anybody does.</summary>
    public RiskSigned? RiskSigned { get; init; }

    public ImmutableList<Mix> Mixes { get; init; } = [];

    /// <summary>When resin last went into the mould.</summary>
    public DateTime? PouredAt { get; init; }

    /// <summary>What went in, layer by layer.</summary>
    public ImmutableList<LayerPoured> Layers { get; init; } = [];

    /// <summary>Still to be poured, mm.</summary>
    public double LeftMm => Math.Max(0.0, Plan.DepthMm - Layers.Sum(layer => layer.DepthMm));

    /// <summary>Nothing more is to be poured; a depth is not measured closer than a few millimetres.</summary>
    public bool IsFull => Layers.Count > 0 && LeftMm < 5.0;

    public DateTime? DemouldedAt { get; init; }

    public string? Seen { get; init; }

    public ImmutableList<long> History { get; init; } = [];
}

/// <summary>A name under a warning.</summary>
/// <param name="Warning">As it was read.</param>
/// <param name="Witness">Who of the yard was there.</param>
public sealed record RiskSigned(long Entry, DateTime At, string By, string Warning, string Witness);

/// <summary>Resin that went into a mould at one time.</summary>
/// <param name="DepthMm">How much higher it stood then, mm.</param>
public sealed record LayerPoured(long Entry, DateTime At, double DepthMm);

/// <summary>Resin weighed for a pour.</summary>
public sealed record Mix(long Entry, DateTime At, Mass PartA, Mass PartB, int Buckets, Elapsed Each, string? LotA, string? LotB);

/// <summary>A class and its tables.</summary>
public sealed record CastingClass(string Tag, DateOnly PourOn, DateOnly DemouldOn, int Seats, decimal SeatMoney, ImmutableList<string> People, ImmutableList<string> Pours, long Entry);

/// <summary>A resin, its label, and what is left of it.</summary>
public sealed record Resin(string Name, ResinListed Label, ResinStock? PartA, ResinStock? PartB);

/// <summary>Stock of one part: the last count less what was mixed of that lot since.</summary>
public sealed record ResinStock(Mass OnHand, DateTime CountedAt, string? Lot, DateOnly? ExpiresOn);
