using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Listens for the sensors of the book: keeps the last word of each, judges them, and writes a reading of each running charge at intervals.</summary>
/// <remarks>
/// Safe for many threads. Between two readings nothing is written, so that the book stays one a person can read; a sensor that is not believed
/// is left out of the reading and never filled in. What is heard lives as long as the program.
/// </remarks>
public sealed class SensorDesk(YardBook book, TimeProvider clock)
{
    /// <summary>Who the entries say they are by.</summary>
    public const string By = "sensors";

    /// <summary>Hours between two readings that are written. Common practice: a round of the kilns.</summary>
    public static readonly TimeSpan RoundAfter = TimeSpan.FromHours(4.0);

    private const int StrangersMost = 20;

    private readonly Lock gate = new();
    private readonly Dictionary<string, (SensorPlaced Placed, SensorTrack Track)> tracks = new(StringComparer.Ordinal);
    private readonly Dictionary<string, StrangerRow> strangers = new(StringComparer.Ordinal);
    private string? listening;
    private DateTime? lostSince;

    /// <summary>Topics of the sensors in the book.</summary>
    public IReadOnlyList<string> Topics => [.. book.State.Sensors.Keys];

    /// <summary>Says where words come from, and whether that place can be reached.</summary>
    public void Listening(string where, bool reached)
    {
        lock (gate)
            (listening, lostSince) = (where, reached ? null : lostSince ?? Now());
    }

    /// <summary>Takes a word from a topic.</summary>
    public void Heard(string topic, string payload)
    {
        var sensor = book.State.Sensors.GetValueOrDefault(topic);
        lock (gate)
        {
            if (sensor is not null)
            {
                strangers.Remove(topic);
                tracks[topic] = (sensor.Placed, Track(sensor).Heard(SensorText.Value(sensor.Placed, payload), Now()));
                return;
            }

            strangers[topic] = new(topic, payload.Length > 40 ? payload[..40] + "…" : payload, Now());
            if (strangers.Count > StrangersMost)
                strangers.Remove(strangers.Values.MinBy(stranger => stranger.HeardAt)!.Topic);
        }
    }

    /// <summary>Judges every sensor and writes what changed, and the readings that are due.</summary>
    /// <returns>What was written; empty mostly.</returns>
    public IReadOnlyList<Entry> Round()
    {
        var state = book.State;
        List<NewEntry> wanted = [];
        lock (gate)
        {
            // Without a word from the broker nothing is known of a sensor.
            if (listening is null || lostSince is not null)
                return [];
            foreach (var sensor in state.Sensors.Values)
            {
                var (standing, why) = Track(sensor).At(sensor.Placed, Now());
                if (standing != sensor.Standing)
                    wanted.Add(new(By, new SensorJudged(sensor.Topic, standing, why)));
            }

            foreach (var charge in state.Charges.Values.Where(charge => charge.IsRunning && IsDue(charge)))
            {
                if (Reading(charge, state) is { } reading)
                    wanted.Add(new(By, reading));
            }
        }

        // What does not fit (a wet bulb above the dry one) keeps only itself out.
        return [.. wanted.SelectMany(one => book.Write([one]) is Outcome<IReadOnlyList<Entry>>.Done(var written) ? written : [])];
    }

    /// <summary>The page.</summary>
    public SensorList List()
    {
        var state = book.State;
        lock (gate)
        {
            return new(
                listening, lostSince,
                [.. state.Sensors.Values.OrderBy(sensor => sensor.Placed.Kiln, StringComparer.Ordinal).ThenBy(sensor => sensor.Placed.Quantity).Select(sensor =>
                {
                    var track = Track(sensor);
                    var (standing, why) = listening is null ? (sensor.Standing, sensor.Why) : track.At(sensor.Placed, Now());
                    return new SensorRow(sensor, track.Value is { } value ? SensorList.Shown(sensor.Placed, value) : "–", track.HeardAt, standing, why);
                })],
                [.. strangers.Values.OrderByDescending(stranger => stranger.HeardAt)]);
        }
    }

    private DateTime Now() => clock.GetLocalNow().DateTime;

    // A sensor placed anew, in another kiln or unit, is another sensor.
    private SensorTrack Track(Sensor sensor)
    {
        if (!tracks.TryGetValue(sensor.Topic, out var known) || known.Placed != sensor.Placed)
            tracks[sensor.Topic] = known = (sensor.Placed, new(Now()));
        return known.Track;
    }

    private bool IsDue(Charge charge) => book.Now - (charge.Gauges.LastOrDefault()?.At ?? charge.LoadedAt) >= RoundAfter;

    private GaugeRead? Reading(Charge charge, YardState state)
    {
        var alive = state.Sensors.Values.Where(sensor => sensor.Placed.Kiln == charge.Kiln)
            .Select(sensor => (sensor.Placed.Quantity, Track: Track(sensor), sensor.Placed))
            .Where(one => one.Track.Value is not null && one.Track.At(one.Placed, Now()).Standing == SensorStanding.Alive)
            .ToLookup(one => one.Quantity, one => one.Track.Value!.Value);
        double? Mean(SensorQuantity quantity) => alive[quantity].Any() ? alive[quantity].Average() : null;
        var (dry, wet) = (Mean(SensorQuantity.DryBulb), Mean(SensorQuantity.WetBulb));
        var both = dry is not null && wet is not null;   // one bulb alone says nothing of the air
        double? core = alive[SensorQuantity.Core].Any() ? alive[SensorQuantity.Core].Min() : null;   // the coldest core is the one that counts
        var (pressure, litres) = (Mean(SensorQuantity.Pressure), Mean(SensorQuantity.Condensate));
        return both || core is not null || pressure is not null || litres is not null
            ? new(charge.Tag, both ? dry : null, both ? wet : null, pressure, core, litres)
            : null;
    }
}
