using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>Plans of the demonstration yard on its first day, made once in a test run.</summary>
internal static class DemonstrationPlan
{
    private static readonly Lazy<PlanMade> Usual = new(() => Made(new PlanRequest()));
    private static readonly Lazy<PlanMade> NoBoiler = new(() => Made(new PlanRequest(Without: [new("B2", new(2026, 11, 2), new(2026, 11, 22)), new("B1", new(2026, 11, 2), new(2026, 11, 22))])));

    public static PlanMade Made() => Usual.Value;

    /// <summary>Both boilers out for three weeks.</summary>
    public static PlanMade WithoutBoilers() => NoBoiler.Value;

    /// <summary>The owner's own plan of the season under the same forecasts and rules.</summary>
    public static HandPlan ByHand() => HandPlan.Of(
        Made().Input, DemonstrationBook.Yard.PlannedCharges.Values.Select(charge => new HandCharge(charge.Kiln, charge.Stacks, charge.InOn)));

    public static Order Order(this PlanMade made, string id) => made.Input.Orders.First(order => order.Id == id);

    public static OrderOutlook Outlook(this PlanMade made, string id) => made.Answer.Outlook.Orders.First(order => order.Order == id);

    public static Stack Stack(this PlanMade made, string id) => made.Input.Stacks.First(stack => stack.Id == id);

    private static PlanMade Made(PlanRequest request) => Assert.IsType<Outcome<PlanMade>.Done>(PlanMade.Of(DemonstrationBook.Yard, request)).Value;
}
