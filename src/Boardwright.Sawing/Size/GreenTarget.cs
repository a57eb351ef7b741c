using System.Globalization;
using Boardwright.Numerics;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Sawing;

/// <summary>How thick to saw green so that the dressed board comes out: every part of the target.</summary>
/// <param name="Target">Mean green thickness to set: the sum of the parts.</param>
/// <param name="Dressed">Finished thickness.</param>
/// <param name="Planing">Taken off both faces together.</param>
/// <param name="Shrinkage">Lost in drying from green.</param>
/// <param name="Variation">Z times the total deviation, so that few boards are too thin.</param>
/// <param name="TotalDeviation">Total deviation of the saw.</param>
/// <param name="Z">Normal deviate of the accepted share of thin boards.</param>
/// <remarks>
/// <para>Equation: T = (F + P)/(1 - S/100) + Z sT, sT = sqrt(within² + between component²), S shrinkage of the thickness from green in percent.</para>
/// <para>Multiplying by (1 + S/100) instead is a smaller number (0.975 against 0.977 for 15/16 at 4 %). It is an estimate: planing takes part of the scatter
/// within boards, shrinkage differs by board, and the top head need not take its full cut.</para>
/// </remarks>
/// <source id="brown-2000" locator="EM 8731, p. 12, table 2, figure 12"/>
/// <source id="brown-1982" locator="target size with drying, from memory"/>
/// <method page="docs/methods/green-target.md"/>
public sealed record GreenTarget(Length Target, Length Dressed, Length Planing, Length Shrinkage, Length Variation, Length TotalDeviation, double Z)
{
    /// <summary>Share of thin boards where nothing else is said.</summary>
    public static readonly Share UsualUndersize = Share.FromPercent(5.0);

    /// <summary>The green target.</summary>
    /// <param name="dressed">Finished thickness.</param>
    /// <param name="planing">Taken off both faces together.</param>
    /// <param name="species">Species.</param>
    /// <param name="final">Moisture content when dressed.</param>
    /// <param name="within">Deviation within boards.</param>
    /// <param name="between">Between-board component of the variance, as a deviation.</param>
    /// <param name="undersize">Share of boards that may be too thin, above 0 and up to 50 %.</param>
    /// <param name="ringsToFace">Angle between growth rings and wide face: 0 flatsawn, 90 degrees quartersawn.</param>
    public static Outcome<GreenTarget> Of(
        Length dressed, Length planing, Species species, MoistureContent final, Length within, Length between, Share undersize, Angle ringsToFace)
    {
        ArgumentNullException.ThrowIfNull(species);
        if (dressed.Metres <= 0.0)
            return new Refusal("dressed", "0", "a thickness above zero");

        return Deviate(undersize).Then(z => Wood.Shrinkage.TotalOfThickness(species, ringsToFace).Then<GreenTarget>(percent =>
        {
            var lost = 100.0 * (1.0 - Wood.Shrinkage.FractionOfGreen(percent, species.ShrinkageStart.Percent, final.Percent));
            var deviation = SawVariation.Combined(within, between);
            var variation = deviation * z;
            var green = Critical(dressed, planing, lost);
            return new GreenTarget(green + variation, dressed, planing, green - (dressed + planing), variation, deviation, z);
        }));
    }

    /// <summary>Critical size: the green thickness below which a board will not dress, (F + P)/(1 - S/100).</summary>
    /// <param name="dressed">Finished thickness.</param>
    /// <param name="planing">Taken off both faces together.</param>
    /// <param name="shrinkagePercent">Shrinkage of the thickness from green to the dressing moisture, below 100 %.</param>
    public static Length Critical(Length dressed, Length planing, double shrinkagePercent) => (dressed + planing) * (1.0 / (1.0 - shrinkagePercent / 100.0));

    /// <summary>Target for lumber sold green or air dried at its nominal thickness: nominal + Z sT. The larger of both targets rules.</summary>
    public static Outcome<Length> ForSaleGreen(NominalThickness nominal, Length totalDeviation, Share undersize) =>
        Deviate(undersize).Then<Length>(z => nominal.Length + totalDeviation * z);

    /// <summary>The setting at or above a target that the setworks can make.</summary>
    public static Length Setting(Length target, Length step) => step * Math.Ceiling(target / step - 1e-9);

    /// <summary>One-sided normal deviate of a share of thin boards.</summary>
    public static Outcome<double> Deviate(Share undersize) => undersize.Fraction is > 0.0 and <= 0.5
        ? Distributions.NormalQuantile(1.0 - undersize.Fraction)
        : new Refusal("undersize", undersize.Percent.ToString("0.##", CultureInfo.InvariantCulture) + " %", "above 0 and up to 50 %; no finite target leaves nothing undersize (0.1 % is often meant)");
}
