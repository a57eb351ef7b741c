using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>One log under every rule, so that buyer and seller see it in each other's measure.</summary>
/// <remarks>Each row is scaled anew from the log's own diameter and length. Nothing is turned from one rule into another: the ratio of two rules differs from log to log, so that a converted figure is a measurement nobody made.</remarks>
/// <method page="docs/methods/log-scale.md"/>
/// <param name="Rule">The rule.</param>
/// <param name="Scaled">The log under it; null where it has no answer.</param>
/// <param name="Words">How it rounds and what it takes for granted, or why it has no answer.</param>
/// <param name="Overrun">Expected green tally over the net scale, less one, with what one log in ten stays below and passes; null under a cubic rule or without a net.</param>
public sealed record RuleComparison(LogRule Rule, ScaledLog? Scaled, string Words, (double Likely, double Low, double High)? Overrun)
{
    /// <summary>Why no figure is turned into another rule's for payment.</summary>
    public const string NeverConverted = "Each figure is scaled by its own rule; none is turned into another. The ratio of two rules changes with every diameter and length, some states forbid it for payment, and a price belongs to the rule it was agreed by.";

    /// <summary>Every rule in turn.</summary>
    /// <param name="log">The log, without trim, with its deductions.</param>
    /// <param name="sawn">Expected green tally, board feet, with low and high; null for none.</param>
    public static IReadOnlyList<RuleComparison> Of(MeasuredLog log, (double Likely, double Low, double High)? sawn)
    {
        ArgumentNullException.ThrowIfNull(log);
        return [.. Enum.GetValues<LogRule>().Select(rule => One(rule, log, sawn))];
    }

    private static RuleComparison One(LogRule rule, MeasuredLog log, (double Likely, double Low, double High)? sawn)
    {
        // A cubic rule knows no deduction: its volume is gross.
        var (outcome, words) = (LogScale.Of(rule, LogRules.IsCubic(rule) ? log with { Sweep = null, Defects = [] } : log), WordsOf(rule));
        if (outcome is Outcome<ScaledLog>.Refused && rule is LogRule.Scribner or LogRule.ScribnerDecimalC && log.SmallEnd.Inches != TradeRounding.NearestHalfUp(log.SmallEnd.Inches))
        {
            var whole = TradeRounding.NearestHalfUp(log.SmallEnd.Inches);
            (outcome, words) = (LogScale.Of(rule, log with { SmallEnd = Length.FromInches(whole) }), string.Create(CultureInfo.InvariantCulture, $"at {whole:0} in, its table has whole inches; {words}"));
        }

        return outcome switch
        {
            Outcome<ScaledLog>.Done(var scaled) => new(rule, scaled, words, sawn is { } tally && scaled.Net is { Count: > 0.0 } net ? ((tally.Likely / net.Count) - 1.0, (tally.Low / net.Count) - 1.0, (tally.High / net.Count) - 1.0) : null),
            Outcome<ScaledLog>.Refused(var reasons) => new(rule, null, $"{reasons[0].What} {reasons[0].Given}: it takes {reasons[0].Accepted}", null),
            Outcome<ScaledLog>.NoAnswer(var why) => new(rule, null, why, null),
            _ => throw new InvalidOperationException("A scale is done, refused or without an answer."),
        };
    }

    private static string WordsOf(LogRule rule) => rule switch
    {
        LogRule.Doyle => "to 1 bf, halves up; slab 4 in, kerf 5/16 in, no taper",
        LogRule.Scribner => "to 1 bf, halves up; kerf 1/4 in, no taper",
        LogRule.ScribnerDecimalC => "to 10 bf; kerf 1/4 in, no taper",
        LogRule.InternationalQuarter => "to 5 bf, at least 5; kerf 1/4 in, taper 1/2 in per 4 ft",
        LogRule.InternationalEighth => "to 5 bf, at least 5; kerf 1/8 in, taper 1/2 in per 4 ft",
        LogRule.Ontario => "to 1 bf, halves up; no taper (from memory)",
        LogRule.Smalian => "gross solid wood from both ends; too much where the butt flares",
        LogRule.Huber => "gross solid wood from the middle",
        LogRule.Newton => "gross solid wood from both ends and the middle",
        _ => "table only",
    };
}
