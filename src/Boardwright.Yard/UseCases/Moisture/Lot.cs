using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>What the readings of boards picked at random say about their lot.</summary>
public static class MoistureLot
{
    private const double HalfWidthPoints = 0.5;

    public static Command Command { get; } = Command.Of("moisture", "lot", "What readings of boards picked at random say about their lot", Run) with
    {
        Options =
        [
            Option.Required("readings", "LIST|FILE", "moisture contents parted by commas, such as 6.4%,7.1%,6.9%, or a table with the header reading_pct"),
            Option.Optional("target", "MC", "moisture content wanted (default: the mean found)"),
            Option.Optional("allow", "MC", "how far a board may be from it, either way (default 1%)"),
            Option.Optional("by", "WAY", "meter, whose readings over 28 % are above its range and no numbers, or oven, for oven-dry sections (default meter)"),
            Option.Optional("spread", "MC", "accept the lot where its standard deviation is at most this, such as 0.6%"),
        ],
        Examples =
        [
            "moisture lot --readings 6.4%,7.1%,6.9%,7.6%,6.2%,7.0%,8.1%,6.7% --target 7% --allow 1%",
            "moisture lot --readings demo/examples/moisture-readings.csv --target 7%",
            "moisture lot --readings 31%,44%,52%,38% --by oven",
        ],
    };

    /// <param name="Count">Readings, those above the meter's range included.</param>
    /// <param name="AboveRange">Of them, readings above the meter's range: kept and counted, never averaged.</param>
    /// <param name="MeanPct">Null where a reading is above range: the mean of the others would be that of the drier boards.</param>
    public sealed record Answer(
        int Count, double? MeanPct, double? StandardDeviationPct, double? MeanLowPct, double? MeanHighPct, double? ShareWithinPct, int? BoardsToMeasure,
        bool? MeanAccepted, bool? SpreadAccepted, bool? Accepted, int AboveRange, string? Why);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var readings = IsFile(ask.Text("readings")) ? FromFile(ask) : ask.List("readings", Read.MoistureContent);
        var target = ask.MoistureOrNull("target");
        var allow = ask.Moisture("allow", MoistureContent.FromPercent(1.0));
        var spread = ask.MoistureOrNull("spread");
        var above = ask.Choice("by", "meter", "meter", "oven") == "meter" ? readings.Count(reading => reading > MeterReading.UsableMost) : 0;
        return ask.Refuses
            ? ask.Refused<Answer>()
            : above > 0 ? new Answer(readings.Count, null, null, null, null, null, null, Judged(target, () => false), Judged(spread, () => false), target is null && spread is null ? null : false, above,
                $"{above} of {readings.Count} above the meter's range of {MeterReading.UsableMost.Percent:0} %: no mean is told and no lot accepted; cut oven sections of those boards")
            : ask.Named(LotStatistics.Of(readings)).Then<Answer>(lot =>
            {
                var center = target?.Percent ?? lot.MeanPercent;
                return new Answer(
                    lot.Count, lot.MeanPercent, lot.StandardDeviationPercent, lot.MeanLowPercent, lot.MeanHighPercent,
                    100.0 * lot.ShareWithin(center - allow.Percent, center + allow.Percent), lot.BoardsToMeasure(HalfWidthPoints),
                    Judged(target, () => lot.AcceptsMean(center, allow.Percent)), Judged(spread, () => lot.StandardDeviationPercent <= spread!.Value.Percent),
                    target is null && spread is null ? null : (target is null || lot.AcceptsMean(center, allow.Percent)) && (spread is null || lot.StandardDeviationPercent <= spread.Value.Percent), 0,
                    target is null && spread is null ? null : "mean: its 95 % interval lies within the target and what is allowed; spread: the standard deviation found is at most the one named");
            });
    }

    // Null where nothing was asked to judge by.
    private static bool? Judged(MoistureContent? limit, Func<bool> holds) => limit is null ? null : holds();

    private static List<MoistureContent> FromFile(Ask ask)
    {
        var text = ask.File("readings");
        return ask.Refuses ? [] : [.. (ask.Take("--readings", CsvTable.Read("--readings", text, "reading_pct"))?.Rows ?? [])
            .Select(row => ask.Take("--readings", row.Get("reading_pct", Percent)))];
    }

    // A list holds figures and commas; the name of a file has letters and no comma.
    private static bool IsFile(string text) => text == "-" || (text.IndexOfAny([',', ';']) < 0 && text.Any(char.IsLetter));

    // The column is named in percent, so a plain 0.8 is 0.8 % there.
    private static Outcome<MoistureContent> Percent(string what, string text) => Read.MoistureContent(what, Read.Number(what, text) is Outcome<double>.Done ? text + "%" : text);
}
