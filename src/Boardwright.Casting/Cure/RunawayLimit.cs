using Boardwright.Numerics;

namespace Boardwright.Casting.Cure;

/// <summary>Thickness at which a self-heating body can no longer lose its heat: a first screen before the simulation.</summary>
/// <remarks>
/// <para>Frank-Kamenetskii: delta = E rho H r a² / (k R T²), r = rate (1/s) at the surroundings' temperature T, a = half thickness
/// or radius. Critical delta 0.8785 slab, 2 cylinder, 3.322 sphere. Reactant use is ignored, so with the rate at the start an
/// autocatalytic resin looks far safer than it is; the maximum isothermal rate gives a limit about 20 % below the steepest point
/// of the simulated peak.</para>
/// <para>Semenov, for a well-stirred body: psi = E rho H r V/(h A R T²), critical 1/e.</para>
/// </remarks>
/// <source id="frank-kamenetskii-1969" locator="critical parameters of slab, cylinder and sphere"/>
/// <method page="docs/methods/resin-cure.md"/>
public static class RunawayLimit
{
    /// <summary>Largest delta of a slab with a steady solution: maximum of 2 e^−t arccosh²(e^(t/2)).</summary>
    public const double SlabCritical = 0.8784576797812903;

    /// <summary>Largest delta of a long cylinder.</summary>
    public const double CylinderCritical = 2.0;

    /// <summary>Largest delta of a sphere.</summary>
    public const double SphereCritical = 3.3219921;

    /// <summary>Largest psi of a well-stirred body, 1/e.</summary>
    public const double StirredCritical = 0.36787944117144233;

    /// <summary>Thickness above which a slab with both faces held at a temperature runs away.</summary>
    /// <param name="resin">Resin.</param>
    /// <param name="activationJoulesPerMole">E.</param>
    /// <param name="ratePerSecond">r at that temperature; the largest isothermal rate for an autocatalytic resin.</param>
    /// <param name="celsius">Of both faces.</param>
    /// <returns>Full thickness, m.</returns>
    public static double SlabThicknessMetres(CuringResin resin, double activationJoulesPerMole, double ratePerSecond, double celsius)
    {
        ArgumentNullException.ThrowIfNull(resin);
        var kelvins = celsius + 273.15;
        var half = SlabCritical * resin.ConductivityWattsPerMetreKelvin * CureKinetics.GasConstant * kelvins * kelvins
            / (activationJoulesPerMole * resin.DensityKilogramsPerCubicMetre * resin.HeatJoulesPerKilogram * ratePerSecond);
        return 2.0 * Math.Sqrt(half);
    }

    /// <summary>Largest rate of conversion at one temperature.</summary>
    public static double MaximumIsothermalRatePerSecond(CureKinetics kinetics, double celsius)
    {
        ArgumentNullException.ThrowIfNull(kinetics);
        return Enumerable.Range(0, 10_001).Max(step => kinetics.RatePerSecond(step / 10_000.0, celsius + 273.15));
    }

    /// <summary>Centre rise theta of a slab below the critical delta: lower root of delta = 2 e^−t arccosh²(e^(t/2)); null above it.</summary>
    public static double? SlabCentreRise(double delta) => Root.Between(
        theta => 2.0 * Math.Exp(-theta) * Math.Pow(Math.Acosh(Math.Exp(theta / 2.0)), 2.0) - delta, 0.0, 1.1868421692);

    /// <summary>Centre rise theta of a long cylinder below the critical delta: ln(8B/delta), B² + (2 − 8/delta) B + 1 = 0; null above it.</summary>
    public static double? CylinderCentreRise(double delta)
    {
        var half = 4.0 / delta - 1.0;
        return delta is > 0.0 and <= CylinderCritical ? Math.Log(8.0 * (half - Math.Sqrt(half * half - 1.0)) / delta) : null;
    }
}
