namespace Boardwright.Planning;

/// <summary>A rule that a plan breaks.</summary>
/// <param name="Kind">Which rule.</param>
/// <param name="Words">What, where and by how much.</param>
public sealed record PlanFault(PlanFaultKind Kind, string Words);
