using System.Collections.Concurrent;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli.Tests;

/// <summary>The examples at a terminal, each worked out once in a test run however it is printed: a plan takes its seconds.</summary>
internal static class ExampleAnswers
{
    private static readonly ConcurrentDictionary<string, Lazy<Outcome<object>>> Known = new(StringComparer.Ordinal);

    /// <summary>As it is printed in the help.</summary>
    public static (int Exit, string Output, string Error) AsPrinted(string example) => Run([.. Words(example)]);

    /// <summary>In JSON.</summary>
    public static (int Exit, string Output, string Error) Of(string example) => Run([.. Words(example).Where(word => word != "--json"), "--json"]);

    private static IReadOnlyList<string> Words(string example) => Assert.IsType<Outcome<IReadOnlyList<string>>.Done>(ShellWords.Split(example)).Value;

    private static (int Exit, string Output, string Error) Run(string[] words)
    {
        ExampleFolder.Enter();
        return Terminals.Run(words, run: (asked, host) => Known.GetOrAdd(string.Join('\n', asked), _ => new(() => CommandLine.Run(asked, host))).Value);
    }
}
