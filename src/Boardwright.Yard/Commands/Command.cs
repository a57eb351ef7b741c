using Boardwright.Quantities;

namespace Boardwright.Yard.Commands;

/// <summary>One command: its words, options and the use case that answers it. Command line, batch and API read this same definition.</summary>
/// <param name="Noun">First word, such as air.</param>
/// <param name="Verb">Second word, such as state; empty where the noun stands alone.</param>
/// <param name="Summary">One line for a person.</param>
/// <param name="Run">The use case; the answer's property names become the JSON keys.</param>
public sealed record Command(string Noun, string Verb, string Summary, Func<Ask, Outcome<object>> Run)
{
    public IReadOnlyList<Option> Options { get; init; } = [];

    public Argument? Argument { get; init; }

    /// <summary>Command lines that work as printed, without the program's name.</summary>
    public IReadOnlyList<string> Examples { get; init; } = [];

    /// <summary>Reads and writes files and books of this machine: not to be had over HTTP. Each reason it refuses is shown on a line of its own.</summary>
    public bool AtTerminalOnly { get; init; }

    public string Words => Verb.Length == 0 ? Noun : $"{Noun} {Verb}";

    public static Command Of<TAnswer>(string noun, string verb, string summary, Func<Ask, Outcome<TAnswer>> run)
        where TAnswer : notnull => new(noun, verb, summary, ask => run(ask).Then(answer => (Outcome<object>)new Outcome<object>.Done(answer)));

    public Option? FindOption(string name) => Options.FirstOrDefault(option => option.Name == name);
}
