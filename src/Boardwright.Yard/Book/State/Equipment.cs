using System.Collections.Immutable;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>A kiln and what is in it.</summary>
public sealed record Kiln(string Name, KilnInstalled Installed)
{
    /// <summary>The charge running in it.</summary>
    public string? Charge { get; init; }

    public ImmutableList<Outage> Outages { get; init; } = [];

    public ImmutableList<long> History { get; init; } = [];

    public Outage? Down => Outages.LastOrDefault(outage => outage.To is null);
}

/// <summary>A boiler.</summary>
public sealed record Boiler(string Name, BoilerInstalled Installed)
{
    public ImmutableList<Outage> Outages { get; init; } = [];

    public DateTime? StokedAt { get; init; }

    public ImmutableList<long> History { get; init; } = [];

    public Outage? Down => Outages.LastOrDefault(outage => outage.To is null);
}

/// <summary>A time equipment stood still; while it does, when it is expected back and when at the worst.</summary>
public sealed record Outage(long Entry, DateTime From, DateTime? To, string Why, DateOnly? BackExpectedOn, DateOnly? BackLateOn);

/// <summary>Fuel wood on hand at the last count.</summary>
public sealed record FuelStock(DateTime CountedAt, FuelCounted Count, long Entry);
