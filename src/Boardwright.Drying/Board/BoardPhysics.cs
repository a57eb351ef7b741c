using Boardwright.Wood;

namespace Boardwright.Drying.Board;

/// <summary>How temperature and air bear on the drying of a board; kernels in plain numbers.</summary>
/// <remarks>
/// <para>Coefficient of diffusion: proportional to exp(-5280/T), T in kelvins (simpson-1993), and to exp(8.5 M) below fiber saturation, the slope of the gross
/// transverse coefficient of bound water at 40 C (siau-1995). In frozen wood three tenths of that (common practice).</para>
/// <para>Surface coefficient: proportional to the vapour pressure of water at the temperature of the air and to the inverse of the density of the wood.</para>
/// </remarks>
/// <source id="simpson-1993"/>
/// <source id="siau-1995"/>
/// <method page="docs/methods/board-drying.md"/>
public static class BoardPhysics
{
    private const double ActivationKelvins = 5280.0;
    private const double SlopePerFraction = 8.5;
    private const double FrozenShare = 0.3;
    private const double ReferenceCelsius = 20.0;
    private const double ReferenceSpecificGravity = 0.55;

    private static readonly double ReferencePascals = SaturationPressure.Pascals(ReferenceCelsius);

    /// <summary>The law of the coefficient used for all woods.</summary>
    public static DiffusionLaw Law => new(SlopePerFraction, DiffusionLaw.FiberSaturationFraction);

    /// <summary>Coefficient of diffusion at a temperature over the one at 20 C.</summary>
    public static double DiffusionFactor(double celsius) =>
        (celsius < 0.0 ? FrozenShare : 1.0) * Math.Exp(-ActivationKelvins * (1.0 / (celsius + 273.15) - 1.0 / (ReferenceCelsius + 273.15)));

    /// <summary>Surface coefficient at a temperature, and for a basic specific gravity, over the one at 20 C and 0.55.</summary>
    public static double SurfaceFactor(double celsius, double basicSpecificGravity) =>
        SaturationPressure.Pascals(celsius) / ReferencePascals * (ReferenceSpecificGravity / basicSpecificGravity);
}
