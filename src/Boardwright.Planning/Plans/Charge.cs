namespace Boardwright.Planning;

/// <summary>A charge of a plan: stacks that share a kiln, and when people work on it.</summary>
/// <param name="Kiln">The kiln.</param>
/// <param name="Stacks">The stacks in it.</param>
/// <param name="Started">Number of the started charge this is, or null for a charge the plan begins.</param>
/// <param name="LoadStep">Step at which loading begins; 0 for a started charge.</param>
/// <param name="WarmUp">Which of the kiln's warm-up times is chosen, from 0; 0 for a started charge.</param>
/// <param name="UnloadStep">Step at which unloading begins; for a started charge left standing at the plan's end, the number of steps in the plan.</param>
public sealed record Charge(string Kiln, IReadOnlyList<string> Stacks, string? Started, int LoadStep, int WarmUp, int UnloadStep);
