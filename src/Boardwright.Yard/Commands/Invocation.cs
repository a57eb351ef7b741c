using Boardwright.Quantities;

namespace Boardwright.Yard.Commands;

/// <summary>Words of a command line turned into a request.</summary>
public static class Invocation
{
    /// <summary>Reads the words after the command's own: options with values, flags, at most one argument.</summary>
    public static Outcome<Ask> Read(Command command, ReadOnlySpan<string> words, IAskHost host)
    {
        ArgumentNullException.ThrowIfNull(command);
        var texts = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        string? argument = null;
        for (var index = 0; index < words.Length; index++)
        {
            var word = words[index];
            if (!word.StartsWith("--", StringComparison.Ordinal))
            {
                if (command.Argument is null)
                {
                    return new Refusal(command.Words, word, Accepted(command));
                }

                if (argument is not null)
                {
                    return new Refusal(command.Argument.Name, $"{argument} {word}", $"one {command.Argument.Name} only; words that belong together stand in quotes");
                }

                argument = word;
                continue;
            }

            var equals = word.IndexOf('=', StringComparison.Ordinal);
            var name = equals < 0 ? word[2..] : word[2..equals];
            if (command.FindOption(name) is not { } option)
            {
                return new Refusal($"option of {command.Words}", word, Accepted(command, "--" + name));
            }

            string value;
            if (equals >= 0)
            {
                value = word[(equals + 1)..];
            }
            else if (option.IsFlag)
            {
                value = "yes";
            }
            else if (++index < words.Length)
            {
                value = words[index];
            }
            else
            {
                return new Refusal("--" + name, "nothing after it", $"{option.Value}: {option.Help}");
            }

            if (!texts.TryGetValue(name, out var given))
            {
                texts[name] = [value];
            }
            else if (option.Repeats)
            {
                texts[name] = [.. given, value];
            }
            else
            {
                return new Refusal("--" + name, value, $"one value only; {given[0]} was given before");
            }
        }

        return Of(command, texts, argument, host);
    }

    /// <summary>A request from options already taken apart (a query string, a form).</summary>
    public static Outcome<Ask> Of(Command command, IReadOnlyDictionary<string, IReadOnlyList<string>> texts, string? argument, IAskHost host)
    {
        ArgumentNullException.ThrowIfNull(command);
        ArgumentNullException.ThrowIfNull(texts);
        if (texts.Keys.FirstOrDefault(name => command.FindOption(name) is null) is { } unknown)
        {
            return new Refusal($"option of {command.Words}", "--" + unknown, Accepted(command, "--" + unknown));
        }

        var missing = command.Options.Where(option => option.IsRequired && !texts.ContainsKey(option.Name))
            .Select(option => new Refusal("--" + option.Name, "nothing", $"{option.Value}: {option.Help}")).ToList();
        if (command.Argument is { IsRequired: true } needed && argument is null)
        {
            missing.Insert(0, new Refusal(needed.Name, "nothing", needed.Help));
        }

        return missing.Count > 0 ? new Outcome<Ask>.Refused(missing) : new Ask(command, texts, argument, host);
    }

    // What the word is nearest to stands first.
    private static string Accepted(Command command, string? given = null)
    {
        var words = command.Options.Select(option => "--" + option.Name).ToList();
        var all = string.Join(' ', command.Argument is null ? words : words.Prepend(command.Argument.Name));
        return given is not null && NearestWord.Of(given, words) is { } near ? $"{near}, or another of {all}" : all;
    }
}
