namespace Boardwright.Planning.Solver;

/// <summary>News of a running search.</summary>
/// <param name="Plan">The best plan so far.</param>
/// <param name="Score">What it is worth.</param>
/// <param name="Level">The level being settled.</param>
public sealed record PlanProgress(Plan Plan, PlanScore Score, PlanLevel Level);
