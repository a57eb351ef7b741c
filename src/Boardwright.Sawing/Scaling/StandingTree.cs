using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Small end inside bark of the butt log of a standing tree, from the girth somebody measured: likely, and what one time in ten is less or more.</summary>
/// <param name="Low">One time in ten it is smaller.</param>
/// <param name="Likely">As likely smaller as larger.</param>
/// <param name="High">One time in ten it is larger.</param>
/// <param name="OverBark">Diameter over bark at breast height, girth / π.</param>
/// <remarks>
/// <para>Equation: d = b g/π − t h, b inside over outside diameter 0.921 (deviation 0.029), t taper inside bark of 0.70 in per 4 ft (0.35) above breast height, h from 4.5 ft to the small end of a log cut 1 ft above ground;
/// the tape of a caller is off by 3 % (common practice). The three deviations are added as squares.</para>
/// <para>Measured on 39 sweetgum stems: taper 0.86 (0.43) in per 4 ft for logs from 3 ft up, 0.56 (0.25) from 6 ft up, between them 0.70 and 0.35. Thick-barked and flared trees have less wood, a lean or a fork spoils the log.</para>
/// <para>Validity: girth 20 to 300 in, log 4 to 20 ft.</para>
/// </remarks>
/// <source id="lenhart-sweetgum" locator="diameters inside and outside bark every 3 ft, computed"/>
/// <source id="common-practice" locator="3 % of a caller's tape, stump of 1 ft"/>
/// <method page="docs/methods/log-worth.md"/>
public sealed record StandingTree(Length Low, Length Likely, Length High, Length OverBark)
{
    private const double InsideOverOutside = 0.921;
    private const double InsideOverOutsideDeviation = 0.029;
    private const double TaperInchesPerFoot = 0.70 / 4.0;
    private const double TaperDeviationInchesPerFoot = 0.35 / 4.0;
    private const double TapeShare = 0.03;
    private const double BreastHeightFeet = 4.5;
    private const double StumpFeet = 1.0;
    private const double TenPercentQuantile = 1.2815515655446004;

    /// <summary>The butt log of a tree.</summary>
    /// <param name="girth">Around the bark at breast height, 4.5 ft.</param>
    /// <param name="length">Of the log, without trim.</param>
    public static Outcome<StandingTree> Of(Length girth, Length length)
    {
        if (girth.Inches is not (>= 20.0 and <= 300.0))
            return new Refusal("girth", $"{girth.Inches:0.#} in", "20 to 300 in around the bark, at breast height");
        if (length.Feet is not (>= 4.0 and <= 20.0))
            return new Refusal("length", $"{length.Feet:0.#} ft", "4 to 20 ft");

        var outside = girth.Inches / Math.PI;
        var above = Math.Max(0.0, StumpFeet + length.Feet - BreastHeightFeet);
        var likely = (InsideOverOutside * outside) - (TaperInchesPerFoot * above);
        var deviation = Math.Sqrt(Math.Pow(InsideOverOutsideDeviation * outside, 2.0) + Math.Pow(TaperDeviationInchesPerFoot * above, 2.0) + Math.Pow(TapeShare * InsideOverOutside * outside, 2.0));
        var side = TenPercentQuantile * deviation;
        return likely - side < 1.0
            ? new Outcome<StandingTree>.NoAnswer("Too thin for a log of that length.")
            : new StandingTree(Length.FromInches(likely - side), Length.FromInches(likely), Length.FromInches(likely + side), Length.FromInches(outside));
    }
}
