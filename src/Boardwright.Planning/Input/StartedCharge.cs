using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>A charge that already stands in its kiln when the plan begins; the plan only chooses when to unload it.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Kiln">Its kiln.</param>
/// <param name="Stacks">The stacks in it.</param>
/// <param name="DryHalf">Time from the plan's first midnight until it is dry, as often as not (p50).</param>
/// <param name="DryMost">The same, nine times in ten (p90); not before p50.</param>
/// <param name="Running">Heat it draws on top of the kiln's holding heat until it is dry.</param>
public sealed record StartedCharge(string Id, string Kiln, IReadOnlyList<string> Stacks, Elapsed DryHalf, Elapsed DryMost, Power Running);
