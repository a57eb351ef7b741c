using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli.Tests;

/// <summary>Worked examples of the documents: every console block that runs the program must print what it shows. A line of "…" leaves out the rest.</summary>
public sealed class MethodPageTests
{
    private const string Prompt = "$ ./boardwright ";

    // The folder the examples are written for: the root of the checkout.
    public MethodPageTests() => ExampleFolder.Enter();

    public static TheoryData<string, string, string> Examples()
    {
        var examples = new TheoryData<string, string, string>();
        foreach (var page in Directory.EnumerateFiles(Repository.PathOf("docs"), "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            foreach (var (command, output) in Blocks(File.ReadAllLines(page)))
                examples.Add(Path.GetFileName(page), command, output);
        }

        return examples;
    }

    [Theory, MemberData(nameof(Examples))]
    public void A_worked_example_prints_what_the_page_shows(string page, string command, string expected)
    {
        var words = Assert.IsType<Outcome<IReadOnlyList<string>>.Done>(ShellWords.Split(command)).Value;

        var (_, output, error) = Terminals.Run([.. words]);

        var printed = Lines(output + error);
        var shown = Lines(expected);
        var end = Array.IndexOf(shown, "…");
        Assert.True(shown.Length > 0, $"{page}: no output is shown for {command}");
        Assert.Equal(end < 0 ? shown : shown[..end], end < 0 ? printed : printed[..Math.Min(end, printed.Length)]);
    }

    private static string[] Lines(string text) => [.. text.TrimEnd().Split('\n').Select(line => line.TrimEnd())];

    private static IEnumerable<(string Command, string Output)> Blocks(string[] lines)
    {
        var inside = false;
        string? command = null;
        var output = new List<string>();
        foreach (var line in lines)
        {
            if (line.StartsWith("```", StringComparison.Ordinal) || (inside && line.StartsWith(Prompt, StringComparison.Ordinal)))
            {
                if (command is not null)
                    yield return (command, string.Join('\n', output));

                command = inside && line.StartsWith(Prompt, StringComparison.Ordinal) ? line[Prompt.Length..] : null;
                output.Clear();
                inside = command is not null || (!inside && line.StartsWith("```console", StringComparison.Ordinal));
            }
            else if (command is not null)
            {
                output.Add(line);
            }
        }
    }
}
