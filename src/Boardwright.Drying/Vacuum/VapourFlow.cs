namespace Boardwright.Drying.Vacuum;

/// <summary>Steam that wood lets out along the grain to both ends.</summary>
/// <remarks>
/// <para>Steady Darcy flow of an ideal gas with even generation along the board:
/// g = (P0² − Pe²) K Mw/(mu R T Lh²), Lh = half the length. Own derivation. Four times for half the length; thickness plays no part, as
/// cyclic vacuum runs found.</para>
/// <para>Accuracy: permeability is known to an order of magnitude at best.</para>
/// </remarks>
/// <source id="chen-1997" locator="rate follows length, not thickness"/>
/// <method page="docs/methods/vacuum-drying.md"/>
public static class VapourFlow
{
    private const double WaterKilogramsPerMole = 0.018015268;
    private const double GasConstant = 8.314462618;

    /// <summary>Viscosity of steam near 60 °C, Pa s.</summary>
    public const double SteamPascalSeconds = 1.1e-5;

    /// <summary>Water that can leave, kg/(m³ h); zero when the pressure inside is no higher.</summary>
    /// <param name="permeabilitySquareMetres">Along the grain.</param>
    /// <param name="halfLengthMetres">Half the length of a board.</param>
    /// <param name="kelvins">Of the wood.</param>
    /// <param name="insidePascals">Vapour pressure inside.</param>
    /// <param name="chamberPascals">Absolute pressure outside.</param>
    public static double KilogramsPerCubicMetreHour(double permeabilitySquareMetres, double halfLengthMetres, double kelvins, double insidePascals, double chamberPascals) =>
        Math.Max(0.0, insidePascals * insidePascals - chamberPascals * chamberPascals) * permeabilitySquareMetres * WaterKilogramsPerMole * 3600.0
        / (SteamPascalSeconds * GasConstant * kelvins * halfLengthMetres * halfLengthMetres);
}
