using Boardwright.Quantities;

namespace Boardwright.Drying.Heat;

/// <summary>One step of a kiln run: the air it holds, what the wood comes to, and how long that takes.</summary>
/// <param name="DryBulb">Of the kiln's air.</param>
/// <param name="Humidity">Of the kiln's air.</param>
/// <param name="Until">Moisture content at the end; above the start when the wood is conditioned by spray.</param>
/// <param name="Duration">Hours.</param>
public sealed record KilnStage(Temperature DryBulb, RelativeHumidity Humidity, MoistureContent Until, Elapsed Duration);
