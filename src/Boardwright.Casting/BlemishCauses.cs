using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>What is known of a casting that bubbled or sank.</summary>
/// <param name="Depth">Of the pour.</param>
/// <param name="Density">Of the mixed resin.</param>
/// <param name="Start">Shop when it was poured.</param>
/// <param name="WarmedKelvins">How far the shop rose above the start before the resin set; 0 or less for falling. Null when not known.</param>
/// <param name="GelHour">Hours to gel; null when not known.</param>
/// <param name="Peak">Hottest resin; null when not known.</param>
public sealed record BlemishFacts(Length Depth, Density Density, Temperature Start, double? WarmedKelvins, double? GelHour, Temperature? Peak);

/// <summary>Ranked causes of bubbles and of a sunken surface, each with a test that tells it from the others.</summary>
/// <remarks>
/// Air of unsealed wood, rising warmth, cold thick resin, boiling heat; leak, unsealed wood, shrinkage of the cure. What the record shows comes first; the rest in the order practice meets them (common practice).
/// Cure shrinkage takes 3 to 5 % of the volume (from memory), 7.55 % in one measured resin: in a mould that holds the sides it comes out of the depth, so that at most 8 % of the depth is the cure's own.
/// </remarks>
/// <source id="casting-practice-notes" locator="seal coats, air leaving pores, falling warmth"/>
/// <source id="yang-2016" locator="cure shrinkage 7.55 % by volume"/>
/// <method page="docs/methods/casting-blemishes.md"/>
public static class BlemishCauses
{
    private const double WarmedKelvins = 2.0;
    private const double BoilingCelsius = 80.0;
    private const double SlowShareOfGel = 0.25;
    private const double ShrinkageUsualLow = 0.03;
    private const double ShrinkageUsualHigh = 0.05;
    private const double ShrinkageMost = 0.0755;
    private static readonly Length FineBubble = Length.FromMillimetres(0.1);

    /// <summary>Causes, the likeliest first.</summary>
    public static IReadOnlyList<SoftCause> Of(Blemish blemish, BlemishFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return blemish == Blemish.Bubbles ? Bubbles(facts) : Sinking(facts);
    }

    private static List<SoftCause> Bubbles(BlemishFacts facts)
    {
        var causes = new List<SoftCause>
        {
            new("Air out of the wood: faces, ends or bark were not sealed", "They stand in strings over the wood and along its edges, hardly any in open resin",
                "Drill out and fill, or flood the top; next time seal every face with thin resin and let it gel first", true),
        };
        if (facts.WarmedKelvins is { } warmed && warmed >= WarmedKelvins)
        {
            causes.Insert(0, new(Text($"The shop warmed by {warmed:0} °C while the resin was liquid: warm air leaves the pores"), "The shop's own readings; bubbles came hours after the pour, over the wood",
                "Drill out and fill, or flood the top; next time pour wood and resin warm into a cooling room, not a cold one into a warming day", true));
        }

        var hours = BubbleRise.Through(FineBubble, facts.Depth, facts.Density, BubbleRise.ViscosityAt(facts.Start)).Hours;
        var thick = new SoftCause(Text($"Stirred in, and too thick to let them go: a 0.1 mm bubble takes about {hours:0.0} h up through {facts.Depth.Millimetres:0} mm at {facts.Start.Celsius:0} °C"),
            "Fine and even all through, in open resin as much as over the wood", "Polish or flood; next time warm both parts to 25 °C, stir slowly, let the bucket stand some minutes and pour thin", true);
        causes.Insert(facts.GelHour is { } gel && hours > SlowShareOfGel * gel ? 0 : causes.Count, thick);
        if (facts.Peak is { } peak && peak.Celsius > BoilingCelsius)
        {
            causes.Insert(0, new(Text($"Too hot: {peak.Celsius:0} °C by the model, vapour and foam"), "Foam, yellow or cracks in the thickest part", "Cut it out and pour again in thinner layers; it does not get sound", false));
        }

        return causes;
    }

    private static List<SoftCause> Sinking(BlemishFacts facts)
    {
        var depth = facts.Depth.Millimetres;
        return
        [
            new("A leak of the mould", "Resin under the mould or on the bench; the level fell within hours, evenly, a tide line on the wood above it", "Stop it while it is liquid; hardened, sand and fill up with a second pour", true),
            new("It went into the wood: open pores, bark, cracks, voids that were not sealed", "It sank along the wood and over cracks, not in the open middle", "Fill up with a second pour while the first is tacky, or after sanding; next time seal first and count the voids", true),
            new(Text($"Shrinkage of the cure: {depth * ShrinkageUsualLow:0.0} to {depth * ShrinkageUsualHigh:0.0} mm of {depth:0} mm are usual, {depth * ShrinkageMost:0.0} in a resin that shrinks much"),
                Text($"Lay a straight edge over it: more than {depth * ShrinkageMost:0.0} mm is not the cure alone; highest at the walls, a hollow between"), "Flatten, or top up with a thin pour after sanding", true),
        ];
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
