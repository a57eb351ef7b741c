using System.Text.Json;
using Boardwright.Testing;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli.Tests;

/// <summary>The promised commands and the keys they return, as data in contract.csv: a[].b is b in every item of the list a.</summary>
public sealed class ContractTests
{
    private static readonly string[] OfTheProgram = ["serve", "batch"];

    public static TheoryData<string, string> Promised() => [.. Rows().Select(row => (row[0], row[1]))];

    [Theory, MemberData(nameof(Promised))]
    public void Promised_command_returns_its_keys(string words, string keys)
    {
        if (OfTheProgram.Contains(words))
        {
            Assert.Contains("Example:", Terminals.Line(words + " --help").Output, StringComparison.Ordinal);
            return;
        }

        var command = Assert.IsType<Command>(CommandCatalogue.Find(words));
        var answers = command.Examples.Select(ExampleAnswers.Of).Where(answer => answer.Exit == ExitCode.Done).Select(answer => JsonDocument.Parse(answer.Output).RootElement).ToList();
        Assert.NotEmpty(answers);
        var missing = answers.Select(answer => keys.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(key => !Has(answer, key.Split('.'))).ToList()).MinBy(left => left.Count)!;
        Assert.True(missing.Count == 0, $"{words}: no example returns all its keys; missing: {string.Join(", ", missing)}");
    }

    [Fact]
    public void Missing_key_would_be_seen()
    {
        var answer = JsonDocument.Parse("""{"a":[{"b":1},{"c":2}],"d":{"e":3},"f":[]}""").RootElement;

        Assert.True(Has(answer, ["d", "e"]));
        Assert.True(Has(answer, ["a[]"]));
        Assert.False(Has(answer, ["a[]", "b"]));
        Assert.False(Has(answer, ["f[]"]));
        Assert.False(Has(answer, ["g"]));
    }

    private static bool Has(JsonElement answer, string[] path)
    {
        if (path.Length == 0)
            return true;

        var name = path[0].TrimEnd('[', ']');
        if (answer.ValueKind != JsonValueKind.Object || !answer.TryGetProperty(name, out var value))
            return false;

        return path[0].EndsWith("[]", StringComparison.Ordinal)
            ? value.ValueKind == JsonValueKind.Array && value.GetArrayLength() > 0 && value.EnumerateArray().All(item => Has(item, path[1..]))
            : Has(value, path[1..]);
    }

    private static IEnumerable<string[]> Rows() =>
        File.ReadAllLines(Repository.PathOf("tests", "Boardwright.Cli.Tests", "contract.csv")).Skip(1).Select(line => line.Split(',', 2));
}
