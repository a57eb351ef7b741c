using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>Board feet of a stack's yield kept for an order.</summary>
/// <param name="Order">The order.</param>
/// <param name="Stack">The stack.</param>
/// <param name="Quantity">How much of its yield.</param>
public sealed record Serving(string Order, string Stack, BoardFeet Quantity);
