namespace Boardwright.Cli.Tests;

/// <summary>Runs the program in this process and keeps what it printed.</summary>
internal static class Terminals
{
    public static (int Exit, string Output, string Error) Run(string[] words, string input = "")
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        using var from = new StringReader(input);
        var exit = new Terminal(from, output, error).Run(words);
        return (exit, output.ToString(), error.ToString());
    }

    public static (int Exit, string Output, string Error) Line(string line, string input = "") => Run(line.Split(' ', StringSplitOptions.RemoveEmptyEntries), input);
}
