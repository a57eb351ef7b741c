using System.Globalization;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A sensor as a page shows it.</summary>
/// <param name="Sensor">The sensor.</param>
/// <param name="Shown">Its last value with the unit it was placed with; a dash before the first.</param>
/// <param name="HeardAt">When that was heard, by the clock of this machine.</param>
/// <param name="Standing">How far it may be believed now.</param>
/// <param name="Why">Why not.</param>
public sealed record SensorRow(Sensor Sensor, string Shown, DateTime? HeardAt, SensorStanding Standing, string? Why);

/// <summary>A topic that is heard and belongs to no sensor of the book.</summary>
public sealed record StrangerRow(string Topic, string Payload, DateTime HeardAt);

/// <summary>What sensors say, for the page.</summary>
/// <param name="Listening">Where words come from; null when the program does not listen.</param>
/// <param name="LostSince">Since when that place cannot be reached; null while it can.</param>
/// <param name="Rows">By kiln and quantity.</param>
/// <param name="Strangers">The last topics heard that are nobody's.</param>
public sealed record SensorList(string? Listening, DateTime? LostSince, IReadOnlyList<SensorRow> Rows, IReadOnlyList<StrangerRow> Strangers)
{
    /// <summary>A quantity in words.</summary>
    public static string Words(SensorQuantity quantity) => quantity switch
    {
        SensorQuantity.DryBulb => "dry bulb",
        SensorQuantity.WetBulb => "wet bulb",
        SensorQuantity.Core => "core of the wood",
        SensorQuantity.Pressure => "pressure",
        _ => "condensate so far",
    };

    /// <summary>A value kept in °C, Pa or L, in the unit of its sensor where that is a common one.</summary>
    public static string Shown(SensorPlaced sensor, double value)
    {
        ArgumentNullException.ThrowIfNull(sensor);
        FormattableString text = sensor.Quantity switch
        {
            SensorQuantity.Pressure => $"{value / 100.0:0.#} mbar",
            SensorQuantity.Condensate => $"{value:0.0} L",
            _ when sensor.Unit.EndsWith('F') || sensor.Unit.EndsWith('f') => $"{value * 1.8 + 32.0:0.0} °F",
            _ => $"{value:0.0} °C",
        };
        return text.ToString(CultureInfo.InvariantCulture);
    }
}
