namespace Boardwright.Drying;

/// <summary>How fast wood dries in the yard against the usual rate of its species.</summary>
/// <param name="Factor">Median of the factor on the coefficient of <see cref="DryingCoefficients"/>.</param>
/// <param name="Spread">Standard deviation of its logarithm.</param>
public readonly record struct DryingRate(double Factor, double Spread);
