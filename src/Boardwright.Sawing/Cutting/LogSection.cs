using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>One measured cross-section of a log, inside bark: an ellipse whose axes lie level and upright in the unturned log.</summary>
/// <param name="At">Distance from the small end.</param>
/// <param name="DiameterX">Level diameter.</param>
/// <param name="DiameterY">Upright diameter.</param>
/// <param name="OffsetXMm">Centre right of the straight line through the log, millimetres; may be negative.</param>
/// <param name="OffsetYMm">Centre above that line, millimetres; may be negative.</param>
public readonly record struct LogSection(Length At, Length DiameterX, Length DiameterY, double OffsetXMm = 0.0, double OffsetYMm = 0.0);
