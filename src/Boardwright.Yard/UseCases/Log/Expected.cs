using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What a log will likely give, by what logs like it gave, beside what its plan promises.</summary>
public static class LogExpected
{
    /// <summary>One figure; none for a log without a scale.</summary>
    public static IEnumerable<Traced> Of(YardState state, Log log, LogCutting cutting)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(cutting);
        if (YardLog.Scale(log) is not Outcome<ScaledLog>.Done({ GrossUnrounded: { } scale }))
            yield break;

        var (next, sawyer) = (LogYield.Next(state, log.Species.CommonName), LogYield.Sawyer(state));
        yield return new("Likely from the saw", Text($"{scale * next.Ratio:0}"), "bf", Text($"{scale * next.Low:0} to {scale * next.High:0} in 8 logs of 10, green tally; the plan sees neither knots nor slips of the saw"))
        {
            Method = "sawn-yield",
            Source = next.Logs > 0 ? $"{next.Logs} logs of {log.Species.CommonName} sawn by {sawyer}, and the house’s record before them" : "the house’s record: no such log was sawn here yet",
            Inputs =
            [
                ("International 1/4, not rounded", Text($"{scale:0.0} bf")), ("over the scale", Text($"{next.Ratio:0.000}, {next.Low:0.00} to {next.High:0.00}")), ("of it learned here", Text($"{100.0 * next.OwnWeight:0} %")),
                ("planned", Text($"{cutting.Plan.Footage.Count:0.0} bf")),
            ],
        };
    }

    /// <summary>Likely green tally of a log, as its own page shows it; null for a log without a scale.</summary>
    public static double? LikelyBf(YardState state, Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return YardLog.Scale(log) is Outcome<ScaledLog>.Done({ GrossUnrounded: { } scale }) ? scale * LogYield.Next(state, log.Species.CommonName).Ratio : null;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
