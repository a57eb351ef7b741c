namespace Boardwright.Planning;

/// <summary>Everything a kiln plan is made from.</summary>
/// <param name="Calendar">Days, steps, crew and planer.</param>
/// <param name="Kilns">The kilns.</param>
/// <param name="Stacks">The stacks, those of started charges included.</param>
/// <param name="Started">Charges already in their kilns, at most one in each.</param>
/// <param name="Orders">The orders.</param>
/// <param name="Heat">The heat there is.</param>
/// <param name="Sharing">Which stacks may share a charge.</param>
/// <param name="ImportanceMoneyPerDay">Money that a day late counts for each point of an order's importance, beside its late money.</param>
public sealed record PlanInput(
    PlanCalendar Calendar, IReadOnlyList<Kiln> Kilns, IReadOnlyList<Stack> Stacks, IReadOnlyList<StartedCharge> Started,
    IReadOnlyList<Order> Orders, HeatSupply Heat, SharingRules Sharing, decimal ImportanceMoneyPerDay);
