using System.Text.Json;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli.Tests;

public sealed class ExampleTests
{
    public static TheoryData<string> Examples() => [.. CommandCatalogue.All.SelectMany(command => command.Examples)];

    public static TheoryData<string> CommandWords() => [.. CommandCatalogue.All.Select(command => command.Words)];

    // The folder the examples are written for: the root of the checkout.
    public ExampleTests() => ExampleFolder.Enter();

    [Theory, MemberData(nameof(Examples))]
    public void Every_example_works_as_printed(string example)
    {
        var (exit, output, error) = ExampleAnswers.AsPrinted(example);

        Assert.True(exit is ExitCode.Done, $"exit {exit}: {error}");
        Assert.NotEmpty(output);
        Assert.Empty(error);
    }

    [Theory, MemberData(nameof(Examples))]
    public void Json_is_one_object_with_snake_case_keys_and_nothing_else(string example)
    {
        var (_, output, _) = ExampleAnswers.Of(example);

        using var json = JsonDocument.Parse(output);
        Assert.Equal(JsonValueKind.Object, json.RootElement.ValueKind);
        Assert.All(json.RootElement.EnumerateObject(), key => Assert.Matches("^[a-z][a-z0-9_]*$", key.Name));
    }

    [Theory, MemberData(nameof(CommandWords))]
    public void Every_command_explains_itself_with_an_example(string words)
    {
        var (exit, output, _) = Terminals.Line(words + " --help");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("Example:  boardwright " + words.Split(' ')[0], output, StringComparison.Ordinal);
        Assert.Contains("--json", output, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(CommandWords))]
    public void An_unknown_option_is_refused_in_one_line_that_names_it_and_what_is_accepted(string words)
    {
        var (exit, output, error) = Terminals.Line(words + " --moon full");

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Empty(output);
        Assert.Single(error.TrimEnd().Split('\n'));
        Assert.Contains("--moon", error, StringComparison.Ordinal);
        Assert.Contains("accepted", error, StringComparison.Ordinal);
    }
}
