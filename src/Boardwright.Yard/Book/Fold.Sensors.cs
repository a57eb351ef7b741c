using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book;

// Sensors in kilns.
internal sealed partial class Fold
{
    private Refusal? On(SensorPlaced fact) =>
        (fact.Topic.Trim().Length == 0 || fact.Topic.IndexOfAny(['+', '#']) >= 0 ? new Refusal("topic", fact.Topic, "the whole topic of one sensor, without + or #, such as kiln/K1/dry-bulb") : null)
        ?? (kilns.ContainsKey(fact.Kiln) ? null : Unknown("kiln", fact.Kiln, kilns))
        ?? SensorText.UnitFault(fact.Quantity, fact.Unit)
        ?? InRange("silent_after_minutes", fact.SilentAfterMinutes, 0.1, 1440.0, "0.1 to 1440 min")
        ?? Set(sensors, fact.Topic, new Sensor(fact, SensorStanding.Alive, null, null, entry.Number));

    private Refusal? On(SensorJudged fact) => sensors.TryGetValue(fact.Topic, out var sensor)
        ? Set(sensors, fact.Topic, sensor with { Standing = fact.Standing, Since = entry.HappenedAt, Why = fact.Why, Entry = entry.Number })
        : Unknown("topic", fact.Topic, sensors);
}
