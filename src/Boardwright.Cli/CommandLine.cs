using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli;

/// <summary>Finds the command that the first words name and runs it on the rest.</summary>
public static class CommandLine
{
    public static Outcome<object> Run(ReadOnlySpan<string> words, IAskHost host)
    {
        if (words.Length > 1 && CommandCatalogue.Find($"{words[0]} {words[1]}") is { } two)
        {
            return Invocation.Read(two, words[2..], host).Then(two.Run);
        }

        return words.Length > 0 && CommandCatalogue.Find(words[0]) is { } one
            ? Invocation.Read(one, words[1..], host).Then(one.Run)
            : Unknown(words);
    }

    public static Refusal Unknown(ReadOnlySpan<string> words)
    {
        var noun = words.Length > 0 ? words[0] : "";
        var verbs = CommandCatalogue.All.Where(command => command.Noun == noun).Select(command => command.Words).ToList();
        var accepted = verbs.Count > 0 ? verbs : [.. CommandCatalogue.All.Select(command => command.Noun).Distinct()];
        return new("command", string.Join(' ', words[..Math.Min(2, words.Length)].ToArray()), $"{string.Join(", ", accepted)} (see --help)");
    }
}
