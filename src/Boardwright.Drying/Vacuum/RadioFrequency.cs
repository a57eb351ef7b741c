using Boardwright.Quantities;

namespace Boardwright.Drying.Vacuum;

/// <summary>Radio-frequency heat in wood, and what it takes from the mains.</summary>
/// <param name="Generator">Share of the mains power that reaches the platen; 0.5 to 0.65.</param>
/// <param name="Applicator">Share of that which reaches the wood; 0.85 to 0.95.</param>
/// <method page="docs/methods/vacuum-drying.md"/>
public sealed record RadioFrequency(Share Generator, Share Applicator)
{
    private const double VacuumPermittivity = 8.8541878128e-12;

    /// <summary>Logarithm of the loss factor for each percent of moisture below fibre saturation: 1.7 at 30 % and 0.1 at 5 %, in wood of 500 kg/m3 near 10 MHz.</summary>
    /// <source id="torgovnikov-1993" locator="loss factor against moisture content, from memory"/>
    internal const double LossPerPercent = 0.11;

    private const double SaturationPercent = 30.0;

    /// <summary>0.55 and 0.90: common practice, a setting.</summary>
    public static RadioFrequency Usual { get; } = new(Share.FromFraction(0.55), Share.FromFraction(0.90));

    /// <summary>Power in the wood, W/m³ = 2 pi f e0 e" E².</summary>
    /// <param name="hertz">Frequency.</param>
    /// <param name="lossFactor">e" of the wood; rises with moisture, density and temperature.</param>
    /// <param name="voltsPerMetre">Field in the wood.</param>
    public static double WattsPerCubicMetre(double hertz, double lossFactor, double voltsPerMetre) =>
        2.0 * Math.PI * hertz * VacuumPermittivity * lossFactor * voltsPerMetre * voltsPerMetre;

    /// <summary>Share of the power of the start that wood takes at the same voltage when it has dried: the loss factor falls with its moisture.</summary>
    /// <param name="start">Moisture content when the voltage was set.</param>
    /// <param name="now">Moisture content now.</param>
    /// <param name="lossPerPercent">Fall of the logarithm of the loss factor for each percent.</param>
    /// <source id="avramidis-liu-1994" locator="at constant voltage the rate falls as the wood dries, by its dielectric properties"/>
    internal static double ShareAtVoltage(MoistureContent start, MoistureContent now, double lossPerPercent) =>
        Math.Exp(-lossPerPercent * Math.Max(0.0, Math.Min(SaturationPercent, start.Percent) - Math.Min(SaturationPercent, now.Percent)));

    /// <summary>Mains energy for an energy in the wood, kWh.</summary>
    public double MainsKilowattHours(double inWoodKilowattHours) => inWoodKilowattHours / (Generator.Fraction * Applicator.Fraction);

    /// <summary>Power in the wood for a power at the platen, kW.</summary>
    public double InWoodKilowatts(Power platen) => platen.Kilowatts * Applicator.Fraction;
}
