namespace Boardwright.Drying;

/// <summary>A step on the way from a kiln that stood still to one that dries again.</summary>
public enum RestartStep
{
    /// <summary>Nobody inside, doors shut and secured, power whole, heat and pressure looked at.</summary>
    Safe,

    /// <summary>Vents shut; spray, mist and compressor off.</summary>
    Closed,

    /// <summary>Fans turn, the right way; under vacuum the condenser is cold.</summary>
    Moving,

    /// <summary>Heat back to the dry bulb that was set; under vacuum the pressure that was held.</summary>
    Heated,

    /// <summary>Wet bulb believed again: wick wet, water in its trough.</summary>
    WickWet,

    /// <summary>Only now humidity: vents, spray or compressor on automatic; under vacuum radio frequency at low power.</summary>
    Humid,

    /// <summary>The setting of before holds again; the clock of the charge goes on.</summary>
    Resumed,
}

/// <summary>In which order a kiln is brought back after a stop.</summary>
/// <remarks>
/// Heat before spray: water on cold wood wets open checks and deepens them (wengert-drying-oak); the vents stay shut and the spray off until the dry bulb is back.
/// Under vacuum no wick is read. The order beyond heat before spray is common practice.
/// </remarks>
/// <source id="wengert-drying-oak" locator="never rewet partly dried stock"/>
/// <method page="docs/methods/kiln-restart.md"/>
public static class KilnRestart
{
    /// <summary>A kiln that dries with air.</summary>
    public static IReadOnlyList<RestartStep> OfAir { get; } =
        [RestartStep.Safe, RestartStep.Closed, RestartStep.Moving, RestartStep.Heated, RestartStep.WickWet, RestartStep.Humid, RestartStep.Resumed];

    /// <summary>A vacuum kiln.</summary>
    public static IReadOnlyList<RestartStep> OfVacuum { get; } = [RestartStep.Safe, RestartStep.Moving, RestartStep.Heated, RestartStep.Humid, RestartStep.Resumed];
}
