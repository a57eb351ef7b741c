using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A log under every rule, side by side.</summary>
public static class LogRulesCommand
{
    private const double UsualTallyPerScale = 1.06;

    public static Command Command { get; } = Command.Of("log", "rules", "A log under every rule side by side, with the overrun each will show; never converted for payment", Run) with
    {
        Options =
        [
            Option.Required("small-end", "D", "small-end diameter inside bark, such as 16in"),
            Option.Required("length", "L", "length without trim, such as 12ft"),
            Option.Optional("large-end", "D", "large-end diameter inside bark (default: small end + 1/8 in per foot)"),
            Option.Optional("mid", "D", "diameter inside bark half way along, for huber and newton"),
            Option.Optional("sweep", "L", "greatest departure from a straight line; the first 2 in are free"),
            Option.Many("defect", "KIND:SIZE", LogDefect.Form),
            Option.Optional("sawn", "BF", "green tally expected, such as 140bf (default: 1.06 of the International 1/4-inch scale)"),
        ],
        Examples = ["log rules --small-end 16in --large-end 19in --length 12ft --sweep 3in"],
    };

    public sealed record OfRule(string Rule, double? GrossBf, double? GrossUnroundedBf, double? DeductionBf, double? NetBf, double? VolumeM3, double? OverrunPct, string Words);

    public sealed record Answer(double SawnBf, IReadOnlyList<OfRule> Rules, string Note);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var log = new MeasuredLog(ask.Length("small-end"), ask.Length("length"))
        {
            LargeEnd = ask.LengthOrNull("large-end"),
            Middle = ask.LengthOrNull("mid"),
            Sweep = ask.LengthOrNull("sweep"),
            Defects = [.. ask.Texts("defect").Select(text => ask.Take("--defect", LogDefect.Read("--defect", text))).OfType<LogDefect>()],
        };
        double? sawn = ask.Has("sawn") ? ask.Volume("sawn").CubicMetres / BoardFeet.From(1.0).NominalVolume.CubicMetres : null;
        return ask.Refuses ? ask.Refused<Answer>() : ask.Named(LogScale.Of(LogRule.InternationalQuarter, log)).Then<Answer>(scaled =>
        {
            var tally = sawn ?? (UsualTallyPerScale * Math.Max(0.0, scaled.GrossUnrounded!.Value - scaled.DeductionBoardFeet));
            return new Answer(tally, [.. RuleComparison.Of(log, (tally, tally, tally)).Select(Show)], RuleComparison.NeverConverted);
        });
    }

    private static OfRule Show(RuleComparison one) => new(
        LogRules.NameOf(one.Rule), one.Scaled?.Gross?.Count, one.Scaled?.GrossUnrounded, one.Scaled?.Gross is null ? null : one.Scaled.DeductionBoardFeet, one.Scaled?.Net?.Count,
        one.Scaled is { Gross: null } cubic ? cubic.Volume.CubicMetres : null, 100.0 * one.Overrun?.Likely, one.Words);
}
