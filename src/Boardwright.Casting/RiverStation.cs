using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>One measured width of a river of resin between two pieces of wood.</summary>
/// <param name="At">Distance from the mould's end.</param>
/// <param name="Gap">Width between the wood there.</param>
public readonly record struct RiverStation(Length At, Length Gap);
