using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>Heat of one period of a plan.</summary>
/// <param name="Steps">The period.</param>
/// <param name="Demand">The most the kilns draw from the boilers in it.</param>
/// <param name="Spare">What the boilers give less what shop and house take.</param>
public sealed record HeatOutlook(StepRange Steps, Power Demand, Power Spare);
