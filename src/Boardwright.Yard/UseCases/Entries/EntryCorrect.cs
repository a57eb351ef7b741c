using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Wire;

namespace Boardwright.Yard.UseCases;

/// <summary>A figure or word of an entry that can be corrected.</summary>
/// <param name="Key">Its name in the fact, such as wood_c.</param>
/// <param name="Label">In words.</param>
/// <param name="Unit">Its unit: as it was typed, else as a mill says it; empty for words.</param>
/// <param name="Value">As it stands, in that unit.</param>
/// <param name="Typed">As it was typed, where it was.</param>
public sealed record EntryField(string Key, string Label, string Unit, string Value, string? Typed);

/// <summary>Corrects an entry by a new entry that names it. Nothing is changed or removed; a withdrawal is a correction too.</summary>
public static class EntryCorrect
{
    internal const string WhenKey = "happened_at";
    private const string WhenForm = "yyyy-MM-dd HH:mm";

    /// <summary>The plain figures and words of an entry, the time it happened first.</summary>
    public static IReadOnlyList<EntryField> Fields(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        var fields = EntryWords.Node(entry.Fact).Where(pair => pair.Key != "kind" && pair.Value is JsonValue).Select(pair =>
        {
            var unit = EntryUnits.Shown(pair.Key, entry.Typed(pair.Key));
            return new EntryField(pair.Key, EntryUnits.Label(pair.Key), unit, Shown(pair.Key, unit, pair.Value!.AsValue()), entry.Typed(pair.Key));
        });
        return [new(WhenKey, "happened", "", entry.HappenedAt.ToString(WhenForm, CultureInfo.InvariantCulture), null), .. fields];
    }

    /// <summary>The standing version of the entry a number belongs to, and all its versions, oldest first.</summary>
    public static Outcome<(Entry? Standing, IReadOnlyList<Entry> Versions)> Find(YardState state, long number)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (number < 1 || number > state.Entries.Count)
            return new Refusal("entry", $"{number}", $"1 to {state.Entries.Count}");
        var place = state.Entry(number);
        while (place.Corrects is { } old)
            place = state.Entry(old);
        var standing = Corrections.Standing(state.Entries).Where(s => s.Place == place.Number).Select(s => s.Entry).FirstOrDefault();
        return (standing, state.Versions(place.Number));
    }

    /// <summary>Writes a correction with the changed fields. A field that somebody else changed since the form was opened stays as it stands, and what was typed is laid beside it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="number">The entry.</param>
    /// <param name="by">Who says so now.</param>
    /// <param name="reason">Why.</param>
    /// <param name="values">Fields by key; those not named stay.</param>
    /// <param name="key">Of the form; null for none.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, long number, string? by, string? reason, IReadOnlyDictionary<string, string> values, PostedKey? key = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(values);
        var (state, form) = (book.State, key ?? PostedKey.None);
        if (form.Id is { } id && state.Entries.Where(entry => entry.Id == id).ToList() is { Count: > 0 } kept)
            return kept;
        return Find(state, number).Then(found => found.Standing is not { } standing
            ? new Refusal("entry", $"{number}, taken out", "an entry that stands")
            : EntryMerge.Of(found.Versions, standing, AsSeen(state, standing, form), by, values).Then(merged => Parts(book, standing, merged, by, reason, form)).Then(book.Write));
    }

    /// <summary>Takes an entry out by a correction; refused where somebody else corrected it since the form was opened.</summary>
    public static Outcome<IReadOnlyList<Entry>> Withdraw(YardBook book, long number, string? by, string? reason, PostedKey? key = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        var (state, form) = (book.State, key ?? PostedKey.None);
        if (form.Id is { } id && state.Entries.Where(entry => entry.Id == id).ToList() is { Count: > 0 } kept)
            return kept;
        return Find(state, number).Then(found => found.Standing is not { } standing
            ? new Refusal("entry", $"{number}, taken out", "an entry that stands")
            : AsSeen(state, standing, form).Number != standing.Number && standing.By != by ? new Refusal("entry", $"{number}", $"an entry as you saw it; {standing.By} corrected it since this form was opened: open it again")
            : book.Write([new NewEntry(by ?? "", new Withdrawn(), null, standing.Number, Why(reason), Id: form.Id)]));
    }

    /// <summary>A figure as it is typed, with the unit it is shown in where that can be read back.</summary>
    internal static string WithUnit(string given, string unit) =>
        unit is "in" or "ft" or "mm" or "m" or "°F" or "°C" or "g" or "kg" or "lb" && given.Length > 0 && !given.Any(char.IsLetter) ? $"{given} {EntryUnits.Written(unit)}" : given;

    // The correction of what nobody else changed, and a value beside for each field that somebody did.
    private static Outcome<IReadOnlyList<NewEntry>> Parts(YardBook book, Entry standing, EntryMerge merged, string? by, string? reason, PostedKey form)
    {
        foreach (var (field, value) in merged.Beside)
        {
            if (Changed(standing, new Dictionary<string, string>(StringComparer.Ordinal) { [field] = value }) is Outcome<(Fact Fact, DateTime At, Dictionary<string, string>? Typed)>.Refused(var unread))
                return new Outcome<IReadOnlyList<NewEntry>>.Refused(unread);
        }

        var correction = merged.Beside.Count > 0 && merged.Taken.Count == 0 ? new Outcome<IReadOnlyList<NewEntry>>.Done([])
            : Changed(standing, merged.Taken).Then<IReadOnlyList<NewEntry>>(changed => new Outcome<IReadOnlyList<NewEntry>>.Done([new NewEntry(by ?? "", changed.Fact, changed.At, standing.Number, Why(reason), changed.Typed, form.Id)]));
        return correction.Then(first => form.Time(book).Then<IReadOnlyList<NewEntry>>(at => new Outcome<IReadOnlyList<NewEntry>>.Done(
            [.. first, .. merged.Beside.Select((one, index) => new NewEntry(by ?? "", new ValueBeside(standing.Number, one.Field, one.Value), at, Id: first.Count + index == 0 ? form.Id : form.Numbered(first.Count + index)))])));
    }

    // The version that stood when the form was opened.
    private static Entry AsSeen(YardState state, Entry standing, PostedKey form)
    {
        if (form.SeenEntry is not { } seen || seen >= standing.Number || seen < 1)
            return standing;
        var place = standing;
        while (place.Corrects is { } old)
            place = state.Entry(old);
        return Corrections.Standing([.. state.Entries.Take((int)seen)]).Where(one => one.Place == place.Number).Select(one => one.Entry).FirstOrDefault() ?? standing;
    }

    /// <summary>The correction of an entry, not yet written.</summary>
    internal static Outcome<NewEntry> Correction(Entry standing, string by, string reason, IReadOnlyDictionary<string, string> values) =>
        Changed(standing, values).Then<NewEntry>(changed => new NewEntry(by, changed.Fact, changed.At, standing.Number, reason, changed.Typed));

    private static string? Why(string? reason) => string.IsNullOrWhiteSpace(reason) ? null : reason;

    private static Outcome<(Fact Fact, DateTime At, Dictionary<string, string>? Typed)> Changed(Entry standing, IReadOnlyDictionary<string, string> values)
    {
        var node = EntryWords.Node(standing.Fact);
        var typed = new Dictionary<string, string>(standing.AsEntered ?? new Dictionary<string, string>(), StringComparer.Ordinal);
        var refusals = new List<Refusal>();
        var (at, count) = (standing.HappenedAt, 0);
        foreach (var field in Fields(standing))
        {
            if (!values.TryGetValue(field.Key, out var given) || given.Trim() == field.Value)
                continue;
            count++;
            if (field.Key == WhenKey)
            {
                if (!DateTime.TryParseExact(given.Trim(), [WhenForm, "yyyy-MM-ddTHH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out at))
                    refusals.Add(new("happened", given, $"a time as {standing.HappenedAt.ToString(WhenForm, CultureInfo.InvariantCulture)}"));
                continue;
            }

            var read = Value(node[field.Key]!.AsValue(), field, given.Trim());
            if (read is Outcome<JsonNode>.Done(var value))
                (node[field.Key], typed[field.Key]) = (value, given.Trim());
            else if (read is Outcome<JsonNode>.Refused { Reasons: [{ Meant.Count: > 0 } asked] })
                refusals.Add(asked);
            else
                refusals.Add(new(field.Label, given, field.Unit.Length > 0 ? $"a number of {field.Unit}" : "a number"));
        }

        if (refusals.Count > 0)
            return new Outcome<(Fact, DateTime, Dictionary<string, string>?)>.Refused(refusals);
        if (count == 0)
            return new Refusal("correction", "nothing changed", "at least one figure that is another now; or take the entry out");
        try
        {
            return (BookJson.ReadFact(node.ToJsonString()), at, typed.Count > 0 ? typed : null);
        }
        catch (JsonException)
        {
            return new Refusal("correction", string.Join(", ", values.Where(pair => node.ContainsKey(pair.Key)).Select(pair => $"{UnitSuffix.Part(pair.Key).Label} {pair.Value}")), "words and days as they stood: dates as 2026-11-02, yes and no as true and false, kinds spelled as before");
        }
    }

    // Five figures tell a mill all it can use; a field left as shown keeps its full value.
    private static string Shown(string key, string unit, JsonValue value) =>
        value.GetValueKind() == JsonValueKind.Number && EntryUnits.From(key, unit, value.GetValue<double>()) is var number ? number.ToString(Math.Abs(number) < 1000.0 ? "0.####" : "0.##", CultureInfo.InvariantCulture) : value.ToString();

    // A bare figure is in the unit shown; with a unit of its own it is turned into that.
    internal static Outcome<double> Figure(EntryField field, string given) => !given.Any(char.IsLetter) && field.Unit == UnitSuffix.Part(field.Key).Unit ? Read.Number(field.Label, given.TrimEnd('%', ' '))
        : Measured(field, given.Any(char.IsLetter) ? given : given + EntryUnits.Written(field.Unit));

    private static Outcome<double> Measured(EntryField field, string given) => UnitSuffix.Part(field.Key).Unit switch
    {
        "°C" => Read.Temperature(field.Label, given).Then<double>(value => value.Celsius),
        "mm" => Read.Length(field.Label, given).Then<double>(value => value.Millimetres),
        "m" when field.Unit == "ft" && given.EndsWith("ft", StringComparison.Ordinal) => SizeTyped.Along(field.Label, given[..^2], "ft", SizeTyped.Longest(null)).Then<double>(size => size.Length.Metres),
        "m" => Read.Length(field.Label, given).Then<double>(value => value.Metres),
        "g" => Read.Mass(field.Label, given).Then<double>(value => value.Grams),
        "kg" => Read.Mass(field.Label, given).Then<double>(value => value.Kilograms),
        _ => Read.Number(field.Label, given),
    };

    private static Outcome<JsonNode> Value(JsonValue old, EntryField field, string given) => old.GetValueKind() switch
    {
        JsonValueKind.Number => Figure(field, given).Then<JsonNode>(number => JsonValue.Create(number)),
        JsonValueKind.True or JsonValueKind.False => given.ToUpperInvariant() is "TRUE" or "YES" ? JsonValue.Create(true) : given.ToUpperInvariant() is "FALSE" or "NO" ? JsonValue.Create(false) : new Refusal(field.Label, given, "yes or no"),
        _ => JsonValue.Create(given)!,
    };
}
