using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>What a liquid does to wood held under it.</summary>
/// <param name="BuoyancyNewtons">Upward force on the wood wholly under the liquid, less its weight; negative for wood that sinks.</param>
/// <param name="HoldDown">Mass of weights that just keeps it under; nothing for wood that sinks.</param>
/// <param name="SubmergedFraction">Share of the volume under the surface when it floats freely; 1 for wood that sinks.</param>
/// <remarks>Equation: force = (liquid density - wood density) g V, g = 9.80665 m/s². Nothing is added for safety, for glue or for trapped air.</remarks>
/// <method page="docs/methods/density.md"/>
public sealed record Flotation(double BuoyancyNewtons, Mass HoldDown, double SubmergedFraction)
{
    /// <summary>Standard acceleration of free fall, m/s².</summary>
    public const double FreeFall = 9.80665;

    /// <summary>Of a volume of wood in a liquid.</summary>
    /// <returns>The forces, or a refusal of "liquid-density" below 1 kg/m³, which is no liquid.</returns>
    public static Outcome<Flotation> Of(Density wood, Density liquid, Volume volume)
    {
        if (liquid.KilogramsPerCubicMetre < 1.0)
            return new Refusal("liquid-density", string.Create(CultureInfo.InvariantCulture, $"{liquid.KilogramsPerCubicMetre:0.###} kg/m3"), "the density of a liquid, 1 to 30000 kg/m3");

        var excessKilograms = (liquid.KilogramsPerCubicMetre - wood.KilogramsPerCubicMetre) * volume.CubicMetres;
        return new Flotation(
            excessKilograms * FreeFall,
            Mass.FromKilograms(Math.Max(excessKilograms, 0.0)),
            Math.Min(wood.KilogramsPerCubicMetre / liquid.KilogramsPerCubicMetre, 1.0));
    }
}
