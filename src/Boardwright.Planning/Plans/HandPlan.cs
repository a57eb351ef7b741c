namespace Boardwright.Planning;

/// <summary>A charge a person means to run.</summary>
/// <param name="Kiln">The kiln.</param>
/// <param name="Stacks">The stacks that go in together.</param>
/// <param name="From">First day it may be loaded.</param>
public sealed record HandCharge(string Kiln, IReadOnlyList<string> Stacks, DateOnly From);

/// <summary>A person's plan put under the same forecasts and rules as a computed one, so that the two can be compared.</summary>
/// <remarks>Kilns, company and order of the charges are the person's; times follow from the forecasts. What breaks a rule is left out and named.</remarks>
/// <param name="Plan">What can be done of it.</param>
/// <param name="Left">Stacks that cannot go where the person put them.</param>
public sealed record HandPlan(Plan Plan, IReadOnlyList<string> Left)
{
    /// <summary>The plan of a person's charges, in the order of their days; charges of kilns or stacks the yard does not have are left out.</summary>
    public static HandPlan Of(PlanInput input, IEnumerable<HandCharge> charges)
    {
        ArgumentNullException.ThrowIfNull(charges);
        return Of(new PlanTables(input), charges);
    }

    internal static HandPlan Of(PlanTables tables, IEnumerable<HandCharge> charges)
    {
        int Kiln(string id) => Array.FindIndex(tables.Kilns, kiln => kiln.Kiln.Id == id);
        int Stack(string id) => Array.FindIndex(tables.Stacks, stack => stack.Stack.Id == id && !stack.Started);
        var (plan, left) = GreedyPlan.Follow(tables, charges
            .Where(charge => Kiln(charge.Kiln) >= 0)
            .OrderBy(charge => charge.From)
            .Select(charge => (Kiln(charge.Kiln), charge.Stacks.Select(Stack).Where(stack => stack >= 0).ToArray(), Math.Max(0, tables.Calendar.DayNumber(charge.From)) * tables.Calendar.StepsPerDay)));
        return new(plan, left);
    }
}
