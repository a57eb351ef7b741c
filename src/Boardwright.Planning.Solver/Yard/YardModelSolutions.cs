using Boardwright.Quantities;

using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver;

/// <content>Plans into hints, solutions into plans.</content>
internal sealed partial class YardModel
{
    /// <summary>The plan a solution stands for.</summary>
    /// <param name="value">Value of a variable in the solution.</param>
    public Plan Read(Func<IntVar, long> value)
    {
        var charges = new List<Charge>();
        foreach (var slot in slots.Where(slot => slot.Standing || value(slot.Used) == 1))
        {
            var kiln = tables.Kilns[slot.Kiln];
            var stacks = slot.Standing ? kiln.Started!.Stacks : [.. tables.Stacks.Where((_, s) => slot.Has[s] is { } has && value(has) == 1).Select(s => s.Stack.Id)];
            var warmUp = Math.Max(0, Array.FindIndex(slot.Warm, w => value(w) == 1));
            charges.Add(new(kiln.Kiln.Id, stacks, slot.Standing ? kiln.Started!.Id : null, slot.Standing ? 0 : (int)value(slot.Load), warmUp, (int)value(slot.Unload)));
        }

        var servings = tables.Orders.SelectMany((order, o) => order.Order.Wood.Select((wood, w) => new Serving(order.Order.Id, wood.Stack, BoardFeet.From(value(amounts[o][w]) / 10.0))));
        return new(charges, [.. servings.Where(serving => serving.Quantity.Count > 0)]);
    }

    /// <summary>Tells the solver to start from a plan.</summary>
    public void Hint(Plan plan)
    {
        Model.ClearHints();
        foreach (var kiln in slots.GroupBy(slot => slot.Kiln))
        {
            var id = tables.Kilns[kiln.Key].Kiln.Id;
            var charges = plan.Charges.Where(charge => charge.Kiln == id).OrderBy(charge => charge.UnloadStep).ToList();
            foreach (var (slot, index) in kiln.Select((slot, index) => (slot, index)))
            {
                Hint(slot, charges.ElementAtOrDefault(index));
            }
        }

        for (var o = 0; o < tables.Orders.Length; o++)
        {
            var order = tables.Orders[o].Order;
            var servings = plan.Servings.Where(serving => serving.Order == order.Id).ToDictionary(serving => serving.Stack, serving => (long)Tenths.Up(serving.Quantity.Count));
            Model.AddHint(met[o], servings.Count > 0);
            for (var w = 0; w < order.Wood.Count; w++)
            {
                var taken = servings.GetValueOrDefault(order.Wood[w].Stack);
                Model.AddHint(draws[o][w], taken > 0);
                Model.AddHint(amounts[o][w], taken);
            }
        }
    }

    private void Hint(ChargeSlot slot, Charge? charge)
    {
        var k = tables.Kilns[slot.Kiln];
        if (slot.Standing)
        {
            Model.AddHint(slot.Unload, charge!.UnloadStep);
            Model.AddHint(slot.Emptied, charge.UnloadStep < Steps);
            return;
        }

        var timed = charge is null ? null : PlanOutlook.Timed(tables, charge);
        Model.AddHint(slot.Used, charge is not null);
        Model.AddHint(slot.Load, timed?.Load ?? k.LoadStarts[0]);
        Model.AddHint(slot.Unload, timed?.Unload ?? k.UnloadStarts[0]);
        Model.AddHint(slot.LoadDay, (timed?.Load ?? k.LoadStarts[0]) / PerDay);
        Model.AddHint(slot.UnloadDay, (timed?.Unload ?? k.UnloadStarts[0]) / PerDay);
        Model.AddHint(slot.Half, timed is null ? 0 : timed.Dry - timed.WarmEnd);
        Model.AddHint(slot.Most, timed is null ? 0 : timed.DryMost - timed.WarmEnd);
        Model.AddHint(slot.UnloadMost, timed?.UnloadMost ?? k.UnloadStarts[0]);
        for (var j = 0; j < slot.Warm.Length; j++)
        {
            Model.AddHint(slot.Warm[j], charge is not null && charge.WarmUp == j);
        }

        for (var s = 0; s < slot.Has.Length; s++)
        {
            if (slot.Has[s] is { } has)
            {
                Model.AddHint(has, charge is not null && charge.Stacks.Contains(tables.Stacks[s].Stack.Id));
            }
        }
    }
}
