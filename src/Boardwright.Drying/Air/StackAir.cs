namespace Boardwright.Drying;

/// <summary>Air between the layers of a stack in a step.</summary>
/// <param name="DiffusionFactor">Coefficient of diffusion over the one at 20 C.</param>
/// <param name="SurfaceMetresPerSecond">Surface coefficient at the temperature of the air, for wood of basic specific gravity 0.55, m/s.</param>
/// <param name="EquilibriumFraction">Equilibrium moisture content, fraction.</param>
internal readonly record struct StackAir(double DiffusionFactor, double SurfaceMetresPerSecond, double EquilibriumFraction);
