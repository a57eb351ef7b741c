namespace Boardwright.Quantities;

/// <summary>The answer to a question a person asked: done, refused because of its input, or without an answer.</summary>
/// <typeparam name="T">The answer.</typeparam>
public abstract record Outcome<T>
{
    private Outcome()
    {
    }

    /// <summary>The question was answered.</summary>
    /// <param name="Value">The answer.</param>
    public sealed record Done(T Value) : Outcome<T>;

    /// <summary>The input cannot be taken; every reason found is listed.</summary>
    /// <param name="Reasons">At least one reason.</param>
    public sealed record Refused(IReadOnlyList<Refusal> Reasons) : Outcome<T>;

    /// <summary>The input is sound and the question has no answer.</summary>
    /// <param name="Why">A sentence for a person.</param>
    public sealed record NoAnswer(string Why) : Outcome<T>;

    /// <summary>Wraps an answer.</summary>
    public static implicit operator Outcome<T>(T value) => new Done(value);

    /// <summary>Wraps one refusal.</summary>
    public static implicit operator Outcome<T>(Refusal reason) => new Refused([reason]);

    /// <summary>The next step, taken only when this one is done.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, Outcome<TNext>> next) => this switch
    {
        Done(var value) => next(value),
        Refused(var reasons) => new Outcome<TNext>.Refused(reasons),
        NoAnswer(var why) => new Outcome<TNext>.NoAnswer(why),
        _ => throw new InvalidOperationException("An outcome has three cases."),
    };
}
