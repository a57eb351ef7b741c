using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>The rule of thumb on the can: times double for every 10 K colder and halve for every 10 K warmer.</summary>
/// <remarks>
/// Equal to an activation energy of 51.2 kJ/mol between 20 and 30 °C. Validity: near room temperature, 10 to 35 °C; it knows
/// nothing of depth or of the heat the resin makes itself. Below about 15 °C thin layers may not cure for days.
/// </remarks>
/// <source id="resin-supplier-pot-life-note" locator="pot life doubles per 18 F (10 C) colder"/>
/// <method page="docs/methods/resin-cure.md"/>
public static class LabelRule
{
    /// <summary>How many times longer everything takes at a temperature than at the label's.</summary>
    public static double TimeStretch(ResinLabel label, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(label);
        return Stretch(label, temperature.Celsius);
    }

    /// <summary>Hours at the label's temperature that a course of temperatures is worth.</summary>
    /// <remarks>Integral of the rate over time, at tenths of an hour.</remarks>
    public static Elapsed Worth(ResinLabel label, ShopTemperature shop, Elapsed until)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(shop);
        var steps = Math.Max(1, (int)Math.Ceiling(until.Hours * 10.0));
        var hour = until.Hours / steps;
        return Elapsed.FromHours(Enumerable.Range(0, steps).Sum(step => hour / Stretch(label, shop.CelsiusAt((step + 0.5) * hour))));
    }

    /// <summary>When a course of temperatures has been worth a time at the label's temperature; null when not within 60 days.</summary>
    public static Elapsed? Reaches(ResinLabel label, ShopTemperature shop, Elapsed worth)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(shop);
        const double StepHours = 0.1;
        var sum = 0.0;
        for (var hour = 0.0; hour < 1440.0; hour += StepHours)
        {
            var gain = StepHours / Stretch(label, shop.CelsiusAt(hour + StepHours / 2.0));
            if (sum + gain >= worth.Hours)
            {
                return Elapsed.FromHours(hour + (worth.Hours - sum) / gain * StepHours);
            }

            sum += gain;
        }

        return null;
    }

    private static double Stretch(ResinLabel label, double celsius) => Math.Pow(2.0, (label.At.Celsius - celsius) / label.Doubling.Kelvins);
}
