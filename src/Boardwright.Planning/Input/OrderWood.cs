namespace Boardwright.Planning;

/// <summary>Wood that may serve an order.</summary>
/// <param name="Stack">The stack.</param>
/// <param name="Kilned">True: only once it has been dried in a kiln. False: only as it stands, never through a kiln.</param>
/// <param name="ExtraMoney">What it costs to give this wood instead of the wood named in the order; 0 for the wood named.</param>
public sealed record OrderWood(string Stack, bool Kilned, decimal ExtraMoney);
