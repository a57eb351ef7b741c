using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Gross and net scale of a log by a rule.</summary>
public static class LogScaleCommand
{
    public static Command Command { get; } = Command.Of("log", "scale", "Gross and net scale of a log by a rule", Run) with
    {
        Options =
        [
            Option.Required("rule", "RULE", LogRules.All),
            Option.Required("small-end", "D", "small-end diameter inside bark, such as 16in"),
            Option.Required("length", "L", "length without trim, such as 12ft"),
            Option.Optional("large-end", "D", "large-end diameter inside bark (default: small end + 1/8 in per foot, and the answer says so)"),
            Option.Optional("mid", "D", "diameter inside bark half way along, for huber and newton"),
            Option.Optional("sweep", "L", "greatest departure from a straight line; the first 2 in are free"),
            Option.Many("defect", "KIND:SIZE", LogDefect.Form),
        ],
        Examples =
        [
            "log scale --rule international-quarter --small-end 16in --large-end 19in --length 8ft",
            "log scale --rule doyle --small-end 20in --length 12ft --sweep 4in --defect rot:8inx6in,8ft",
        ],
    };

    public sealed record Deduction(string Method, double DeductionBf);

    public sealed record Answer(
        string Rule, double? GrossBf, double? NetBf, double VolumeM3, double? GrossUnroundedBf, double? DeductionBf, string? Assumed, string? Note, IReadOnlyList<Deduction> Deductions);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var rule = ask.Take("--rule", LogRules.Find("--rule", ask.Text("rule")));
        var log = new MeasuredLog(ask.Length("small-end"), ask.Length("length"))
        {
            LargeEnd = ask.LengthOrNull("large-end"),
            Middle = ask.LengthOrNull("mid"),
            Sweep = ask.LengthOrNull("sweep"),
            Defects = [.. ask.Texts("defect").Select(text => ask.Take("--defect", LogDefect.Read("--defect", text))).OfType<LogDefect>()],
        };
        return ask.Refuses ? ask.Refused<Answer>() : ask.Named(LogScale.Of(rule, log)).Then<Answer>(Show);
    }

    private static Outcome<Answer> Show(ScaledLog log) => new Answer(
        LogRules.NameOf(log.Rule), log.Gross?.Count, log.Net?.Count, log.Volume.CubicMetres, log.GrossUnrounded, log.Gross is null ? null : log.DeductionBoardFeet, log.Assumed, log.Note,
        [.. log.Deductions.Select(one => new Deduction(one.Method, one.BoardFeet))]);
}
