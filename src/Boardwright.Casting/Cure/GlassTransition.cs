namespace Boardwright.Casting.Cure;

/// <summary>Temperature below which the resin is glass, by DiBenedetto's equation, and the conversion at which cure stalls for it.</summary>
/// <remarks>
/// Tg = Tg0 + (Tg∞ − Tg0) l a / (1 − (1 − l) a). Cure at a steady temperature slows by orders of magnitude once Tg reaches it;
/// it stalls when Tg is some 10 to 20 K above.
/// </remarks>
/// <param name="UncuredCelsius">Tg0, of the mix before cure.</param>
/// <param name="CuredCelsius">Tg∞, of the fully cured resin.</param>
/// <param name="HeatCapacityRatio">l, 0.3 to 0.6.</param>
/// <source id="dibenedetto-1987" locator="glass transition against conversion"/>
/// <method page="docs/methods/resin-cure.md"/>
public sealed record GlassTransition(double UncuredCelsius, double CuredCelsius, double HeatCapacityRatio)
{
    /// <summary>Glass transition in °C at a conversion, 0 to 1.</summary>
    public double CelsiusAt(double conversion) =>
        UncuredCelsius + (CuredCelsius - UncuredCelsius) * HeatCapacityRatio * conversion / (1.0 - (1.0 - HeatCapacityRatio) * conversion);

    /// <summary>Conversion at which the glass transition reaches a temperature; 0 below Tg0, 1 above Tg∞.</summary>
    public double ConversionAt(double celsius)
    {
        var share = (celsius - UncuredCelsius) / (CuredCelsius - UncuredCelsius);
        return Math.Clamp(share / (HeatCapacityRatio + share * (1.0 - HeatCapacityRatio)), 0.0, 1.0);
    }
}
