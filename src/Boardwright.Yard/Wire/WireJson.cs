using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace Boardwright.Yard.Wire;

/// <summary>The one JSON form of Boardwright: snake_case keys that end in their unit, full precision, nulls shown, ISO dates.</summary>
public static class WireJson
{
    public static JsonSerializerOptions Options { get; } = Make();

    public static string Text(object answer) => JsonSerializer.Serialize(answer, answer.GetType(), Options);

    public static JsonNode Node(object answer) => JsonSerializer.SerializeToNode(answer, answer.GetType(), Options)!;

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.Web)
        {
            PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
            DictionaryKeyPolicy = null,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            AllowTrailingCommas = true,
            ReadCommentHandling = JsonCommentHandling.Skip,
        };
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower));
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }
}
