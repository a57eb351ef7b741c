using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>One thickness read on a green board.</summary>
/// <param name="Board">Name of the board.</param>
/// <param name="Thickness">What the caliper showed.</param>
public sealed record ThicknessReading(string Board, Length Thickness);
