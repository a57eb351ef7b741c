using Boardwright.Numerics;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Sawing;

/// <summary>What the planer makes of dry rough lumber at one finished thickness.</summary>
/// <param name="Finished">Finished thickness.</param>
/// <param name="CleanUp">Share of boards planed clean on both faces over all their length.</param>
/// <param name="Shavings">Share of the dry rough wood that leaves as shavings.</param>
public sealed record DressedSize(Length Finished, Share CleanUp, Share Shavings);

/// <summary>Dry rough lumber as it comes to the planer: its thickness and scatter after drying.</summary>
/// <param name="Dry">Mean thickness.</param>
/// <param name="Within">Deviation within boards.</param>
/// <param name="Between">Between-board component.</param>
/// <remarks>
/// <para>Green size and scatter shrink alike: times 1 - S/100, S the shrinkage of the thickness from green in percent.</para>
/// <para>A board is planed clean where its thinnest place is at least finished + least cut (both faces together). With N places that scatter apart, the share is the mean over boards of [P(place thick enough)]^N:
/// integral of phi(z) Phi((dry + z between - finished - cut)/within)^N dz. Cup, bow and twist are not in it: a warped board asks for more.</para>
/// </remarks>
/// <source id="brown-2000" locator="within- and between-board variation; the share is worked out from it (computed)"/>
/// <method page="docs/methods/dressing.md"/>
public sealed record Dressing(Length Dry, Length Within, Length Between)
{
    /// <summary>Places along a board that scatter apart, where nothing else is said: as many as are usually read.</summary>
    /// <source id="common-practice" locator="6 to 10 readings a board"/>
    public const int UsualPlaces = 8;

    private const int Steps = 400;
    private const double Reach = 8.0;

    /// <summary>Lumber after drying.</summary>
    /// <param name="green">Mean green thickness.</param>
    /// <param name="within">Deviation within boards, green.</param>
    /// <param name="between">Between-board component, green.</param>
    /// <param name="species">Species.</param>
    /// <param name="final">Moisture content when dressed.</param>
    /// <param name="ringsToFace">Angle between growth rings and wide face: 0 flatsawn, 90 degrees quartersawn.</param>
    public static Outcome<Dressing> Of(Length green, Length within, Length between, Species species, MoistureContent final, Angle ringsToFace)
    {
        ArgumentNullException.ThrowIfNull(species);
        return Wood.Shrinkage.TotalOfThickness(species, ringsToFace).Then<Dressing>(percent =>
        {
            var kept = Wood.Shrinkage.FractionOfGreen(percent, species.ShrinkageStart.Percent, final.Percent);
            return new Dressing(green * kept, within * kept, between * kept);
        });
    }

    /// <summary>What comes of planing to one thickness.</summary>
    /// <param name="finished">Finished thickness.</param>
    /// <param name="leastCut">Least taken off both faces together for a face to come clean.</param>
    /// <param name="places">Places along a board that scatter apart, at least 1.</param>
    public DressedSize To(Length finished, Length leastCut, int places) => new(
        finished, Share.FromFraction(CleanUp(finished.Metres + leastCut.Metres, places)), Share.FromFraction(Math.Clamp(1.0 - (finished / Dry), 0.0, 1.0)));

    /// <summary>The thickest finish at which a wanted share still comes clean, by halving.</summary>
    public Length ThickestFor(Share cleanUp, Length leastCut, int places)
    {
        var (low, high) = (0.0, Dry.Metres);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2.0;
            if (CleanUp(middle + leastCut.Metres, places) >= cleanUp.Fraction)
                low = middle;
            else
                high = middle;
        }

        return Length.FromMetres(low);
    }

    // Simpson's rule over the scatter between boards; beyond eight deviations nothing is left.
    private double CleanUp(double neededMetres, int places)
    {
        var sum = 0.0;
        for (var i = 0; i <= Steps; i++)
        {
            var z = Reach * ((2.0 * i / Steps) - 1.0);
            var spare = Dry.Metres + (z * Between.Metres) - neededMetres;
            var place = Within.Metres > 0.0 ? Distributions.NormalProbability(spare / Within.Metres) : spare >= 0.0 ? 1.0 : 0.0;
            sum += (i is 0 or Steps ? 1.0 : i % 2 == 1 ? 4.0 : 2.0) * Math.Exp(-0.5 * z * z) * Math.Pow(place, places);
        }

        return Math.Clamp(sum * (2.0 * Reach / Steps) / 3.0 / Math.Sqrt(2.0 * Math.PI), 0.0, 1.0);
    }
}
