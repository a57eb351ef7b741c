using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>What keeps one piece of wood under the resin.</summary>
/// <param name="BuoyancyNewtons">Upward force less weight; negative when the piece does not float.</param>
/// <param name="Need">Least weight on top; zero when the piece does not float.</param>
/// <param name="Ballast">The same with half as much again, the weight to lay out: common practice.</param>
/// <param name="Water">Least weight as water in a container.</param>
/// <param name="FloatsAbove">Depth of resin from which the piece lifts; null when it sinks.</param>
public sealed record HoldDown(double BuoyancyNewtons, Mass Need, Mass Ballast, Volume Water, Length? FloatsAbove)
{
    private const double GravityMetresPerSecondSquared = 9.80665;
    private const double BallastFactor = 1.5;
    private const double WaterKilogramsPerCubicMetre = 998.2;

    /// <summary>Archimedes: (liquid density × immersed volume − wood density × volume) g.</summary>
    /// <remarks>
    /// Assumes resin gets under the piece; a sealed-down face may not lift, but that is not to be relied on. The lifting depth
    /// takes the piece as straight-sided.
    /// </remarks>
    /// <method page="docs/methods/hold-down.md"/>
    /// <param name="piece">Wood with its density at its moisture content.</param>
    /// <param name="liquid">Density of the mixed resin.</param>
    /// <param name="depth">Depth of the pour.</param>
    public static HoldDown Of(WoodPiece piece, Density liquid, Length depth)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var lift = liquid.KilogramsPerCubicMetre * piece.Immersed(depth).CubicMetres - piece.Mass.Kilograms;
        var need = Math.Max(0.0, lift);
        var share = piece.Density.KilogramsPerCubicMetre / liquid.KilogramsPerCubicMetre;
        return new(
            lift * GravityMetresPerSecondSquared, Mass.FromKilograms(need), Mass.FromKilograms(need * BallastFactor),
            Volume.FromCubicMetres(need / WaterKilogramsPerCubicMetre),
            share < 1.0 ? piece.Thickness * share : null);
    }

    /// <summary>Mass of ballast that hangs in the resin itself and so loses part of its weight.</summary>
    /// <param name="need">Least weight in air.</param>
    /// <param name="ballast">Density of the ballast, such as steel.</param>
    /// <param name="liquid">Density of the mixed resin; less than the ballast's.</param>
    /// <exception cref="ArgumentOutOfRangeException">Ballast not denser than the liquid.</exception>
    public static Mass Immersed(Mass need, Density ballast, Density liquid) => ballast > liquid
        ? Mass.FromKilograms(need.Kilograms / (1.0 - liquid.KilogramsPerCubicMetre / ballast.KilogramsPerCubicMetre))
        : throw new ArgumentOutOfRangeException(nameof(ballast), ballast.KilogramsPerCubicMetre, "Accepted: ballast denser than the liquid.");
}
