using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>Why a charge stands still.</summary>
public enum StallCause
{
    /// <summary>The air is wetter than it was set, and the wood has reached it.</summary>
    AirWetterThanSet,

    /// <summary>The air is as set, and the wood has reached it: the step is at its end.</summary>
    ReachedSetAir,

    /// <summary>The wood is wetter than the air would leave it: it still dries, slowly, or the reading is wrong.</summary>
    WoodSlowOrReadingWrong,

    /// <summary>Wet bulb and dry bulb are the same: a dry wick or a broken bulb, no reading of the air.</summary>
    WickDry,

    /// <summary>Nobody has read the air beside the load.</summary>
    AirNotRead,
}

/// <summary>A charge that hangs, told as a diagnosis: wood dries until it reaches the equilibrium of the air it is in, and no further.</summary>
/// <remarks>It stands when the readings of two days or more differ by no more than 0.3 %; wood within 0.7 % of an equilibrium has reached it; air more than 0.7 % off is not as set (common practice).</remarks>
/// <param name="Cause">Why.</param>
/// <param name="Wood">Moisture content the readings stand at.</param>
/// <param name="EmcSet">Equilibrium of the air the controller is set to.</param>
/// <param name="EmcFound">Equilibrium of the air found beside the load; null where it was not read.</param>
/// <method page="docs/methods/kiln-stall.md"/>
public sealed record KilnStall(StallCause Cause, MoistureContent Wood, MoistureContent EmcSet, MoistureContent? EmcFound)
{
    private const double StandsPercent = 0.3;
    private const double ReachedPercent = 0.7;

    /// <summary>Days the readings must span.</summary>
    public static Elapsed DaysLeast { get; } = Elapsed.FromDays(1.9);

    /// <summary>True when readings over at least two days hardly differ.</summary>
    /// <param name="readings">When and how wet, in order of time.</param>
    public static bool Stands(IReadOnlyList<(Elapsed At, MoistureContent Moisture)> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        return readings.Count >= 2 && readings[^1].At.Seconds - readings[0].At.Seconds >= DaysLeast.Seconds
            && readings.Max(reading => reading.Moisture.Percent) - readings.Min(reading => reading.Moisture.Percent) <= StandsPercent;
    }

    /// <summary>The diagnosis.</summary>
    /// <param name="wood">Moisture content the readings stand at, corrected.</param>
    /// <param name="emcSet">Equilibrium of the set air.</param>
    /// <param name="emcFound">Equilibrium of the air read beside the load; null where it was not read.</param>
    /// <param name="wickDry">The wet bulb read as high as the dry one.</param>
    public static KilnStall Diagnose(MoistureContent wood, MoistureContent emcSet, MoistureContent? emcFound, bool wickDry = false)
    {
        var cause = wickDry ? StallCause.WickDry
            : emcFound is not { } found ? wood.Percent <= emcSet.Percent + ReachedPercent ? StallCause.ReachedSetAir : StallCause.AirNotRead
            : wood.Percent > found.Percent + ReachedPercent ? StallCause.WoodSlowOrReadingWrong
            : found.Percent > emcSet.Percent + ReachedPercent ? StallCause.AirWetterThanSet
            : StallCause.ReachedSetAir;
        return new(cause, wood, emcSet, emcFound);
    }
}
