namespace Boardwright.Casting;

/// <summary>Where a casting is soft.</summary>
public enum SoftPlace
{
    /// <summary>Only where it is thin.</summary>
    ThinEdge,

    /// <summary>All over.</summary>
    Everywhere,

    /// <summary>In spots or streaks between hard resin.</summary>
    Patches,
}
