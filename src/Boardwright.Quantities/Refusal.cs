namespace Boardwright.Quantities;

/// <summary>Why an input was not taken: what it was, what was given, what is accepted.</summary>
/// <param name="What">The field, option, or place in a file.</param>
/// <param name="Given">The text or value as it was given.</param>
/// <param name="Accepted">What would be taken instead.</param>
public sealed record Refusal(string What, string Given, string Accepted)
{
    /// <summary>What may have been meant, each in words and as it would be typed; empty where nothing is near.</summary>
    public IReadOnlyList<Meaning> Meant { get; init; } = [];

    /// <summary>One line for a person.</summary>
    public override string ToString() => $"{What}: given \"{Given}\"; accepted: {Accepted}";
}
