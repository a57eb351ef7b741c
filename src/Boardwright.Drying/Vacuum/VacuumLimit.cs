namespace Boardwright.Drying.Vacuum;

/// <summary>What sets the pace of a vacuum charge.</summary>
public enum VacuumLimit
{
    /// <summary>The generator: more power would dry it sooner.</summary>
    Power,

    /// <summary>The wood: steam cannot get out along the grain; shorter pieces or another kiln help, power does not.</summary>
    Permeability,
}
