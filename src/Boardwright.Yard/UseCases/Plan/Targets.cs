using Boardwright.Drying.Treatment;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using BookState = Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What each stack is dried to, and which must be heat-treated: from the orders that name it.</summary>
internal sealed class PlanTargets
{
    private readonly Dictionary<string, MoistureContent> targets = new(StringComparer.Ordinal);
    private readonly HashSet<string> heated = new(StringComparer.Ordinal);
    private readonly MoistureContent house;

    public PlanTargets(YardState state, MoistureContent house)
    {
        this.house = house;
        foreach (var asked in state.Orders.Values.Where(order => order.IsOpen).SelectMany(order => order.Lines).Where(line => !line.IsFilled).Select(line => line.Asked))
        {
            foreach (var stack in asked.Stacks)
            {
                Take(asked, stack);
            }
        }

        foreach (var charge in state.Charges.Values.Where(charge => charge.IsRunning))
        {
            foreach (var stack in charge.Stacks)
            {
                targets[stack] = charge.Target;
            }
        }
    }

    /// <summary>Moisture it is dried to: the middle of what the order accepts, the driest of several; else the house's own.</summary>
    public MoistureContent Of(BookState.Stack stack) => targets.GetValueOrDefault(stack.Tag, house);

    /// <summary>Temperature it must pass through for heat treatment; null for none.</summary>
    public Temperature? HeatedTo(BookState.Stack stack) => heated.Contains(stack.Tag) ? HeatTreatment.CoreMin : null;

    private void Take(OrderLine asked, string stack)
    {
        if (asked.HeatTreated)
        {
            heated.Add(stack);
        }

        if (asked is { NeverKiln: false, McLowPct: { } low, McHighPct: { } high })
        {
            var middle = MoistureContent.FromPercent((low + high) / 2.0);
            targets[stack] = targets.TryGetValue(stack, out var other) && other < middle ? other : middle;
        }
    }
}
