using System.Globalization;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Wire;

namespace Boardwright.Yard.UseCases;

/// <summary>How a field of an entry is filled.</summary>
public enum EntryInputKind
{
    Words,
    Figure,
    Tick,
    Day,
    Time,
    Choice,
    List,
}

/// <summary>One field of an entry's form.</summary>
/// <param name="Key">Its name in the fact.</param>
/// <param name="Label">In words.</param>
/// <param name="Unit">Its unit; another may be typed with the figure.</param>
/// <param name="IsRequired">The entry needs it.</param>
/// <param name="Choices">What it may be: all of it for a choice, a help for words.</param>
public sealed record EntryInput(string Key, string Label, string Unit, EntryInputKind Kind, bool IsRequired, IReadOnlyList<string> Choices);

/// <summary>Entries that have no page of their own: a form follows from the fact itself, so that whatever happened can be written.</summary>
public static class EntryWrite
{
    private const string TimeForm = "yyyy-MM-dd HH:mm";

    /// <summary>Kinds that are offered, each in the words of a person.</summary>
    public static IReadOnlyList<(string Kind, string Words)> Offered { get; } =
    [
        ("equipment_down", "A boiler or kiln stopped"), ("equipment_promised", "It is promised for another day"), ("equipment_back", "It works again"), ("boiler_stoked", "A boiler was stoked"),
        ("fuel_counted", "Fuel wood was counted"), ("sensor_placed", "A sensor was placed in a kiln, or changed"), ("interrupted", "A charge was interrupted: power, door, heat"), ("sample_damaged", "A sample was dropped or broken"), ("heat_treated", "A charge was heat treated"),
        ("metal_scanned", "A log was scanned for metal"), ("blade_struck", "The blade hit metal"), ("log_seen", "Seen on a log: sweep, rot, heart off the middle, splits, grade"), ("end_coated", "Ends of a log were coated"), ("tag_lost", "A tag is gone or doubtful"),
        ("tag_proven", "An item is known again"), ("species_corrected", "It is another species"), ("stack_counted", "A stack was counted again"), ("stack_taken_from", "Boards were taken from a stack"),
        ("stack_reserved", "A stack is kept for somebody"), ("stack_dressed", "Boards were planed"), ("custom_planed", "Somebody’s own wood was planed"), ("shavings_emptied", "The shavings bin was emptied"),
        ("order_answered", "A customer was answered"), ("order_change_asked", "A customer asks for a change"), ("order_change_settled", "A change is settled"), ("order_withdrawn", "An order is off"),
        ("complained", "A customer is not content"), ("customers_joined", "Two names are one customer"),
        ("phone_call_taken", "Somebody rang"), ("person_away", "Somebody is away"), ("day_closed", "The yard is closed on a day"), ("note_written", "A remark"),
    ];

    private static readonly Dictionary<string, Type> Types = typeof(Fact).GetCustomAttributes<JsonDerivedTypeAttribute>().ToDictionary(one => (string)one.TypeDiscriminator!, one => one.DerivedType, StringComparer.Ordinal);

    /// <summary>The fields of a kind, with what the yard has to choose from.</summary>
    public static Outcome<IReadOnlyList<EntryInput>> Inputs(YardState state, string kind)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!Offered.Any(one => one.Kind == kind))
            return new Refusal("entry", kind ?? "", string.Join(", ", Offered.Select(one => one.Kind)));
        var parameters = Types[kind!].GetConstructors()[0].GetParameters();
        return new Outcome<IReadOnlyList<EntryInput>>.Done([.. parameters.Select(parameter => Input(state, parameter)).OfType<EntryInput>()]);
    }

    /// <summary>Writes an entry from its filled form.</summary>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string kind, IReadOnlyDictionary<string, string> values, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(key);
        return Inputs(book.State, kind).Then(inputs =>
        {
            var typed = new Typed();
            var node = new JsonObject { ["kind"] = kind };
            var asEntered = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var input in inputs)
            {
                var given = values.GetValueOrDefault(input.Key)?.Trim() ?? "";
                if (Value(input, given) is Outcome<JsonNode?>.Done(var value))
                    node[input.Key] = value;
                else
                    typed.Refuse(input.Label, given, Accepted(input));
                if (input.Kind == EntryInputKind.Figure && given.Length > 0)
                    asEntered[input.Key] = given;
            }

            var person = typed.By(book.State, by);
            return typed.Then(() => key.Write(book, person, BookJson.ReadFact(Filled(node).ToJsonString()), asEntered.Count > 0 ? asEntered : null));
        });
    }

    // Open values are left out, as the book keeps them.
    private static JsonObject Filled(JsonObject node) => new(node.Where(pair => pair.Value is not null).Select(pair => KeyValuePair.Create(pair.Key, pair.Value?.DeepClone())));

    private static EntryInput? Input(YardState state, ParameterInfo parameter)
    {
        var key = JsonNamingPolicy.SnakeCaseLower.ConvertName(parameter.Name!);
        var type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        var (label, unit) = UnitSuffix.Part(key);
        EntryInputKind? kind = type == typeof(string) ? EntryInputKind.Words
            : type == typeof(double) || type == typeof(int) || type == typeof(decimal) ? EntryInputKind.Figure
            : type == typeof(bool) ? EntryInputKind.Tick
            : type == typeof(DateOnly) ? EntryInputKind.Day
            : type == typeof(DateTime) ? EntryInputKind.Time
            : type.IsEnum ? EntryInputKind.Choice
            : type == typeof(IReadOnlyList<string>) ? EntryInputKind.List
            : null;
        IReadOnlyList<string> choices = type.IsEnum ? [.. Enum.GetNames(type).Select(JsonNamingPolicy.SnakeCaseLower.ConvertName)] : Names(state, key);
        var required = !parameter.HasDefaultValue && kind is not (EntryInputKind.Tick or EntryInputKind.List);
        return kind is { } known ? new(key, label, unit, known, required, choices) : null;
    }

    private static IReadOnlyList<string> Names(YardState state, string key) => key switch
    {
        "equipment" => [.. state.Kilns.Keys, .. state.Boilers.Keys],
        "boiler" => [.. state.Boilers.Keys],
        "kiln" => [.. state.Kilns.Keys],
        "schedule" => [.. state.Schedules.Keys],
        "topic" => [.. state.Sensors.Keys],
        "charge" => [.. state.Charges.Values.Where(charge => charge.IsRunning).Select(charge => charge.Tag)],
        "log" => [.. state.Logs.Values.Where(log => !log.IsSawn).Select(log => log.Tag)],
        "stack" => [.. state.Stacks.Values.Where(stack => stack.IsHere).Select(stack => stack.Tag)],
        "order" or "reserved_for" => [.. state.Orders.Values.Where(order => order.IsOpen).Select(order => order.Tag)],
        "item" or "confused_with" => [.. state.Logs.Values.Where(log => !log.IsSawn).Select(log => log.Tag), .. state.Stacks.Values.Where(stack => stack.IsHere).Select(stack => stack.Tag), .. state.Packs.Values.Where(pack => pack.IsHere).Select(pack => pack.Tag)],
        "customer" or "same_as" => Customers.Names(state),
        "place" => [.. state.Places.Keys],
        "person" => [.. state.People.Keys],
        "species" => [.. SpeciesTable.All.Select(species => species.CommonName)],
        _ => [],
    };

    private static Outcome<JsonNode?> Value(EntryInput input, string given)
    {
        if (input.Kind == EntryInputKind.Tick)
            return JsonValue.Create(given is "true" or "on" or "yes");
        if (input.Kind == EntryInputKind.List)
            return new JsonArray([.. given.Split([',', ';', ' '], StringSplitOptions.RemoveEmptyEntries).Select(name => (JsonNode?)JsonValue.Create(name))]);
        if (given.Length == 0)
            return input.IsRequired ? new Refusal(input.Label, "", Accepted(input)) : new Outcome<JsonNode?>.Done(null);
        return input.Kind switch
        {
            EntryInputKind.Figure => EntryCorrect.Figure(new(input.Key, input.Label, input.Unit, "", null), given).Then<JsonNode?>(number => JsonValue.Create(number)),
            EntryInputKind.Day => DateOnly.TryParseExact(given, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _) ? JsonValue.Create(given) : new Refusal(input.Label, given, Accepted(input)),
            EntryInputKind.Time => DateTime.TryParseExact(given, [TimeForm, "yyyy-MM-ddTHH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var at)
                ? JsonValue.Create(at.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture)) : new Refusal(input.Label, given, Accepted(input)),
            EntryInputKind.Choice => input.Choices.Contains(given) ? JsonValue.Create(given) : new Refusal(input.Label, given, Accepted(input)),
            _ => JsonValue.Create(given),
        };
    }

    private static string Accepted(EntryInput input) => input.Kind switch
    {
        EntryInputKind.Figure => input.Unit.Length > 0 ? $"a number of {input.Unit}, or with a unit of its own" : "a number",
        EntryInputKind.Day => "a day as 2026-11-02",
        EntryInputKind.Time => "a time as 2026-11-02 06:10",
        EntryInputKind.Choice => string.Join(", ", input.Choices),
        _ => input.Choices.Count > 0 ? $"such as {NearestNames.Of("", input.Choices)}" : "words",
    };
}
