using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Schedules;

/// <summary>One step of a schedule: the air to hold while the controlling moisture content is above the end of the step.</summary>
public sealed record KilnStep
{
    private const double FloorFahrenheit = 90.0;

    /// <summary>The step holds while the controlling moisture content is above this; when it is reached the next step begins. Zero for the last step.</summary>
    public required MoistureContent Above { get; init; }

    /// <summary>A step that goes by the clock: it lasts this long and ends at no moisture content; null for one that ends by moisture, and for the last.</summary>
    public Elapsed? Lasts { get; init; }

    /// <summary>True for a step of the house's own: its wet bulb is held as written, under 90 F too.</summary>
    public bool AsWritten { get; init; }

    /// <summary>Dry-bulb temperature in degrees Fahrenheit, as printed.</summary>
    public required double DryBulbFahrenheit { get; init; }

    /// <summary>Wet-bulb depression in Fahrenheit degrees, as printed.</summary>
    public required double DepressionFahrenheit { get; init; }

    /// <summary>Wet-bulb temperature in degrees Fahrenheit.</summary>
    public double WetBulbFahrenheit => DryBulbFahrenheit - DepressionFahrenheit;

    /// <summary>Wet bulb raised to 90 F, which a vented kiln can hold in humid weather; as written where the house wrote it.</summary>
    /// <source id="fpl-gtr-57" locator="modified schedules"/>
    public double WetBulbFloored90Fahrenheit => AsWritten ? WetBulbFahrenheit : Math.Max(WetBulbFahrenheit, Math.Min(FloorFahrenheit, DryBulbFahrenheit));

    /// <summary>Dry-bulb temperature.</summary>
    public Temperature DryBulb => Temperature.FromFahrenheit(DryBulbFahrenheit);

    /// <summary>The air of the printed wet bulb, at the pressure of sea level.</summary>
    public AirState Air => AirAt(WetBulbFahrenheit);

    /// <summary>The air with the wet bulb raised to 90 F.</summary>
    public AirState AirFloored90 => AirAt(WetBulbFloored90Fahrenheit);

    /// <summary>The step in a kiln that cannot go above a dry bulb: it runs at its limit and keeps the equilibrium moisture content.</summary>
    public KilnStep LimitedTo(Temperature dryBulbMax)
    {
        if (DryBulb <= dryBulbMax)
            return this;

        // The humidity that keeps the moisture content exists: the air of the step is itself between dry and saturated.
        var humidity = Emc.HumidityFor(dryBulbMax, Air.Emc!.Value)!.Value;
        var cooler = Known(AirState.FromHumidity(dryBulbMax, humidity, AirState.StandardPressure));
        return this with
        {
            DryBulbFahrenheit = dryBulbMax.Fahrenheit,
            DepressionFahrenheit = dryBulbMax.Fahrenheit - cooler.WetBulb!.Value.Fahrenheit,
        };
    }

    private AirState AirAt(double wetBulbFahrenheit) =>
        Known(AirState.FromWetBulb(DryBulb, Temperature.FromFahrenheit(wetBulbFahrenheit), AirState.StandardPressure));

    // Every air of the tables exists; a refusal here would be a fault of the tables.
    private static AirState Known(Outcome<AirState> air) =>
        air is Outcome<AirState>.Done(var value) ? value : throw new InvalidOperationException($"A schedule names air that cannot exist: {air}");
}
