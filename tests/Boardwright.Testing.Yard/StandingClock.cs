namespace Boardwright.Testing;

/// <summary>A clock that stands still until it is set.</summary>
public sealed class StandingClock(DateTime local) : TimeProvider
{
    /// <summary>The yard's own time.</summary>
    public DateTime Local { get; set; } = local;

    /// <inheritdoc/>
    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => new(Local, TimeSpan.Zero);
}
