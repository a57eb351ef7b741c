namespace Boardwright.Web.Drawings;

/// <summary>A reading; both values stay. Percent.</summary>
/// <param name="At">When it was taken.</param>
/// <param name="Corrected">For heat and species: a filled dot.</param>
/// <param name="AsRead">What the meter said: a hollow dot; null for a weighing, which needs no correction.</param>
public readonly record struct MoistureReading(DateTime At, double Corrected, double? AsRead = null);
