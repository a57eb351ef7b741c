using System.Text.Json;
using Boardwright.Quantities;
using Boardwright.Yard.Wire;

namespace Boardwright.Yard.UseCases;

/// <summary>A nested input written as JSON with unit-suffixed keys.</summary>
internal static class InputFile
{
    /// <summary>The text as a record; refused with the place in the file where it goes wrong.</summary>
    public static Outcome<T> Read<T>(string what, string text)
        where T : class
    {
        try
        {
            return JsonSerializer.Deserialize<T>(text, WireJson.Options) is { } read
                ? read
                : new Refusal(what, "null", "a JSON object");
        }
        catch (JsonException fault)
        {
            return new Refusal(what, $"line {fault.LineNumber + 1}, {fault.Path ?? "start"}", "JSON with the keys --help names, numbers without units");
        }
    }
}
