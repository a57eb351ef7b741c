using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A log of the yard opened by radii measured at several cross-sections, and with wane where the buyer allows it; and those radii kept in the book.</summary>
public static class LogMeasured
{
    /// <summary>The plan.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="log">The log.</param>
    /// <param name="sections">A line for each cross-section from the small end: its distance (ft), a colon, eight or more radii (in) at equal angles, the first upright, then clockwise looking at the small end. Empty for the log's two ends.</param>
    /// <param name="waneWide">Share of the thickness that may be missing along the edges of one face of a full-size board, %; empty for the house's.</param>
    /// <param name="waneSmall">The same of a smaller board.</param>
    public static Outcome<LogCutting> Of(YardState state, Log log, string? sections, string? waneWide, string? waneSmall)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(log);
        var (pattern, lines) = (LogCutting.Usual(log), (IReadOnlyList<WantedLine>)[]);
        return LogCutting.Ready(state, log, null, lines, pattern).Then(ready => Shape(log, sections).Then(shape => Wane("wane of full-size boards", waneWide, LogCutting.WaneOf(state, "full_size")).Then(wide => Wane("wane of smaller boards", waneSmall, LogCutting.WaneOf(state, "smaller")).Then(small =>
        {
            IReadOnlyList<BoardPrice> prices = [.. ready.Prices.Select(row => row.Edge != BoardEdge.Square ? row : row with { Wane = row.Grade.StartsWith("smaller", StringComparison.Ordinal) ? small : wide })];
            return CuttingPlanner.Plan(shape, ready.Rules, prices, pattern).Then<LogCutting>(plan => new LogCutting(shape, ready.Rules, plan, prices, [.. ready.Rules.Settings.Select(setting => setting.Nominal)], ""));
        }))));
    }

    /// <summary>Keeps the radii: the log is planned, drawn and weighed by them from then on.</summary>
    /// <param name="book">The book.</param>
    /// <param name="tag">The log.</param>
    /// <param name="sections">As typed.</param>
    /// <param name="wrong">Why the radii kept before were wrong, so that this corrects them; empty where it was measured again.</param>
    /// <param name="by">Who says so.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Keep(YardBook book, string tag, string? sections, string? wrong, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Logs.TryGetValue(tag, out var log))
            return new Refusal("log", tag, "a log of the book");

        var person = read.By(state, by);
        return read.Then(() => Places(log, sections).Then(places => places.Count == 0
            ? new Refusal("radii", "nothing", "a line for each place")
            : Written(book, person, new LogRadiiMeasured(tag, [.. places.Select(one => new RadiiPlace(one.At.Metres, one.RadiiMm!))]), string.IsNullOrWhiteSpace(wrong) ? null : (log.RadiiEntry, wrong.Trim()), Typed(sections!), key)));
    }

    /// <summary>Kept radii as lines, as they would be typed.</summary>
    public static string Lines(Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return string.Join('\n', log.Radii.Select(place => Text($"{place.AtM / 0.3048:0.###}: {string.Join(' ', place.RadiiMm.Select(radius => Text($"{radius / 25.4:0.###}")))}")));
    }

    private static Dictionary<string, string> Typed(string sections) => new(StringComparer.Ordinal) { ["places"] = sections.ReplaceLineEndings("\n").Trim() };

    private static Outcome<IReadOnlyList<Entry>> Written(YardBook book, string by, LogRadiiMeasured fact, (long? Entry, string Why)? wrong, Dictionary<string, string> typed, PostedKey key) =>
        wrong is { Entry: { } old, Why: var why } ? book.Write([new NewEntry(by, fact, null, old, why, typed, key.Id)]) : key.Write(book, by, fact, typed);

    private static Outcome<Share> Wane(string what, string? text, Share house) => string.IsNullOrWhiteSpace(text) ? house
        : Read.Number(what, text.TrimEnd(' ', '%')).Then<Share>(percent => percent is >= 0.0 and <= 90.0 ? Share.FromPercent(percent) : new Refusal(what, text, "0 to 90 % of the thickness"));

    private static Outcome<LogShape> Shape(Log log, string? text) => Places(log, text).Then(places => places.Count == 0
        ? LogShapes.ByEnds(log) : LogShapes.Of(log, places));

    private static Outcome<IReadOnlyList<LogSection>> Places(Log log, string? text)
    {
        var rows = (text ?? "").Split('\n', StringSplitOptions.TrimEntries).Select((row, i) => (Row: row, What: $"line {i + 1}")).Where(one => one.Row.Length > 0).ToList();
        if (rows.Count == 0)
            return Array.Empty<LogSection>();

        var (read, wrong) = (new List<LogSection>(), new List<Refusal>());
        foreach (var (row, what) in rows)
        {
            switch (Section(what, row))
            {
                case Outcome<LogSection>.Done(var section):
                    read.Add(section);
                    break;
                case Outcome<LogSection>.Refused(var reasons):
                    wrong.AddRange(reasons);
                    break;
            }
        }

        if (wrong.Count == 0 && LogShapes.WrongEnd(log, [.. read.Select(one => new RadiiPlace(one.At.Metres, one.RadiiMm!))]) is { } end)
            wrong.Add(end with { What = $"{rows[^1].What}, {end.What}" });
        if (wrong.Count == 0 && (read.Count < 2 || read[0].At.Metres != 0.0 || read.Zip(read.Skip(1)).Any(pair => pair.Second.At <= pair.First.At)))
            wrong.Add(new("cross-sections", string.Join(", ", read.Select(one => Feet(one.At))), "two or more in order from the small end, the first at 0"));
        if (wrong.Count == 0 && read.FindIndex(one => one.RadiiMm!.Count != read[0].RadiiMm!.Count) is >= 0 and var other)
            wrong.Add(new(rows[other].What, $"{read[other].RadiiMm!.Count} radii", $"as many as in {rows[0].What}, {read[0].RadiiMm!.Count}"));
        return wrong.Count > 0 ? new Outcome<IReadOnlyList<LogSection>>.Refused(wrong) : read;
    }

    private static Outcome<LogSection> Section(string what, string row)
    {
        var parts = row.Split(':', StringSplitOptions.TrimEntries);
        if (parts.Length != 2)
            return new Refusal(what, row, "a distance, a colon and the radii, such as 4: 8.1 8 7.9 8 8.2 8 7.9 8");

        var words = parts[1].Split([' ', ',', ';', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length < LogSection.RadiiMin)
            return new Refusal(what, $"{words.Length} radii", $"{LogSection.RadiiMin} or more, at equal angles");

        return Size($"{what}, distance", parts[0], "ft").Then(at =>
        {
            var radii = new List<double>();
            foreach (var word in words)
            {
                var typed = Size($"{what}, radius {radii.Count + 1}", word, "in");
                if (typed is not Outcome<Length>.Done(var radius))
                    return typed.Then<LogSection>(_ => default(LogSection));
                if (radius.Inches is < 1.5 or > 30.0)
                    return new Refusal($"{what}, radius {radii.Count + 1}", word, "1.5 to 30 in: half of the diameter, not the whole");
                radii.Add(radius.Millimetres);
            }

            return new Outcome<LogSection>.Done(LogSection.Measured(at, radii));
        });
    }

    private static Outcome<Length> Size(string what, string text, string unit)
    {
        var read = Read.Length(what, double.TryParse(text, CultureInfo.InvariantCulture, out _) ? text + unit : text);
        return read is Outcome<Length>.Refused(var reasons) ? new Outcome<Length>.Refused([.. reasons.Select(reason => reason with { Given = text })]) : read;
    }

    private static string Feet(Length length) => length.Feet.ToString("0.##", CultureInfo.InvariantCulture) + " ft";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
