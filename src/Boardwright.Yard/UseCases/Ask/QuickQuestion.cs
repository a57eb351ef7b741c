using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A field of a quick question: an option of its command, its unit beside it.</summary>
/// <param name="Option">The option.</param>
/// <param name="Label">In words.</param>
/// <param name="Unit">What a bare figure is taken in; empty for words.</param>
/// <param name="Usual">What stands in it before anything is typed; empty for nothing.</param>
public sealed record QuickField(string Option, string Label, string Unit = "", string Usual = "")
{
    /// <summary>All it may be, value and words; empty where anything may be written.</summary>
    public IReadOnlyList<(string Value, string Words)> Choices { get; init; } = [];
}

/// <summary>A printed table beside an answer.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Columns">Headings; the first column names the row.</param>
/// <param name="Rows">Its rows.</param>
/// <param name="Basis">Where it is from.</param>
public sealed record QuickTable(string Title, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows, string Basis);

/// <summary>The answer of a quick question: figures with their methods, what to do with it, and what is printed beside.</summary>
public sealed record QuickAnswer(IReadOnlyList<Traced> Figures, string Do)
{
    public (string First, string Words)? Caution { get; init; }

    public IReadOnlyList<QuickTable> Tables { get; init; } = [];
}

/// <summary>A question with one short answer, asked while standing at a stack: the same computation as its command.</summary>
/// <param name="Key">Its name in the address.</param>
/// <param name="Asks">As it is asked.</param>
/// <param name="Label">In a word or two.</param>
/// <param name="Command">The command that answers it without a page.</param>
/// <param name="Fields">What has to be known.</param>
/// <param name="Method">Its method page.</param>
public sealed record QuickQuestion(string Key, string Asks, string Label, Command Command, IReadOnlyList<QuickField> Fields, string Method)
{
    /// <summary>Shapes the command's answer for a page.</summary>
    public required Func<YardState, IReadOnlyDictionary<string, string>, object, QuickAnswer> Show { get; init; }

    /// <summary>Known without anything typed; null where nothing is.</summary>
    public Func<YardState, QuickAnswer?>? Here { get; init; }

    /// <summary>What the yard itself knows of it now; null where nothing.</summary>
    public QuickAnswer? Known(YardState state) => Here?.Invoke(state);

    /// <summary>The answer to what was typed.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="typed">Text by option.</param>
    public Outcome<QuickAnswer> Answer(YardState state, IReadOnlyDictionary<string, string> typed)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(typed);
        var texts = Fields.Where(field => !string.IsNullOrWhiteSpace(typed.GetValueOrDefault(field.Option)))
            .ToDictionary(field => field.Option, field => (IReadOnlyList<string>)[WithUnit(typed[field.Option].Trim(), field.Unit)], StringComparer.Ordinal);
        return Labelled(Invocation.Of(Command, texts, null, new Nothing()).Then(Command.Run), typed) switch
        {
            Outcome<object>.Done(var answer) => Show(state, typed, answer),
            Outcome<object>.Refused(var reasons) => new Outcome<QuickAnswer>.Refused(reasons),
            Outcome<object>.NoAnswer(var why) => new Outcome<QuickAnswer>.NoAnswer(why),
            _ => throw new InvalidOperationException("An outcome has three cases."),
        };
    }

    // Quarters, as 8/4, are a thickness by themselves.
    private static string WithUnit(string text, string unit) => unit.Length > 0 && char.IsAsciiDigit(text[^1]) && !text.EndsWith("/4", StringComparison.Ordinal) ? text + unit : text;

    // On a page an option means nothing: its field does.
    private Outcome<object> Labelled(Outcome<object> outcome, IReadOnlyDictionary<string, string> typed) => outcome is not Outcome<object>.Refused(var reasons) ? outcome
        : new Outcome<object>.Refused([.. reasons.Select(reason => Fields.FirstOrDefault(field => reason.What == "--" + field.Option) is { } field
            ? reason with { What = field.Label, Given = typed.GetValueOrDefault(field.Option) is { Length: > 0 } text ? text : "nothing", Accepted = reason.Accepted.Replace("--", "", StringComparison.Ordinal) }
            : reason)]);

    private sealed class Nothing : IAskHost
    {
        public Outcome<string> ReadFile(string what, string path) => new Refusal(what, path, "no file on a page");
    }
}
