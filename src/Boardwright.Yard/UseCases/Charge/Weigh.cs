using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A round of sample weights as typed.</summary>
/// <param name="Weights">Weight by sample, grams unless another unit is written; left empty where it was not weighed.</param>
/// <param name="LostFrom">The sample that lost wood; empty when none did.</param>
/// <param name="LostBefore">Its weight just before.</param>
/// <param name="LostAfter">Just after; empty when it was not weighed then: it is retired.</param>
/// <param name="By">Who weighed.</param>
/// <param name="Keep">True to keep weights out of trend.</param>
/// <param name="Gained">Why a sample gained, in words; asked for where a kept weight is over its last one and no open door is on record since.</param>
public sealed record RoundTyped(IReadOnlyDictionary<string, string?> Weights, string? LostFrom, string? LostBefore, string? LostAfter, string? By, bool Keep = false, string? Gained = null);

/// <summary>Writes the weights of all samples of a charge in one round, all or nothing. Weights out of trend are asked about at once.</summary>
public static class ChargeWeigh
{
    /// <summary>What a refusal is called that asks for the cause of a gain.</summary>
    public const string WhyGained = "Why it gained";

    private const double GramsPerPound = 453.59237;
    private static readonly char[] Letters = [.. "abcdefghijklmnopqrstuvwxyz ABCDEFGHIJKLMNOPQRSTUVWXYZ."];

    /// <summary>Causes offered; any other words are taken as well.</summary>
    public static IReadOnlyList<string> GainCauses { get; } = ["door left open", "spray or steam ran", "rain or snow came in", "wetter wood beside it", "not known"];

    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string tag, RoundTyped typed, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        if (!state.Charges.TryGetValue(tag, out var charge))
            return new Refusal("Charge", tag, $"a charge of the book: {NearestNames.Of(tag, [.. state.Charges.Keys])}");

        var by = read.By(state, typed.By);
        var at = read.Time(book, key);
        var rows = SampleRow.Of(charge, at).Where(row => !row.Sample.Retired).ToDictionary(row => row.Sample.Name, StringComparer.Ordinal);
        var damaged = Damage(read, tag, typed, rows);
        var weighed = typed.Weights.Where(pair => !string.IsNullOrWhiteSpace(pair.Value)).Select(pair => (Sample: pair.Key, Text: pair.Value!, Weight: read.Grams($"Sample {pair.Key}", pair.Value))).ToList();
        foreach (var (sample, _, _) in weighed.Where(one => !rows.ContainsKey(one.Sample)))
            read.Refuse("Sample", sample, $"a sample of {tag} that can be believed: {string.Join(", ", rows.Keys)}");
        if (weighed.Count == 0 && damaged is null && read.Refusals.Count == 0)
            read.Refuse("Weights", "none", "the weight of at least one sample");
        if (read.Refusals.Count > 0)
            return new Outcome<IReadOnlyList<Entry>>.Refused(read.Refusals);

        var questions = weighed.Where(one => one.Sample != damaged?.Sample).Select(one => Asked(rows[one.Sample], one.Text, one.Weight)).OfType<Refusal>().ToList();
        if (questions.Count > 0 && !typed.Keep)
            return new Outcome<IReadOnlyList<Entry>>.Refused(questions);

        // Regain is data, not an error: it is kept with its cause.
        var gained = weighed.Where(one => one.Sample != damaged?.Sample && one.Weight.Grams > rows[one.Sample].HighG).ToList();
        var unexplained = gained.Where(one => !charge.Gaps.Any(gap => gap.Cause == InterruptionCause.DoorOpen && (gap.To ?? at) > rows[one.Sample].Last.At)).ToList();
        if (unexplained.Count > 0 && string.IsNullOrWhiteSpace(typed.Gained))
            return new Refusal(WhyGained, "nothing", $"a few words why sample {string.Join(", ", unexplained.Select(one => one.Sample))} is heavier: {string.Join(", ", GainCauses)}");

        List<Fact> facts = [.. damaged is null ? [] : new Fact[] { damaged }, .. weighed.Select(one => new SampleWeighed(tag, one.Sample, one.Weight.Grams))];
        if (gained.Count > 0 && !string.IsNullOrWhiteSpace(typed.Gained))
            facts.Add(new NoteWritten($"Sample {string.Join(", ", gained.Select(one => one.Sample))} gained: {typed.Gained.Trim()}.", tag));
        return book.Write([.. facts.Select((fact, index) => new NewEntry(by, fact, at, AsEntered: AsEntered(fact, weighed), Id: index == 0 ? key.Id : key.Numbered(index)))]);
    }

    private static Refusal? Asked(SampleRow row, string text, Mass weight)
    {
        var grams = weight.Grams;
        if (grams >= row.LowG && grams <= row.HighG)
            return null;
        var meant = Meant(row, text, grams);
        var why = meant.Count > 0 ? $"Were these {meant[0].Unit}: {meant[0].Meaning.Words}?"
            : grams < row.LowG ? "Was wood lost? Then write its weight before and after." : "Has it gained? A door left open, or another board.";
        return Question.Of(OutOfTrend(row.Sample.Name), text, string.Create(CultureInfo.InvariantCulture, $"{row.LowG:#,0} to {row.HighG:#,0} g after {row.Last.Weight.Grams:#,0} g on {row.Last.At:d MMM}. {why}")) with { Meant = [.. meant.Select(one => one.Meaning)] };
    }

    /// <summary>What the question about a sample's weight is called.</summary>
    public static string OutOfTrend(string sample) => $"Sample {sample} is out of trend";

    // The same figures in another unit, where the trend has them; a scale that shows pounds may be read without its point.
    private static List<(string Unit, Meaning Meaning)> Meant(SampleRow row, string text, double grams)
    {
        var figures = text[(text.LastIndexOf('=') + 1)..].Trim().TrimEnd(Letters);
        if (Read.Number("", figures) is not Outcome<double>.Done(var number))
            return [];
        return [.. new[] { ("pounds", "lb", number, GramsPerPound), ("kilograms", "kg", number, 1000.0), ("grams", "g", number, 1.0), ("pounds", "lb", number / 1000.0, GramsPerPound) }
            .Where(one => Math.Abs(one.Item3 * one.Item4 - grams) > 1e-6 && one.Item3 * one.Item4 >= row.LowG && one.Item3 * one.Item4 <= row.HighG).Take(1)
            .Select(one => (one.Item1, Say(text, one.Item3, one.Item2, one.Item4)))];
    }

    private static Meaning Say(string text, double number, string unit, double gramsPerUnit) => new(
        string.Create(CultureInfo.InvariantCulture, $"{number:0.###} {unit} = {number * gramsPerUnit:#,0} g"), string.Create(CultureInfo.InvariantCulture, $"{text} = {number:0.###}{unit}"));

    private static SampleDamaged? Damage(Typed read, string tag, RoundTyped typed, Dictionary<string, SampleRow> rows)
    {
        if (string.IsNullOrWhiteSpace(typed.LostFrom))
            return null;
        if (!rows.ContainsKey(typed.LostFrom))
            read.Refuse("Sample that lost wood", typed.LostFrom, $"one of {string.Join(", ", rows.Keys)}");
        var before = read.Grams("Weight before the loss", typed.LostBefore);
        var after = string.IsNullOrWhiteSpace(typed.LostAfter) ? (Mass?)null : read.Grams("Weight after the loss", typed.LostAfter);
        if (after > before)
            read.Refuse("Weight after the loss", typed.LostAfter, $"at most the weight before it, {before.Grams:#,0} g");
        return new(tag, typed.LostFrom, before.Grams, after?.Grams);
    }

    private static Dictionary<string, string>? AsEntered(Fact fact, List<(string Sample, string Text, Mass Weight)> weighed) =>
        fact is SampleWeighed one ? new(StringComparer.Ordinal) { ["weight_g"] = weighed.First(typed => typed.Sample == one.Sample).Text } : null;
}
