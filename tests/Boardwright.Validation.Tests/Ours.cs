namespace Boardwright.Validation.Tests;

/// <summary>What we compute for a published value: a number, several that must all lie within it, or a word.</summary>
internal sealed record Ours(IReadOnlyList<double> Numbers, string Word = "")
{
    public static Ours NoAnswer { get; } = new([], "no answer");

    public static implicit operator Ours(double number) => new([number]);

    public static implicit operator Ours(string word) => new([], word);
}
