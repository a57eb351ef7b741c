using Boardwright.Numerics;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>The air of a shut kiln that cools: it keeps its vapour, so it grows moister.</summary>
/// <remarks>
/// Equation: h(T) = h0 ps(T0)/ps(T), ps saturation pressure. Wood is taken to give and take nothing: wet wood makes it moister sooner, dry wood later. Vents shut, no leak.
/// </remarks>
/// <param name="DryBulb">Dry bulb at the start.</param>
/// <param name="Humidity">Humidity at the start.</param>
/// <source id="ashrae-fundamentals-2017" locator="ch. 1, eqs 5 and 6"/>
/// <method page="docs/methods/kiln-cooling.md"/>
public sealed record ClosedAir(Temperature DryBulb, RelativeHumidity Humidity)
{
    private const double ColdestCelsius = -30.0;

    /// <summary>Temperature at which it has this humidity; null when it is as humid already.</summary>
    public Temperature? CooledTo(RelativeHumidity humidity) =>
        Humidity >= humidity ? null : Found(celsius => HumidityAt(celsius) - humidity.Fraction);

    /// <summary>Temperature at which it begins to wet wood of a moisture content; null when it does so already, or wood this wet never gains in it.</summary>
    public Temperature? Wets(MoistureContent wood) => Emc.At(DryBulb, Humidity) >= wood ? null
        : Found(celsius => Emc.Percent(celsius, Math.Min(HumidityAt(celsius), 1.0)) - wood.Percent);

    private double HumidityAt(double celsius) => Humidity.Fraction * SaturationPressure.Pascals(DryBulb.Celsius) / SaturationPressure.Pascals(celsius);

    private Temperature? Found(Func<double, double> difference) =>
        Root.Between(difference, ColdestCelsius, DryBulb.Celsius, 1e-6) is { } celsius ? Temperature.FromCelsius(celsius) : null;
}
