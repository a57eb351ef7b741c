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
    private const string WhenKey = "happened_at";
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

    /// <summary>Writes a correction with the changed fields.</summary>
    /// <param name="book">The book.</param>
    /// <param name="number">The entry.</param>
    /// <param name="by">Who says so now.</param>
    /// <param name="reason">Why.</param>
    /// <param name="values">Fields by key; those not named stay.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, long number, string? by, string? reason, IReadOnlyDictionary<string, string> values)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(values);
        return Find(book.State, number).Then(found => found.Standing is not { } standing
            ? new Refusal("entry", $"{number}, taken out", "an entry that stands")
            : Changed(standing, values).Then(changed => book.Write([new NewEntry(by ?? "", changed.Fact, changed.At, standing.Number, Why(reason), changed.Typed)])));
    }

    /// <summary>Takes an entry out by a correction.</summary>
    public static Outcome<IReadOnlyList<Entry>> Withdraw(YardBook book, long number, string? by, string? reason)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Find(book.State, number).Then(found => found.Standing is not { } standing
            ? new Refusal("entry", $"{number}, taken out", "an entry that stands")
            : book.Write([new NewEntry(by ?? "", new Withdrawn(), null, standing.Number, Why(reason))]));
    }

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
