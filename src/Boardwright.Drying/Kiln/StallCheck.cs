using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>How a cause of a standstill stands against what was read.</summary>
public enum StallStanding
{
    /// <summary>The readings point to it.</summary>
    Likely,

    /// <summary>Nothing read so far tells.</summary>
    Open,

    /// <summary>The readings speak against it.</summary>
    Unlikely,
}

/// <summary>What is known of a charge that does not go down.</summary>
/// <param name="Wood">Moisture it stands at.</param>
/// <param name="Target">Moisture wanted.</param>
/// <param name="EmcSet">Equilibrium of the set air; null where nothing is set.</param>
public sealed record StallEvidence(MoistureContent Wood, MoistureContent Target, MoistureContent? EmcSet)
{
    /// <summary>Equilibrium of the air read beside the load by hand; null where it was not read.</summary>
    public MoistureContent? EmcFound { get; init; }

    /// <summary>Dry bulb set, and found beside the load.</summary>
    public (Temperature Set, Temperature Found)? DryBulbs { get; init; }

    /// <summary>The wet bulb read as high as the dry one.</summary>
    public bool WickDry { get; init; }

    /// <summary>Read with a meter, in wood this hot; null where samples were weighed.</summary>
    public Temperature? MeterIn { get; init; }

    /// <summary>The meter has no correction for this species.</summary>
    public bool SpeciesUnknown { get; init; }
}

/// <summary>A cause that may hold a charge up, and the test that tells.</summary>
/// <param name="Cause">In a few words.</param>
/// <param name="Test">What to do, and what it shows.</param>
/// <param name="Standing">By what was read.</param>
/// <param name="Because">The reading that says so; null where none does.</param>
/// <remarks>Causes and their order are common practice: what is quickest to test and most often found comes first. Air within 0.7 % of another equilibrium is like it.</remarks>
/// <method page="docs/methods/kiln-stall.md"/>
public sealed record StallCheck(string Cause, string Test, StallStanding Standing, string? Because)
{
    private const double NearPercent = 0.7;
    private const double RoomForDryingPercent = 2.0;
    private const double HotWoodFahrenheit = 90.0;
    private const double ColdFahrenheit = 5.0;

    /// <summary>All causes, those the readings point to first, those they speak against last.</summary>
    public static IReadOnlyList<StallCheck> Of(StallEvidence evidence)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        StallCheck[] all = [Wick(evidence), SetTooWet(evidence), WaterComesIn(evidence), Meter(evidence), DryWeight(evidence), Cold(evidence), .. Unread];
        return [.. all.OrderBy(check => check.Standing)];
    }

    // Nothing the book holds tells of these.
    private static readonly StallCheck[] Unread =
    [
        new("Air does not pass through the load", "Hang a ribbon at the leaving side, high and low: it must move everywhere. Fans turning the right way, baffles down, no gap over the load.", StallStanding.Open, null),
        new("Dry shell, wet core", "Cut a section, split shell from core and oven-dry both, or set pins at a fifth and at half of the thickness. A core 3 points wetter only needs time.", StallStanding.Open, null),
        new("Outside air leaks in", "Walk round with a strip of paper at doors, vents and pipes with the fans on; look for wet or cold spots on the floor.", StallStanding.Open, null),
        new("The heat is stuck", "Feel or read the coil's water in and out: no difference, no heat. Valve, pump, air in the coil.", StallStanding.Open, null),
    ];

    private static StallCheck Wick(StallEvidence known)
    {
        const string Cause = "Wet-bulb wick dry, dirty or off its water";
        const string Test = "Hold a hand bulb with a clean wet wick in the moving air beside the load: it must agree with the controller within 2 °F.";
        return known.WickDry ? new(Cause, Test, StallStanding.Likely, "wet and dry bulb read alike")
            : known is { EmcFound: { } found, EmcSet: { } set } ? Math.Abs(found.Percent - set.Percent) > NearPercent
                ? found > set
                    ? new(Cause, Test, StallStanding.Unlikely, $"a dry wick tells of wetter air than there is and the kiln dries on; a hand bulb found wetter air, {Text(found)}, than the {Text(set)} that is set")
                    : new(Cause, Test, StallStanding.Likely, $"a hand bulb found air that holds {Text(found)}, drier than the {Text(set)} that is set: so a dry wick does")
                : new(Cause, Test, StallStanding.Unlikely, $"a hand bulb found {Text(found)}, as set")
            : new(Cause, Test, StallStanding.Open, null);
    }

    private static StallCheck SetTooWet(StallEvidence known)
    {
        const string Cause = "The air that is set holds it there";
        const string Test = "Compare what the set air holds with the moisture wanted: it must lie 2 points under it. Set the next step.";
        return known.EmcSet is not { } set ? new(Cause, Test, StallStanding.Open, null)
            : set.Percent > known.Target.Percent - RoomForDryingPercent + NearPercent || known.Wood.Percent <= set.Percent + NearPercent
                ? new(Cause, Test, StallStanding.Likely, $"it holds {Text(set)}; {Text(known.Target)} is wanted, the wood is at {Text(known.Wood)}")
                : new(Cause, Test, StallStanding.Unlikely, $"it holds {Text(set)}, well under the wood");
    }

    private static StallCheck WaterComesIn(StallEvidence known)
    {
        const string Cause = "Water comes in, or does not get out";
        const string Test = "Close the spray by its hand valve for an hour: the wet bulb must fall. Look for drips under nozzles and coil; work the vents by hand.";
        return known is not { EmcFound: { } found, EmcSet: { } set } ? new(Cause, Test, StallStanding.Open, null)
            : found.Percent > set.Percent + NearPercent ? new(Cause, Test, StallStanding.Likely, $"air found holds {Text(found)}, set is {Text(set)}")
            : new(Cause, Test, StallStanding.Unlikely, $"air found holds {Text(found)}, as set");
    }

    private static StallCheck Meter(StallEvidence known)
    {
        const string Cause = "The meter: hot wood, or another species";
        const string Test = "Weigh a sample, or cut one section and oven-dry it. Or cool a board to the room and read it again, set to its species.";
        return known.SpeciesUnknown ? new(Cause, Test, StallStanding.Likely, "no correction is known for this species")
            : known.MeterIn is { } wood ? wood.Fahrenheit > HotWoodFahrenheit
                ? new(Cause, Test, StallStanding.Likely, string.Create(CultureInfo.InvariantCulture, $"pins in wood at {wood.Fahrenheit:0} °F are uncertain by 2 points"))
                : new(Cause, Test, StallStanding.Open, null)
            : new(Cause, Test, StallStanding.Unlikely, "samples were weighed");
    }

    private static StallCheck DryWeight(StallEvidence known)
    {
        const string Cause = "The sample's calculated dry weight is off";
        const string Test = "Cut a fresh section off the sample, oven-dry it, and reckon the dry weight anew: usual near the end.";
        return known.MeterIn is null && !known.SpeciesUnknown ? new(Cause, Test, StallStanding.Open, null) : new(Cause, Test, StallStanding.Unlikely, "no sample was weighed");
    }

    private static StallCheck Cold(StallEvidence known)
    {
        const string Cause = "The wood is colder than the air is set";
        const string Test = "Probe a core in the middle of the load: within 5 °F of the dry bulb once it dries slowly.";
        return known.DryBulbs is not { } bulbs ? new(Cause, Test, StallStanding.Open, null)
            : bulbs.Set.Fahrenheit - bulbs.Found.Fahrenheit > ColdFahrenheit
                ? new(Cause, Test, StallStanding.Likely, string.Create(CultureInfo.InvariantCulture, $"dry bulb found {bulbs.Found.Fahrenheit:0} °F, set {bulbs.Set.Fahrenheit:0}"))
                : new(Cause, Test, StallStanding.Unlikely, string.Create(CultureInfo.InvariantCulture, $"dry bulb found {bulbs.Found.Fahrenheit:0} °F, as set"));
    }

    private static string Text(MoistureContent moisture) => moisture.Percent.ToString("0.0", CultureInfo.InvariantCulture) + " %";
}
