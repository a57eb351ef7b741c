using System.Globalization;

namespace Boardwright.Planning;

/// <summary>Whether two stacks may share a charge, and if not why.</summary>
public static class Sharing
{
    private const double Forgiven = 1e-9; // 8/4 with 12/4 is exactly 1.5 times

    /// <summary>The first rule that the pair breaks, in words; null when they may share.</summary>
    /// <remarks>A rule of common practice: same family, thickness ratio, moisture gap, and owners who agree; see docs/methods/kiln-plan.md.</remarks>
    public static string? Fault(Stack a, Stack b, SharingRules rules)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        ArgumentNullException.ThrowIfNull(rules);
        if (a.NeverKiln || b.NeverKiln)
        {
            return $"{(a.NeverKiln ? a.Id : b.Id)} must stay out of every kiln";
        }

        if (a.Family != b.Family)
        {
            return $"{a.Id} is {a.Family} and {b.Id} is {b.Family}";
        }

        var ratio = Math.Max(a.Thickness / b.Thickness, b.Thickness / a.Thickness);
        if (ratio > rules.ThicknessRatioMost + Forgiven)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{a.Id} and {b.Id} differ {ratio:0.00} times in thickness, at most {rules.ThicknessRatioMost:0.00}");
        }

        var gap = Math.Abs(a.Moisture.Percent - b.Moisture.Percent);
        if (gap > rules.MoistureGapMostPercent + Forgiven)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{a.Id} and {b.Id} are {gap:0.0} points of moisture apart, at most {rules.MoistureGapMostPercent:0.0}");
        }

        return a.Owner == b.Owner || (a.OwnerShares && b.OwnerShares) ? null
            : $"{a.Id} belongs to {a.Owner} and {b.Id} to {b.Owner}, who do not both agree to share";
    }
}
