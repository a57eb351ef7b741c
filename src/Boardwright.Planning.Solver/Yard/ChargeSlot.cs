using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver;

/// <summary>The variables of one place in a kiln's sequence of charges; the place may stay unused.</summary>
internal sealed class ChargeSlot
{
    public required int Kiln { get; init; }

    public required bool Standing { get; init; }

    public required BoolVar Used { get; init; }

    public required IntVar Load { get; init; }

    public required IntVar LoadDay { get; init; }

    /// <summary>One literal for each warm-up time.</summary>
    public required BoolVar[] Warm { get; init; }

    /// <summary>Drying steps, as often as not; 0 when unused.</summary>
    public required IntVar Half { get; init; }

    /// <summary>Drying steps, nine times in ten.</summary>
    public required IntVar Most { get; init; }

    public required IntVar Unload { get; init; }

    public required IntVar UnloadDay { get; init; }

    public required IntVar UnloadMost { get; init; }

    public required IntVar UnloadMostDay { get; init; }

    /// <summary>A standing charge that is taken out within the plan; for other slots the same as used.</summary>
    public required BoolVar Emptied { get; init; }

    public required LinearExpr LoadEnd { get; init; }

    public required LinearExpr WarmEnd { get; init; }

    public required LinearExpr Dry { get; init; }

    public required LinearExpr DryMost { get; init; }

    public required LinearExpr UnloadEnd { get; init; }

    /// <summary>Steps from loading to empty; free when unused, and pushed to 0 by the cost.</summary>
    public required IntVar Stand { get; init; }

    /// <summary>By stack: the literal that puts it here, null where it cannot be.</summary>
    public required BoolVar?[] Has { get; init; }
}
