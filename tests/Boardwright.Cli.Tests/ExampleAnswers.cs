using System.Collections.Concurrent;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli.Tests;

/// <summary>What each example answers in JSON, run once in a test run: a plan takes its seconds.</summary>
internal static class ExampleAnswers
{
    private static readonly ConcurrentDictionary<string, Lazy<(int Exit, string Output, string Error)>> Known = new();

    public static (int Exit, string Output, string Error) Of(string example) => Known.GetOrAdd(example, static line => new(() =>
    {
        ExampleFolder.Enter();
        var words = Assert.IsType<Outcome<IReadOnlyList<string>>.Done>(ShellWords.Split(line)).Value;
        return Terminals.Run([.. words.Where(word => word != "--json"), "--json"]);
    })).Value;
}
