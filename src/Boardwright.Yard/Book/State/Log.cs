using System.Collections.Immutable;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>Anything with a tag that can lose it: its species and whether that is proven.</summary>
public interface ITagged
{
    /// <summary>What is written on it.</summary>
    string Tag { get; }

    /// <summary>The species it is taken to be.</summary>
    Species Species { get; }

    /// <summary>False from a lost tag until it is proven again: no price, promise or treatment claim meanwhile.</summary>
    bool Proven { get; }
}

/// <summary>A log, from the day it came in to the stacks it became.</summary>
public sealed record Log : ITagged
{
    public required string Tag { get; init; }

    public required DateTime ReceivedAt { get; init; }

    public required string Source { get; init; }

    public required Species Species { get; init; }

    public bool Proven { get; init; } = true;

    /// <summary>Other items it may be confused with while it is unproven.</summary>
    public ImmutableList<string> ConfusedWith { get; init; } = [];

    public required Length SmallEndA { get; init; }

    public required Length SmallEndB { get; init; }

    public required Length LargeEnd { get; init; }

    /// <summary>Length scaled and paid, without trim.</summary>
    public required Length ScaleLength { get; init; }

    /// <summary>Length on the ground, with trim.</summary>
    public required Length ActualLength { get; init; }

    /// <summary>What was seen on it beyond its ends.</summary>
    public LogSeen Seen { get; init; } = new("");

    /// <summary>Cross-sections measured by radii, from the small end; none where only its ends were measured.</summary>
    public ImmutableList<RadiiPlace> Radii { get; init; } = [];

    /// <summary>The entry that measured them.</summary>
    public long? RadiiEntry { get; init; }

    public required MetalScan MetalScan { get; init; }

    public int MetalHits { get; init; }

    public bool EndCoated { get; init; }

    public string? Defect { get; init; }

    public string? PlannedFor { get; init; }

    public required string Owner { get; init; }

    public decimal? PaidMoney { get; init; }

    public DateOnly? FelledOn { get; init; }

    public decimal StrikeMoney { get; init; }

    public int Strikes { get; init; }

    public DateTime? SawnAt { get; init; }

    public ImmutableList<SawnInto> Into { get; init; } = [];

    public double? MillHours { get; init; }

    /// <summary>Who sawed it.</summary>
    public string? SawnBy { get; init; }

    /// <summary>Boards as they were counted by size; none where only footage was written.</summary>
    public ImmutableList<SawnBoards> SawnBoards { get; init; } = [];

    /// <summary>The plan as it stood when it was sawn.</summary>
    public SawnPlan? SawnPlan { get; init; }

    /// <summary>Numbers of the entries that tell of it.</summary>
    public ImmutableList<long> History { get; init; } = [];

    /// <summary>Mean of the two small-end diameters inside bark.</summary>
    public Length ScalingDiameter => (SmallEndA + SmallEndB) * 0.5;

    public bool IsSawn => SawnAt is not null;

    public double SawnBf => Into.Sum(into => into.Bf);
}

/// <summary>Logs of a wood and a sawyer, null for all, teach from here on.</summary>
public sealed record YieldBegun(long Entry, DateTime At, YieldReset Fact);
