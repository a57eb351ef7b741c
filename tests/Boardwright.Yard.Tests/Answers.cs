using System.Text.Json;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Commands;
using Boardwright.Yard.Wire;

namespace Boardwright.Yard.Tests;

/// <summary>Runs a command line through the use cases, without a terminal: what it answers in JSON, refuses, or cannot answer.</summary>
internal static class Answers
{
    /// <summary>The answer's JSON; <paramref name="files"/> stand in for files on disk, by name.</summary>
    public static JsonElement Json(string line, params (string Name, string Text)[] files)
    {
        var done = Assert.IsType<Outcome<object>.Done>(Outcome(line, files));
        return JsonSerializer.Deserialize<JsonElement>(WireJson.Text(done.Value));
    }

    public static IReadOnlyList<Refusal> Refusals(string line, params (string Name, string Text)[] files) =>
        Assert.IsType<Outcome<object>.Refused>(Outcome(line, files)).Reasons;

    public static Refusal Refusal(string line, params (string Name, string Text)[] files) => Assert.Single(Refusals(line, files));

    public static string NoAnswer(string line, params (string Name, string Text)[] files) => Assert.IsType<Outcome<object>.NoAnswer>(Outcome(line, files)).Why;

    public static double Number(this JsonElement answer, string key) => answer.GetProperty(key).GetDouble();

    public static bool IsNull(this JsonElement answer, string key) => answer.GetProperty(key).ValueKind is JsonValueKind.Null;

    public static IReadOnlyList<string> Keys(this JsonElement answer) => [.. answer.EnumerateObject().Select(pair => pair.Name)];

    private static Outcome<object> Outcome(string line, (string Name, string Text)[] files)
    {
        var words = Assert.IsType<Outcome<IReadOnlyList<string>>.Done>(ShellWords.Split(line)).Value.ToArray();
        var two = words.Length > 1 ? CommandCatalogue.Find($"{words[0]} {words[1]}") : null;
        var command = two ?? CommandCatalogue.Find(words[0]) ?? throw new InvalidOperationException($"no command: {line}");
        return Invocation.Read(command, words.AsSpan(two is null ? 1 : 2), new Files(files)).Then(command.Run);
    }

    private sealed class Files((string Name, string Text)[] files) : IAskHost
    {
        public Outcome<string> ReadFile(string what, string path)
        {
            foreach (var (name, text) in files)
            {
                if (name == path)
                    return text;
            }

            var demonstration = Repository.PathOf(path);
            return File.Exists(demonstration) ? File.ReadAllText(demonstration) : new Refusal(what, path, "a file that exists");
        }
    }
}
