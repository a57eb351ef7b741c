namespace Boardwright.Drying.Board;

/// <summary>How the diffusion coefficient of moisture depends on the moisture content: D = D(saturation) exp(slope (M - saturation)), constant above saturation.</summary>
/// <remarks>Free water follows the bound water with the coefficient at fiber saturation; the same point bounds the drying force of a wet surface.</remarks>
/// <param name="SlopePerFraction">Logarithmic slope per unit of moisture content as a fraction; 0 for a constant coefficient.</param>
/// <param name="SaturationFraction">Moisture content above which wood dries like wet wood, as a fraction.</param>
/// <method page="docs/methods/board-drying.md"/>
public readonly record struct DiffusionLaw(double SlopePerFraction, double SaturationFraction)
{
    /// <summary>Fiber saturation point used for all woods, as a fraction.</summary>
    /// <source id="fpl-wood-handbook-2010" locator="p. 4-2"/>
    public const double FiberSaturationFraction = 0.30;

    /// <summary>A coefficient that does not depend on moisture, without an upper bound of the surface force: the linear equation.</summary>
    public static DiffusionLaw Constant => new(0.0, double.MaxValue);
}
