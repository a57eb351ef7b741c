using System.Text;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli.Tests;

/// <summary>The reference of commands as a page, from the same definitions that read the words and write the help.</summary>
internal static class CommandPage
{
    public static string Text()
    {
        var text = new StringBuilder("""
            # Commands

            Written from the commands themselves by `tests/Boardwright.Cli.Tests/CommandPageTests.cs`; a page that is stale fails it.

            `./boardwright NOUN VERB [options]` from the root of a checkout; `boardwright` where it is installed. `--json` prints one JSON object and nothing else; its keys are in snake_case and
            end in their unit. Every quantity carries its unit (`68F 4/4 8ft6in 12% 101.3kPa 964bf`); a bare number for one is refused. Moisture content is on the oven-dry basis.
            Exit: 0 done; 2 the input was refused (what, given, accepted, on standard error); 3 the question has no answer, with the reason; 1 a defect.

            `./boardwright batch [FILE]` reads one command a line and prints one JSON object a line, in order; a bad line never stops the rest. The same commands are at `/api/NOUN/VERB` of a served
            book, except those that read and write files and books of the machine.

            """.ReplaceLineEndings("\n"));
        foreach (var noun in CommandCatalogue.All.GroupBy(command => command.Noun))
        {
            text.Append('\n').Append("## ").Append(noun.Key).Append('\n');
            foreach (var command in noun)
                Write(text, command);
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, Command command)
    {
        var argument = command.Argument switch { null => "", { IsRequired: true } needed => " " + needed.Name, var optional => $" [{optional.Name}]" };
        text.Append("\n### `").Append(command.Words).Append(argument).Append("`\n\n").Append(command.Summary).Append(".\n\n| | |\n| --- | --- |\n");
        if (command.Argument is { } named)
            text.Append("| `").Append(Cell(named.Name)).Append("` | ").Append(Cell(named.Help)).Append(" |\n");
        foreach (var option in command.Options)
            text.Append("| `").Append(Cell($"--{option.Name} {option.Value}".TrimEnd())).Append("` | ").Append(Cell(option.Help)).Append(option.IsRequired ? " (required)" : "").Append(option.Repeats ? " (may be repeated)" : "").Append(" |\n");
        text.Append("\n```\n");
        foreach (var example in command.Examples)
            text.Append("./boardwright ").Append(example).Append('\n');
        text.Append("```\n");
    }

    private static string Cell(string words) => words.Replace("|", "\\|", StringComparison.Ordinal);
}
