using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>How a fire is run.</summary>
/// <param name="Stack">Flue gas at the boiler's outlet.</param>
/// <param name="Air">Air to the fire.</param>
/// <param name="ExcessAir">Air beyond what burning needs, as a share: 0.6 is 60 %.</param>
public sealed record FireSetting(Temperature Stack, Temperature Air, double ExcessAir)
{
    /// <summary>400 °F stack, 60 °F air, 60 % excess air.</summary>
    public static FireSetting Usual { get; } = new(Temperature.FromFahrenheit(400.0), Temperature.FromFahrenheit(60.0), 0.6);
}
