using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>How wet wood can be, and when it sinks in fresh water.</summary>
/// <remarks>
/// Equations, percent: maximum 100 (1.54 - Gb)/(1.54 Gb), with 1.54 the specific gravity of the cell wall; sinking 100 (1 - Gb)/Gb.
/// The handbook's text rounds the first to 267 % and 44 % at Gb 0.30 and 0.90; its equation gives 268 and 46, which is what stands here.
/// </remarks>
/// <source id="fpl-wood-handbook-2021" locator="eqs 4-3, 4-4"/>
/// <method page="docs/methods/density.md"/>
public static class MoistureLimits
{
    private const double CellWallSpecificGravity = 1.54;

    /// <summary>Moisture content with every cell full of water.</summary>
    public static MoistureContent Maximum(Species species) => MoistureContent.FromPercent(MaximumPercent(species.BasicSpecificGravity));

    /// <summary>Moisture content above which the wood sinks in fresh water.</summary>
    public static MoistureContent Sinking(Species species) => MoistureContent.FromPercent(SinkingPercent(species.BasicSpecificGravity));

    /// <summary>The wettest a piece of this species is taken to be: full of water, and a fifth lighter than the mean, twice the usual spread.</summary>
    public static MoistureContent Wettest(Species species) => MoistureContent.FromPercent(MaximumPercent(0.8 * species.BasicSpecificGravity));

    /// <summary>Kernel of <see cref="Maximum"/>, percent.</summary>
    public static double MaximumPercent(double basicSpecificGravity) =>
        100.0 * (CellWallSpecificGravity - basicSpecificGravity) / (CellWallSpecificGravity * basicSpecificGravity);

    /// <summary>Kernel of <see cref="Sinking"/>, percent.</summary>
    public static double SinkingPercent(double basicSpecificGravity) => 100.0 * (1.0 - basicSpecificGravity) / basicSpecificGravity;
}
