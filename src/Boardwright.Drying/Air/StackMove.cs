namespace Boardwright.Drying;

/// <summary>A stack was carried to another place.</summary>
/// <param name="Date">First day there.</param>
/// <param name="Place">The place.</param>
public readonly record struct StackMove(DateOnly Date, StackPlace Place);
