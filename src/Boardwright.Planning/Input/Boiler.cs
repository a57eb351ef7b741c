using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>A boiler.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Output">Heat it gives steadily.</param>
/// <param name="Outages">When it gives none; a heat period that it misses in part counts as missed.</param>
public sealed record Boiler(string Id, Power Output, IReadOnlyList<StepRange> Outages);
