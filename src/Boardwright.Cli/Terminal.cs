using System.Reflection;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;
using Boardwright.Yard.Wire;

namespace Boardwright.Cli;

/// <summary>The program at a terminal: words in, text or JSON out, an exit code.</summary>
/// <param name="input">What is typed or piped in.</param>
/// <param name="output">Answers.</param>
/// <param name="error">Refusals and defects.</param>
/// <param name="run">Works a command out; null for the usual way.</param>
public sealed class Terminal(TextReader input, TextWriter output, TextWriter error, Func<string[], IAskHost, Outcome<object>>? run = null)
{
    public static string Version { get; } =
        typeof(Terminal).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    public int Run(string[] words)
    {
        ArgumentNullException.ThrowIfNull(words);
        try
        {
            return words switch
            {
                [] or ["--help"] or ["help"] => Show(() => Help.Program(output)),
                ["--version"] => Show(() => output.WriteLine($"boardwright {Version}")),
                ["batch", .. var rest] => RunBatch(rest),
                ["serve", "--help", ..] => Show(() => Help.Serve(output)),
                ["serve", .. var rest] => RunServe(rest),
                _ => RunCommand(words),
            };
        }
#pragma warning disable CA1031 // The edge of the program: a defect is reported as one, with its own exit code, never swallowed.
        catch (Exception defect)
#pragma warning restore CA1031
        {
            error.WriteLine($"defect: {defect.GetType().Name}: {defect.Message}");
            error.WriteLine(defect.StackTrace);
            return ExitCode.Defect;
        }
    }

    private int RunCommand(string[] words)
    {
        var json = words.Contains("--json");
        var kept = words.Where(word => word is not ("--json" or "--help")).ToArray();
        if (words.Contains("--help"))
        {
            return RunHelp(kept);
        }

        return (run is null ? CommandLine.Run(kept, new FileHost(input)) : run(kept, new FileHost(input))) switch
        {
            Outcome<object>.Done(var answer) => Show(() => output.WriteLine(json ? WireJson.Text(answer) : PlainText.Of(answer).TrimEnd())),
            Outcome<object>.Refused(var reasons) when reasons.Count > 1 && CommandCatalogue.Find(kept[0]) is { AtTerminalOnly: true } => Fail(ExitCode.Refused, reasons),
            Outcome<object>.Refused(var reasons) => Fail(ExitCode.Refused, string.Join("; ", reasons)),
            Outcome<object>.NoAnswer(var why) => Fail(ExitCode.NoAnswer, why),
            _ => throw new InvalidOperationException("An outcome has three cases."),
        };
    }

    private int RunHelp(string[] words)
    {
        if (words.Length == 0)
        {
            return Show(() => Help.Program(output));
        }

        if (words.Length > 1 && CommandCatalogue.Find($"{words[0]} {words[1]}") is { } two)
        {
            return Show(() => Help.Command(two, output));
        }

        var ofNoun = CommandCatalogue.All.Where(command => command.Noun == words[0]).ToList();
        return ofNoun switch
        {
            [] => Fail(ExitCode.Refused, CommandLine.Unknown(words).ToString()),
            [var only] => Show(() => Help.Command(only, output)),
            [{ Verb: "" } alone, .. var others] => Show(() =>
            {
                Help.Command(alone, output);
                output.WriteLine();
                Help.Noun(words[0], others, output);
            }),
            _ => Show(() => Help.Noun(words[0], ofNoun, output)),
        };
    }

    private int RunBatch(string[] words)
    {
        switch (words)
        {
            case [] or ["-"]:
                Batch.Run(input, output);
                return ExitCode.Done;
            case ["--help"]:
                return Show(() => Help.Batch(output));
            case [var path] when File.Exists(path):
                using (var file = File.OpenText(path))
                {
                    Batch.Run(file, output);
                }

                return ExitCode.Done;
            default:
                return Fail(ExitCode.Refused, new Refusal("FILE", string.Join(' ', words), "one file of commands, or nothing for standard input").ToString());
        }
    }

    private int RunServe(string[] words) => ServeOptions.Read(words) switch
    {
        Outcome<ServeOptions>.Done(var options) => Serve.Run(options, output, error),
        Outcome<ServeOptions>.Refused(var reasons) => Fail(ExitCode.Refused, string.Join("; ", reasons)),
        _ => throw new InvalidOperationException("Options are read or refused."),
    };

    private static int Show(Action write)
    {
        write();
        return ExitCode.Done;
    }

    // Rows of a table are read one by one.
    private int Fail(int code, IReadOnlyList<Refusal> reasons)
    {
        foreach (var reason in reasons)
        {
            error.WriteLine(reason.ToString().ReplaceLineEndings(" "));
        }

        return code;
    }

    private int Fail(int code, string why)
    {
        error.WriteLine(why.ReplaceLineEndings(" "));
        return code;
    }
}
