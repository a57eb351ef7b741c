using Boardwright.Yard.Commands;

namespace Boardwright.Cli;

/// <summary>The help texts, written from the same definitions that read the words.</summary>
public static class Help
{
    private static readonly (string Words, string Summary)[] Apart =
    [
        ("serve", "the book's pages on this machine (see serve --help)"),
        ("batch [FILE]", "one command a line in, one JSON object a line out"),
        ("--version", "which version this is"),
    ];

    public static void Program(TextWriter output)
    {
        output.WriteLine("Boardwright: the record and the computation of a small hardwood mill.");
        output.WriteLine();
        output.WriteLine("  boardwright NOUN VERB [options]      add --help for one command, --json for JSON");
        output.WriteLine();
        var rows = CommandCatalogue.All.Select(command => (Usage(command), command.Summary)).Concat(Apart).ToList();
        var width = rows.Max(row => row.Item1.Length);
        foreach (var (words, summary) in rows)
        {
            output.WriteLine($"  {words.PadRight(width)}  {summary}");
        }

        output.WriteLine();
        output.WriteLine("Every quantity carries its unit: 68F, 4/4, 8ft6in, 12%, 101.3kPa, 964bf. Moisture content is on the oven-dry basis.");
        output.WriteLine("Exit: 0 done, 2 the input was refused, 3 the question has no answer, 1 a defect. A refusal is one line of text on standard error, with --json too.");
        output.WriteLine();
        output.WriteLine("Example:  boardwright air state --dry-bulb 110F --wet-bulb 106F");
    }

    public static void Noun(string noun, IReadOnlyList<Command> commands, TextWriter output)
    {
        output.WriteLine($"boardwright {noun}:");
        var width = commands.Max(command => Usage(command).Length);
        foreach (var command in commands)
        {
            output.WriteLine($"  {Usage(command).PadRight(width)}  {command.Summary}");
        }

        output.WriteLine();
        output.WriteLine($"Example:  boardwright {commands.SelectMany(command => command.Examples).First()}");
    }

    public static void Command(Command command, TextWriter output)
    {
        output.WriteLine($"boardwright {Usage(command)}");
        output.WriteLine($"  {command.Summary}");
        output.WriteLine();
        var rows = command.Options.Select(option => ($"--{option.Name} {option.Value}".TrimEnd(), Describe(option))).ToList();
        if (command.Argument is { } argument)
        {
            rows.Insert(0, (argument.Name, argument.Help));
        }

        rows.Add(("--json", "one JSON object instead of text"));
        var width = rows.Max(row => row.Item1.Length);
        foreach (var (name, help) in rows)
        {
            output.WriteLine($"  {name.PadRight(width)}  {help}");
        }

        foreach (var example in command.Examples)
        {
            output.WriteLine();
            output.WriteLine($"Example:  boardwright {example}");
        }
    }

    public static void Serve(TextWriter output)
    {
        output.WriteLine("boardwright serve");
        output.WriteLine("  Serves the book's pages and the commands on 127.0.0.1; the address is printed.");
        output.WriteLine();
        foreach (var (words, help) in ServeOptions.Described)
        {
            output.WriteLine($"  {words,-19}  {help}");
        }

        output.WriteLine();
        output.WriteLine("Example:  boardwright serve --data data --demo demo");
    }

    public static void Batch(TextWriter output)
    {
        output.WriteLine("boardwright batch [FILE]");
        output.WriteLine("  Reads one command a line (the same words, without the program's name) from a file or standard input");
        output.WriteLine("  and prints one JSON object a line: {\"ok\":true,\"result\":{...}} or {\"ok\":false,\"exit\":2,\"error\":\"...\"}.");
        output.WriteLine("  Empty lines and lines that start with # are passed over.");
        output.WriteLine();
        output.WriteLine("Example:  echo \"air state --dry-bulb 20C --rh 65%\" | boardwright batch");
    }

    private static string Usage(Command command)
    {
        var argument = command.Argument switch
        {
            null => "",
            { IsRequired: true } needed => " " + needed.Name,
            var optional => $" [{optional.Name}]",
        };
        return command.Words + argument;
    }

    private static string Describe(Option option) =>
        option.Help + (option.IsRequired ? " (required)" : "") + (option.Repeats ? " (may be repeated)" : "");
}
