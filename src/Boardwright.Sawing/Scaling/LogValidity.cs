using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>What sizes the log rules cover.</summary>
internal static class LogValidity
{
    private const double DiameterMinIn = 1.0;
    private const double DiameterMaxIn = 100.0;
    private const double LengthMinFt = 1.0;
    private const double LengthMaxFt = 60.0;
    private const double Slack = 1e-9;

    /// <summary>Every reason why a log cannot be scaled by a rule.</summary>
    public static IEnumerable<Refusal> Of(LogRule rule, MeasuredLog log)
    {
        if (!IsDiameter(log.SmallEnd))
            yield return Diameter("small-end", log.SmallEnd);
        else if (IsScribner(rule) && !InScribnerTable(log.SmallEnd.Inches))
            yield return new("small-end", Inches(log.SmallEnd), "whole inches, 6 to 40 in: Scribner is a drawn table and has nothing between or beyond them; round to the inch first");

        if (log.LargeEnd is { } large && (!IsDiameter(large) || large < log.SmallEnd))
            yield return large < log.SmallEnd ? new("large-end", Inches(large), $"at least the small end, {Inches(log.SmallEnd)}") : Diameter("large-end", large);
        if (log.Middle is { } middle && !IsDiameter(middle))
            yield return Diameter("mid", middle);
        if (log.Length.Feet < LengthMinFt - Slack || log.Length.Feet > LengthMaxFt + Slack)
            yield return new("length", Feet(log.Length), "1 to 60 ft (0.31 to 18.3 m)");
        else if (IsScribner(rule) && log.Length.Feet > ScribnerRule.LengthMaxFt + Slack)
            yield return new("length", Feet(log.Length), "up to 40 ft: the Scribner table ends there");

        if (LogRules.IsCubic(rule) && (log.Sweep is not null || log.Defects.Count > 0))
            yield return new(log.Sweep is null ? "defect" : "sweep", "a deduction", "no deduction under a cubic rule, which gives the solid volume; deductions are taken in board feet");
        if (log.Sweep is { } sweep && sweep > log.Length)
            yield return new("sweep", Inches(sweep), "less than the length of the log");
        foreach (var refusal in log.Defects.SelectMany(defect => OfDefect(defect, log)))
            yield return refusal;
    }

    public static bool InScribnerTable(double diameterIn) =>
        TradeRounding.IsWhole(diameterIn) && Math.Round(diameterIn) is >= ScribnerRule.DiameterMinIn and <= ScribnerRule.DiameterMaxIn;

    private static IEnumerable<Refusal> OfDefect(LogDefect defect, MeasuredLog log)
    {
        var along = defect switch
        {
            LogDefect.LostLength(var lost) => lost,
            LogDefect.Wedge(_, var length) => length,
            LogDefect.InteriorRot(_, _, var length) => length,
            _ => default,
        };
        if (along.Metres > log.Length.Metres + Slack)
            yield return new("defect", Feet(along), $"at most the length of the log, {Feet(log.Length)}");
        var widest = log.LargeEnd is { } large && large > log.SmallEnd ? large : log.SmallEnd;
        if (defect is LogDefect.InteriorRot rot && (rot.Width > widest || rot.Height > widest))
            yield return new("defect", $"{Inches(rot.Width)} x {Inches(rot.Height)}", $"no wider than the log, {Inches(widest)}");
        if (defect is LogDefect.SapRot(var depth) && depth * 2.0 >= log.SmallEnd)
            yield return new("defect", Inches(depth), $"less than half the diameter, {Inches(log.SmallEnd * 0.5)}");
    }

    private static bool IsScribner(LogRule rule) => rule is LogRule.Scribner or LogRule.ScribnerDecimalC;

    private static bool IsDiameter(Length diameter) => diameter.Inches is >= DiameterMinIn - Slack and <= DiameterMaxIn + Slack;

    private static Refusal Diameter(string what, Length given) => new(what, Inches(given), "1 to 100 in (25 to 2540 mm), inside bark");

    private static string Inches(Length length) => length.Inches.ToString("0.##", CultureInfo.InvariantCulture) + " in";

    private static string Feet(Length length) => length.Feet.ToString("0.##", CultureInfo.InvariantCulture) + " ft";
}
