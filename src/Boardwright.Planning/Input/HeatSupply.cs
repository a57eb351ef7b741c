using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>The heat there is, in equal periods: what the boilers give less what shop and house take.</summary>
/// <param name="PeriodSteps">Steps in a heat period; the plan's steps are a whole number of periods.</param>
/// <param name="Boilers">The boilers.</param>
/// <param name="Shop">Heat that shop and house take, one value for each period.</param>
/// <param name="ShopGivesWay">How much less the shop can make do with when the kilns need more.</param>
/// <param name="MoneyPerKwhGivenWay">What each kilowatt-hour taken from the shop costs.</param>
public sealed record HeatSupply(
    int PeriodSteps, IReadOnlyList<Boiler> Boilers, IReadOnlyList<Power> Shop, Power ShopGivesWay, decimal MoneyPerKwhGivenWay);
