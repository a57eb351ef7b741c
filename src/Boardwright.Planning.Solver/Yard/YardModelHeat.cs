using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver;

/// <content>Heat: the coil of each kiln, and the boilers through time.</content>
internal sealed partial class YardModel
{
    private void Coil(ChargeSlot slot, List<int> here)
    {
        var k = tables.Kilns[slot.Kiln];
        if (!k.OnBoiler)
        {
            return;
        }

        var left = k.CoilTenths - k.HoldMostTenths;
        Model.Add(RunTenths(slot) <= left).OnlyEnforceIf(slot.Used);
        for (var j = 0; j < slot.Warm.Length; j++)
        {
            Model.Add(WarmTenths(slot, j) <= left).OnlyEnforceIf(slot.Warm[j]);
        }
    }

    /// <summary>Heat by period. A charge that heats at any time in a period counts with its most in that period.</summary>
    private void Heat()
    {
        var heated = slots.Where(slot => !slot.Standing && tables.Kilns[slot.Kiln].OnBoiler).ToList();
        var demands = Enumerable.Range(0, tables.Periods).Select(_ => new List<LinearExpr>()).ToArray();
        foreach (var slot in heated)
        {
            for (var period = 0; period < tables.Periods; period++)
            {
                if (CanBeShort(period))
                {
                    demands[period].Add(Demand(slot, period));
                }
            }
        }

        for (var period = 0; period < tables.Periods; period++)
        {
            var beyond = Model.NewIntVar(0, tables.ShortMostTenths[period], $"short {period}");
            demands[period].Add(LinearExpr.Constant(tables.StartedTenths[period]));
            Model.Add(LinearExpr.Sum(demands[period]) <= tables.SpareTenths[period] + beyond);
            costs.Add(beyond * tables.ShortCents);
        }
    }

    /// <summary>False when all coils at full draw, one kiln changing its charge within the period, would not use up the spare heat.</summary>
    private bool CanBeShort(int period)
    {
        var coils = tables.Kilns.Where(k => k.OnBoiler).Select(k => (long)k.CoilTenths).ToList();
        return 2 * coils.Sum() + tables.StartedTenths[period] > tables.SpareTenths[period];
    }

    private IntVar Demand(ChargeSlot slot, int period)
    {
        var k = tables.Kilns[slot.Kiln];
        int from = period * tables.PeriodSteps, to = from + tables.PeriodSteps;
        var demand = Model.NewIntVar(0, k.CoilTenths, "heat");
        var warmLater = Implied(slot.LoadEnd >= to);
        var warmSooner = Implied(slot.WarmEnd <= from);
        var runLater = Implied(slot.WarmEnd >= to);
        var runSooner = Implied(slot.Dry <= from);
        for (var j = 0; j < slot.Warm.Length; j++)
        {
            Model.Add(demand >= WarmTenths(slot, j) + k.HoldTenths[period]).OnlyEnforceIf([slot.Warm[j], warmLater.Not(), warmSooner.Not()]);
        }

        Model.Add(demand >= RunTenths(slot) + k.HoldTenths[period]).OnlyEnforceIf([slot.Used, runLater.Not(), runSooner.Not()]);
        return demand;
    }

    private BoolVar Implied(BoundedLinearExpression fact)
    {
        var literal = Model.NewBoolVar("");
        Model.Add(fact).OnlyEnforceIf(literal);
        return literal;
    }

    private LinearExpr WarmTenths(ChargeSlot slot, int choice) =>
        Sum(slot, use => use.WarmTenths[choice]) + tables.Kilns[slot.Kiln].StructureTenths[choice];

    private LinearExpr RunTenths(ChargeSlot slot) => Sum(slot, use => use.RunTenths);

    private LinearExpr Sum(ChargeSlot slot, Func<KilnUse, int> value)
    {
        var here = Enumerable.Range(0, tables.Stacks.Length).Where(s => slot.Has[s] is not null).ToList();
        return LinearExpr.WeightedSum(here.Select(s => slot.Has[s]!), here.Select(s => (long)value(tables.Stacks[s].Uses[slot.Kiln]!)));
    }
}
