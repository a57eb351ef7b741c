namespace Boardwright.Casting.Cure;

/// <summary>What the cure model needs to know of a resin. Properties are taken as constant over cure and temperature.</summary>
/// <param name="Kinetics">Rate of conversion.</param>
/// <param name="HeatJoulesPerKilogram">Heat of the whole reaction, per kg of mix.</param>
/// <param name="DensityKilogramsPerCubicMetre">Of the mix.</param>
/// <param name="SpecificHeatJoulesPerKilogramKelvin">Of the mix; liquid and rubbery resin about 1900.</param>
/// <param name="ConductivityWattsPerMetreKelvin">Of the mix; unfilled resin 0.18 to 0.22.</param>
public sealed record CuringResin(
    CureKinetics Kinetics, double HeatJoulesPerKilogram, double DensityKilogramsPerCubicMetre,
    double SpecificHeatJoulesPerKilogramKelvin, double ConductivityWattsPerMetreKelvin)
{
    /// <summary>Conversion at which it gels; a diepoxide and a hardener of four hydrogens in ratio by default.</summary>
    public double GelConversion { get; init; } = GelPoint.Conversion(2.0, 4.0);

    /// <summary>Conversion at which it is hard enough to demould and bear a nail: common practice, a setting.</summary>
    public double DemouldConversion { get; init; } = 0.85;

    /// <summary>Hottest it may be when it leaves the mould, °C: common practice, a setting.</summary>
    public double DemouldCelsiusMax { get; init; } = 30.0;

    /// <summary>Hottest it may get, °C; above it castings crack, yellow and pull from the wood: common practice, a setting.</summary>
    public double PeakCelsiusMax { get; init; } = 60.0;

    /// <summary>What the constants were fitted to, in words; null when they are given outright.</summary>
    public string? FittedTo { get; init; }

    /// <summary>Rise in temperature if no heat could leave, H/cp.</summary>
    public double AdiabaticRiseKelvins => HeatJoulesPerKilogram / SpecificHeatJoulesPerKilogramKelvin;
}
