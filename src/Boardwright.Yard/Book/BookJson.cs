using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book;

/// <summary>The one JSON form of entries and facts: snake_case names that end in their unit, one line each.</summary>
public static class BookJson
{
    /// <summary>Strict both ways: an unknown member, a missing one or a null where none belongs is an error, not a guess.</summary>
    public static JsonSerializerOptions Options { get; } = Make();

    /// <summary>An entry on one line.</summary>
    public static string Line(Entry entry) => JsonSerializer.Serialize(entry, Options);

    /// <summary>A fact on one line, its kind first.</summary>
    public static string Line(Fact fact) => JsonSerializer.Serialize(fact, Options);

    /// <summary>A fact's kind, as its line names it.</summary>
    public static string Kind(Fact fact)
    {
        using var line = JsonDocument.Parse(Line(fact));
        return line.RootElement.GetProperty("kind").GetString()!;
    }

    /// <summary>Reads an entry.</summary>
    /// <exception cref="JsonException">Not an entry.</exception>
    public static Entry ReadEntry(string line) => JsonSerializer.Deserialize<Entry>(line, Options) ?? throw new JsonException("An entry is not null.");

    /// <summary>Reads a fact.</summary>
    /// <exception cref="JsonException">Not a fact.</exception>
    public static Fact ReadFact(string line) => JsonSerializer.Deserialize<Fact>(line, Options) ?? throw new JsonException("A fact is not null.");

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            RespectRequiredConstructorParameters = true,
            RespectNullableAnnotations = true,
            AllowOutOfOrderMetadataProperties = true,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower, allowIntegerValues: false));
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }
}
