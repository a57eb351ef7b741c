using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>An order as the planner sees it.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Due">Last day on which it is on time.</param>
/// <param name="Quantity">Board feet to deliver, to be drawn from the yields of its wood.</param>
/// <param name="Wood">The stacks that may serve it; none means that no stock is known.</param>
/// <param name="PlanerRuns">Days of planing it needs after the last of its wood is out of the kiln; 0 for rough wood.</param>
/// <param name="Importance">1 to 5.</param>
/// <param name="LateMoneyPerDay">Money lost for each day late.</param>
public sealed record Order(
    string Id, DateOnly Due, BoardFeet Quantity, IReadOnlyList<OrderWood> Wood, int PlanerRuns, int Importance, decimal LateMoneyPerDay);
