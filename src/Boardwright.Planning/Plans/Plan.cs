namespace Boardwright.Planning;

/// <summary>A plan: which charges, when, and which wood serves which order. Everything else follows from it.</summary>
/// <param name="Charges">The charges, started ones included.</param>
/// <param name="Servings">Wood kept for orders; an order that gets less than it asks counts as not met.</param>
public sealed record Plan(IReadOnlyList<Charge> Charges, IReadOnlyList<Serving> Servings);
