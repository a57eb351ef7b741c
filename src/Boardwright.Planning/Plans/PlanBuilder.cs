using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>Turns indexes and steps back into a plan with names.</summary>
internal static class PlanBuilder
{
    /// <summary>The plan; <paramref name="chosen"/> has for each order the wood it draws from as bits, or -1 where it is not met.</summary>
    public static Plan Build(PlanTables tables, IReadOnlyList<TimedCharge> charges, IReadOnlyList<int> chosen)
    {
        var taken = Allocate(tables, chosen) ?? throw new InvalidOperationException("The chosen wood does not suffice for the orders.");
        return new([.. charges.Select(charge => Named(tables, charge))], [.. Servings(tables, taken)]);
    }

    /// <summary>Tenths of a board foot that each order takes of each stack, or null when the yields do not suffice.</summary>
    public static int[,]? Allocate(PlanTables tables, IReadOnlyList<int> chosen) => Allocation.Find(
        [.. tables.Orders.Select((order, o) => chosen[o] < 0 ? 0 : order.QuantityTenths)],
        [.. tables.Stacks.Select(stack => stack.YieldTenths)],
        (order, stack) => tables.Orders[order].Wood.Select((wood, w) => wood.Stack == stack && (chosen[order] >> w & 1) != 0).Any(found => found));

    private static Charge Named(PlanTables tables, TimedCharge charge)
    {
        var kiln = tables.Kilns[charge.Kiln];
        return new(kiln.Kiln.Id, [.. charge.Stacks.Select(s => tables.Stacks[s].Stack.Id)], charge.Started ? kiln.Started!.Id : null, charge.Load, charge.WarmUp, charge.Unload);
    }

    private static IEnumerable<Serving> Servings(PlanTables tables, int[,] taken)
    {
        for (var order = 0; order < tables.Orders.Length; order++)
        {
            for (var stack = 0; stack < tables.Stacks.Length; stack++)
            {
                if (taken[order, stack] > 0)
                {
                    yield return new(tables.Orders[order].Order.Id, tables.Stacks[stack].Stack.Id, BoardFeet.From(taken[order, stack] / 10.0));
                }
            }
        }
    }
}
