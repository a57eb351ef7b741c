using System.Text.Json.Nodes;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;
using Boardwright.Yard.Wire;

namespace Boardwright.Cli;

/// <summary>Many commands from one stream: one line in, one JSON object a line out, in order. A bad line never stops the rest.</summary>
public static class Batch
{
    public static void Run(TextReader input, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(output);
        // Standard input carries the commands here, so no command may read it as a file as well.
        var host = new FileHost(TextReader.Null);
        while (input.ReadLine() is { } line)
        {
            if (line.Length > 0 && !line.StartsWith('#'))
            {
                output.WriteLine(Answer(line, host));
            }
        }

        output.Flush();
    }

    private static string Answer(string line, FileHost host)
    {
        try
        {
            return ShellWords.Split(line).Then(words => CommandLine.Run(words.Where(word => word != "--json").ToArray(), host)) switch
            {
                Outcome<object>.Done(var answer) => $$"""{"ok":true,"result":{{WireJson.Text(answer)}}}""",
                Outcome<object>.Refused(var reasons) => Failed(ExitCode.Refused, string.Join("; ", reasons)),
                Outcome<object>.NoAnswer(var why) => Failed(ExitCode.NoAnswer, why),
                _ => throw new InvalidOperationException("An outcome has three cases."),
            };
        }
#pragma warning disable CA1031 // One bad line never stops the rest; the defect is reported on its own line.
        catch (Exception defect)
#pragma warning restore CA1031
        {
            return Failed(ExitCode.Defect, $"defect: {defect.GetType().Name}: {defect.Message}");
        }
    }

    private static string Failed(int exit, string why) =>
        new JsonObject { ["ok"] = false, ["exit"] = exit, ["error"] = why }.ToJsonString(WireJson.Options);
}
