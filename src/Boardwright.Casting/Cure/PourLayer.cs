using Boardwright.Quantities;

namespace Boardwright.Casting.Cure;

/// <summary>One pour of resin, on the mould or on the pour before.</summary>
/// <param name="Depth">How deep.</param>
/// <param name="PouredAfter">Since the first pour.</param>
/// <param name="PouredAt">Temperature of the mix; null when it is the shop's.</param>
public readonly record struct PourLayer(Length Depth, Elapsed PouredAfter, Temperature? PouredAt = null);
