using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli.Tests;

/// <summary>Runs the program in this process and keeps what it printed.</summary>
internal static class Terminals
{
    public static (int Exit, string Output, string Error) Run(string[] words, string input = "", Func<string[], IAskHost, Outcome<object>>? run = null)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        using var from = new StringReader(input);
        var exit = new Terminal(from, output, error, run).Run(words);
        return (exit, output.ToString(), error.ToString());
    }

    public static (int Exit, string Output, string Error) Line(string line, string input = "") => Run(line.Split(' ', StringSplitOptions.RemoveEmptyEntries), input);
}
