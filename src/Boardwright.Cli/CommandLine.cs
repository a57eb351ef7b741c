using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli;

/// <summary>Finds the command that the first words name and runs it on the rest.</summary>
public static class CommandLine
{
    private static readonly string[] Apart = ["serve", "batch"];

    public static Outcome<object> Run(ReadOnlySpan<string> words, IAskHost host)
    {
        if (words.Length > 1 && CommandCatalogue.Find($"{words[0]} {words[1]}") is { } two)
        {
            return Invocation.Read(two, words[2..], host).Then(two.Run);
        }

        if (words.Length > 0 && CommandCatalogue.Find(words[0]) is { } one)
        {
            return Invocation.Read(one, words[1..], host).Then(one.Run);
        }

        return Unknown(words);
    }

    /// <summary>Words that are no command, with the nearest one first.</summary>
    public static Refusal Unknown(ReadOnlySpan<string> words)
    {
        var noun = words.Length > 0 ? words[0] : "";
        List<string> all = [.. CommandCatalogue.All.Select(command => command.Words), .. Apart];
        var ofNoun = all.Where(known => known.StartsWith(noun + " ", StringComparison.Ordinal)).ToList();
        var given = string.Join(' ', words[..Math.Min(2, words.Length)].ToArray().TakeWhile(word => !word.StartsWith("--", StringComparison.Ordinal)));
        var accepted = ofNoun.Count > 0 ? ofNoun : [.. all.Select(known => known.Split(' ')[0]).Distinct()];
        var near = NearestWord.Of(given, ofNoun.Count > 0 ? ofNoun : all) ?? NearestWord.Of(noun, accepted);
        return new("command", given, near is null ? $"{string.Join(", ", accepted)} (see --help)" : $"{near}? Otherwise: {string.Join(", ", accepted.Where(known => known != near))} (see --help)");
    }
}
