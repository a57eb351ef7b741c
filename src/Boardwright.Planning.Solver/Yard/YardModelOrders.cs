using Google.OrTools.Sat;

namespace Boardwright.Planning.Solver;

/// <content>Orders: which wood serves them and when they are ready.</content>
internal sealed partial class YardModel
{
    private readonly List<BoolVar> met = [];
    private readonly List<BoolVar[]> draws = [];
    private readonly List<IntVar[]> amounts = [];
    private readonly Dictionary<(int Stack, int Runs), (IntVar Half, IntVar Most)> readyOfStack = [];

    private readonly List<IntVar> daysLate = [];

    /// <summary>Days late of each order, at least.</summary>
    public IReadOnlyList<IntVar> DaysLate => daysLate;

    private int LastDay => tables.Calendar.Days + 500; // past any ready day: the longest p90 time and 30 days of planing

    private void Orders()
    {
        var late = new List<LinearExpr>();
        var risk = new List<LinearExpr>();
        for (var o = 0; o < tables.Orders.Length; o++)
        {
            var order = tables.Orders[o];
            Wood(order);
            var (half, most) = (Model.NewIntVar(AloneInYard.DaysLate(tables, order, false), LastDay, "days late"), Model.NewIntVar(AloneInYard.DaysLate(tables, order, true), LastDay, "days late p90"));
            Model.Add(half >= order.UnmetDays).OnlyEnforceIf(met[o].Not());
            Model.Add(most >= order.UnmetDays).OnlyEnforceIf(met[o].Not());
            for (var w = 0; w < order.Wood.Length; w++)
            {
                var ready = ReadyOfStack(order.Wood[w].Stack, order.Order.PlanerRuns);
                Model.Add(half >= ready.Half - order.DueDay).OnlyEnforceIf(draws[o][w]);
                Model.Add(most >= ready.Most - order.DueDay).OnlyEnforceIf(draws[o][w]);
            }

            daysLate.Add(half);
            late.Add(half * order.CentsPerDay);
            risk.Add(most * order.CentsPerDay);
        }

        Yields();
        Late = LinearExpr.Sum(late);
        Risk = LinearExpr.Sum(risk);
    }

    private void Wood(OrderTable order)
    {
        var isMet = Model.NewBoolVar($"{order.Order.Id} met");
        var drawn = order.Wood.Select(_ => Model.NewBoolVar("draws")).ToArray();
        var taken = order.Wood.Select(wood => Model.NewIntVar(0, Math.Min(order.QuantityTenths, tables.Stacks[wood.Stack].YieldTenths), "takes")).ToArray();
        Model.Add(LinearExpr.Sum(taken) == isMet * order.QuantityTenths);
        for (var w = 0; w < order.Wood.Length; w++)
        {
            var wood = order.Wood[w];
            Model.Add(taken[w] == 0).OnlyEnforceIf(drawn[w].Not());
            Model.Add(taken[w] >= 1).OnlyEnforceIf(drawn[w]);
            Model.AddImplication(drawn[w], isMet);
            InItsState(wood, drawn[w]);
            costs.Add(drawn[w] * wood.ExtraCents);
        }

        met.Add(isMet);
        draws.Add(drawn);
        amounts.Add(taken);
    }

    private void InItsState(OrderWoodTable wood, BoolVar drawn)
    {
        if (tables.Stacks[wood.Stack].Started)
        {
            var slot = slots.First(slot => slot.Standing && IsIn(slot, wood.Stack));
            Model.AddImplication(drawn, wood.Kilned ? slot.Emptied : (ILiteral)Model.FalseLiteral());
            return;
        }

        if (wood.Kilned)
        {
            Model.AddBoolOr(PlacesOf(wood.Stack).Cast<ILiteral>().Append(drawn.Not()));
        }
        else
        {
            foreach (var place in PlacesOf(wood.Stack))
            {
                Model.AddImplication(drawn, place.Not());
            }
        }
    }

    private void Yields()
    {
        for (var s = 0; s < tables.Stacks.Length; s++)
        {
            var takers = tables.Orders.SelectMany((order, o) => order.Wood.Select((wood, w) => (wood.Stack, Amount: amounts[o][w]))).Where(taker => taker.Stack == s).ToList();
            if (takers.Count > 1)
            {
                Model.Add(LinearExpr.Sum(takers.Select(taker => taker.Amount)) <= tables.Stacks[s].YieldTenths);
            }
        }
    }

    /// <summary>Day on which a stack is ready, after so many days of planing, wherever the plan puts it.</summary>
    private (IntVar Half, IntVar Most) ReadyOfStack(int stack, int runs)
    {
        if (readyOfStack.TryGetValue((stack, runs), out var known))
        {
            return known;
        }

        var name = tables.Stacks[stack].Stack.Id;
        var ready = (Half: Model.NewIntVar(tables.ReadyDay(runs, tables.Stacks[stack].AvailableDay), LastDay, $"{name} ready"), Most: Model.NewIntVar(tables.ReadyDay(runs, tables.Stacks[stack].AvailableDay), LastDay, $"{name} ready p90"));
        foreach (var slot in slots)
        {
            var here = slot.Standing && IsIn(slot, stack) ? slot.Emptied : slot.Has[stack];
            if (here is not null)
            {
                Model.Add(ready.Half >= AfterPlaning(slot, runs, slot.UnloadDay, false)).OnlyEnforceIf(here);
                Model.Add(ready.Most >= AfterPlaning(slot, runs, slot.UnloadMostDay, true)).OnlyEnforceIf(here);
            }
        }

        return readyOfStack[(stack, runs)] = ready;
    }

    private readonly Dictionary<(ChargeSlot Slot, int Runs, bool Most), IntVar> planed = [];

    private IntVar AfterPlaning(ChargeSlot slot, int runs, IntVar day, bool most)
    {
        if (runs == 0)
        {
            return day;
        }

        if (!planed.TryGetValue((slot, runs, most), out var ready))
        {
            var last = (int)day.Domain.Max();
            ready = planed[(slot, runs, most)] = Model.NewIntVar(0, LastDay, "planed");
            Model.AddElement(day, Enumerable.Range(0, last + 1).Select(d => (long)tables.ReadyDay(runs, d)), ready);
        }

        return ready;
    }
}
