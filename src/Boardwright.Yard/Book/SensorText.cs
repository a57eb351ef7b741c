using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book;

/// <summary>What a sensor says, as text: a bare number in the unit it was placed with, or a number with its own unit.</summary>
public static class SensorText
{
    private const double LitresMax = 1e5;

    /// <summary>Units a quantity may be told in, as they are written.</summary>
    public static string Units(SensorQuantity quantity) => quantity switch
    {
        SensorQuantity.Pressure => "Pa, hPa, mbar, kPa, mmHg or inHg",
        SensorQuantity.Condensate => "L",
        _ => "C, F or K",
    };

    /// <summary>Why a unit cannot be that of a quantity; null where it can.</summary>
    public static Refusal? UnitFault(SensorQuantity quantity, string unit) =>
        Quantity(quantity, "unit", "1" + unit) is Outcome<double>.Done ? null : new Refusal("unit", unit, Units(quantity));

    /// <summary>The value in the unit the book keeps: °C, Pa or L. Refused when it is no number, or nothing that can be in a kiln.</summary>
    public static Outcome<double> Value(SensorPlaced sensor, string payload)
    {
        ArgumentNullException.ThrowIfNull(sensor);
        ArgumentNullException.ThrowIfNull(payload);
        var text = payload.Trim();
        var bare = double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number);
        if (bare && !double.IsFinite(number))
            return new Refusal(sensor.Topic, text, Accepted(sensor));
        return Quantity(sensor.Quantity, sensor.Topic, bare ? number.ToString("R", CultureInfo.InvariantCulture) + sensor.Unit : text) is Outcome<double>.Done(var value) && CanBe(sensor.Quantity, value)
            ? value
            : new Refusal(sensor.Topic, text.Length > 40 ? text[..40] + "…" : text, Accepted(sensor));
    }

    private static string Accepted(SensorPlaced sensor) => $"{sensor.Quantity switch
    {
        SensorQuantity.Pressure => "an absolute pressure up to 120 kPa",
        SensorQuantity.Condensate => "litres so far, 0 or more",
        _ => "a temperature from -40 to 130 °C",
    }}, bare numbers in {sensor.Unit}";

    private static bool CanBe(SensorQuantity quantity, double value) => quantity switch
    {
        SensorQuantity.Pressure => value is >= 0.0 and <= 120e3,
        SensorQuantity.Condensate => value is >= 0.0 and <= LitresMax,
        _ => value is >= -40.0 and <= 130.0,
    };

    private static Outcome<double> Quantity(SensorQuantity quantity, string what, string text) => quantity switch
    {
        SensorQuantity.Pressure => Read.Pressure(what, text).Then<double>(pressure => pressure.Pascals),
        SensorQuantity.Condensate => Read.Volume(what, text).Then<double>(volume => volume.Litres),
        _ => Read.Temperature(what, text).Then<double>(temperature => temperature.Celsius),
    };
}
