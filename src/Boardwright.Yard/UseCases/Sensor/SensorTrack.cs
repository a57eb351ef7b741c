using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>What is known of one sensor since the program started: its last value, since when it stands still, and its last nonsense.</summary>
/// <remarks>It never changes; each word heard gives the next one. Limits are common practice, no source.</remarks>
public sealed record SensorTrack(DateTime WatchedFrom)
{
    /// <summary>The same value to the last digit for this long, told at least <see cref="StillCount"/> times, is not air: a live sensor trembles.</summary>
    public static readonly TimeSpan StillAfter = TimeSpan.FromHours(2.0);

    /// <summary>Words that must agree before a sensor counts as standing still.</summary>
    public const int StillCount = 12;

    /// <summary>Last value that could be, in °C, Pa or L.</summary>
    public double? Value { get; init; }

    /// <summary>When that was heard.</summary>
    public DateTime? HeardAt { get; init; }

    /// <summary>Since when the value is the same.</summary>
    public DateTime? SameSince { get; init; }

    /// <summary>How often the same value was told.</summary>
    public int SameCount { get; init; }

    /// <summary>The last word that could not be, if it came after the last value.</summary>
    public string? Nonsense { get; init; }

    /// <summary>The track after a word.</summary>
    public SensorTrack Heard(Outcome<double> value, DateTime at) => value switch
    {
        Outcome<double>.Done(var told) => this with
        {
            Value = told,
            HeardAt = at,
            SameSince = told.Equals(Value) ? SameSince : at,
            SameCount = told.Equals(Value) ? SameCount + 1 : 1,
            Nonsense = null,
        },
        Outcome<double>.Refused(var why) => this with { Nonsense = $"{why[0].Given} is not {why[0].Accepted}" },
        _ => this,
    };

    /// <summary>How far the sensor may be believed at a time, and why not.</summary>
    public (SensorStanding Standing, string? Why) At(SensorPlaced sensor, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(sensor);
        if (now - (HeardAt ?? WatchedFrom) > TimeSpan.FromMinutes(sensor.SilentAfterMinutes))
        {
            return Nonsense is { } word ? (SensorStanding.Wild, word)
                : (SensorStanding.Silent, HeardAt is { } last ? $"nothing since {last:d MMM HH:mm}" : $"nothing since {WatchedFrom:d MMM HH:mm}, when the program began to listen");
        }

        // Condensate stands still by right when no water comes.
        if (sensor.Quantity != SensorQuantity.Condensate && SameCount >= StillCount && now - SameSince >= StillAfter)
            return (SensorStanding.Still, $"the same to the last digit since {SameSince:d MMM HH:mm}");
        return (SensorStanding.Alive, null);
    }
}
