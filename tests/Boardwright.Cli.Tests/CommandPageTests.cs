using Boardwright.Testing;

namespace Boardwright.Cli.Tests;

/// <summary>docs/commands.md is written from the commands themselves.</summary>
public sealed class CommandPageTests
{
    [Fact]
    public void Page_of_commands_is_the_one_written_from_the_commands()
    {
        var path = Repository.PathOf("docs", "commands.md");
        var expected = CommandPage.Text();
        var found = File.Exists(path) ? File.ReadAllText(path) : "";

        if (found != expected)
            File.WriteAllText(path, expected);

        Assert.True(found == expected, "docs/commands.md was stale and is written anew: look at it and commit it.");
    }
}
