using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>Air held in a kiln for a time.</summary>
/// <param name="For">How long the charge dried in it; gaps left out.</param>
/// <param name="DryBulb">Dry bulb.</param>
/// <param name="WetBulb">Wet bulb, at most the dry bulb.</param>
public readonly record struct KilnHold(Elapsed For, Temperature DryBulb, Temperature WetBulb);
