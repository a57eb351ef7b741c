namespace Boardwright.Planning;

/// <summary>Why a plan does not have an order on time.</summary>
/// <param name="Order">The order.</param>
/// <param name="Causes">The cause whose lifting would help most; several when they help alike.</param>
/// <param name="Words">The same in a sentence.</param>
public sealed record LateReason(string Order, IReadOnlyList<LateCause> Causes, string Words);
