using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>Whether two weighed parts are in ratio.</summary>
/// <param name="OffShare">Hardener against what the resin asks for, less one: −0.05 is 5 % short of part B.</param>
/// <param name="Verdict">Good, borderline or wrong.</param>
public sealed record MixCheck(double OffShare, MixVerdict Verdict)
{
    /// <summary>Off ratio up to which a weighing is good: common practice.</summary>
    public const double GoodShare = 0.02;

    /// <summary>Off ratio beyond which the mix is rejected: common practice. Off-ratio resin never fully cures.</summary>
    public const double WrongShare = 0.05;

    /// <summary>Compares two weighings with the ratio of the resin.</summary>
    /// <method page="docs/methods/resin-mix.md"/>
    /// <param name="resin">Ratio by mass.</param>
    /// <param name="partA">As weighed.</param>
    /// <param name="partB">As weighed.</param>
    public static Outcome<MixCheck> Of(Resin resin, Mass partA, Mass partB)
    {
        ArgumentNullException.ThrowIfNull(resin);
        if (partA.Kilograms <= 0.0 || partB.Kilograms <= 0.0)
        {
            return new Refusal("weighed parts", $"A {partA.Kilograms} kg, B {partB.Kilograms} kg", "both parts above zero");
        }

        var off = partB / partA / resin.HardenerPerResin - 1.0;
        var verdict = Math.Abs(off) switch
        {
            <= GoodShare => MixVerdict.Good,
            <= WrongShare => MixVerdict.Borderline,
            _ => MixVerdict.Wrong,
        };
        return new MixCheck(off, verdict);
    }
}
