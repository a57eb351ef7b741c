namespace Boardwright.Quantities;

/// <summary>One thing that may have been meant by what was typed.</summary>
/// <param name="Words">For a person, such as 2.6 m (8 ft 6 in).</param>
/// <param name="Typed">What says it without doubt and keeps what was typed: 2.6 = 2.6m.</param>
public sealed record Meaning(string Words, string Typed);
