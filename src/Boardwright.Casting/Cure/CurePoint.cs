namespace Boardwright.Casting.Cure;

/// <summary>State of a cure at one hour.</summary>
/// <param name="Hour">Since the first pour.</param>
/// <param name="ShopCelsius">Air.</param>
/// <param name="CentreCelsius">Half way up the resin there is at that hour.</param>
/// <param name="HottestCelsius">Hottest resin.</param>
/// <param name="TopCelsius">Uppermost cell.</param>
/// <param name="CentreConversion">Conversion half way up.</param>
/// <param name="LeastConversion">Conversion of the slowest resin.</param>
public readonly record struct CurePoint(
    double Hour, double ShopCelsius, double CentreCelsius, double HottestCelsius, double TopCelsius, double CentreConversion, double LeastConversion);
