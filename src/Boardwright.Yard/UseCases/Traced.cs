namespace Boardwright.Yard.UseCases;

/// <summary>A number for a page, with all a person needs to check it: unit, basis, what went in, the method and its source.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">The figure as shown, rounded for people.</param>
/// <param name="Unit">Its unit; empty for words.</param>
/// <param name="Basis">Rule, net or gross, moisture, who and when: what a dispute would be about.</param>
public sealed record Traced(string Label, string Value, string Unit, string Basis)
{
    /// <summary>What went into it, by name, each with its unit.</summary>
    public IReadOnlyList<(string Name, string Value)> Inputs { get; init; } = [];

    /// <summary>The method page under docs/methods, without folder and ending; null for what was simply entered.</summary>
    public string? Method { get; init; }

    /// <summary>Who says so: the printed source, or the person and the entry.</summary>
    public string? Source { get; init; }
}
