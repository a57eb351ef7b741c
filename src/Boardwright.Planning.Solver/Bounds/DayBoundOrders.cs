namespace Boardwright.Planning.Solver;

// What the orders ask: each is served from its yields by a day, or late.
internal sealed partial class DayBound
{
    private void Orders()
    {
        var done = new Dictionary<(int Unit, int Runs), int[]>();
        var finished = new List<(OrderTable Order, int Variable)>();
        foreach (var order in tables.Orders.Where(Counts))
        {
            var complete = Enumerable.Range(0, order.UnmetDays).Select(_ => program.Variable(-order.CentsPerDay)).ToArray();
            constant += order.CentsPerDay * order.UnmetDays;
            var total = order.Wood.Sum(wood => (long)tables.Stacks[wood.Stack].YieldTenths);
            for (var late = 0; late < complete.Length; late++)
            {
                if (late > 0)
                {
                    program.AtMost(0, [(complete[late - 1], 1), (complete[late], -1)]);
                }

                var quantity = new List<(int, long)> { (complete[late], order.QuantityTenths) };
                long there = 0;
                foreach (var wood in order.Wood)
                {
                    var yield = Math.Min(tables.Stacks[wood.Stack].YieldTenths, order.QuantityTenths);
                    var (sure, variable) = By(wood, order, order.DueDay + late, done);
                    there += sure ? yield : 0;
                    if (variable >= 0)
                    {
                        quantity.Add((variable, -yield));
                    }

                    if (!sure && total - tables.Stacks[wood.Stack].YieldTenths < order.QuantityTenths) // it cannot do without
                    {
                        program.AtMost(0, variable < 0 ? [(complete[late], 1)] : [(complete[late], 1), (variable, -1)]);
                    }
                }

                program.AtMost(there, quantity);
            }

            finished.Add((order, complete[^1]));
        }

        Yields(finished);
    }

    // What orders met in the end take of a stack is not more than it yields: parts of a quantity, each between 0 and 1 of it.
    private void Yields(List<(OrderTable Order, int Variable)> finished)
    {
        var takers = new Dictionary<int, List<(int, long)>>();
        foreach (var (order, variable) in finished)
        {
            var sum = new List<(int, long)> { (variable, order.QuantityTenths) };
            foreach (var wood in order.Wood)
            {
                var most = Math.Min(tables.Stacks[wood.Stack].YieldTenths, order.QuantityTenths);
                var part = program.Variable();
                sum.Add((part, -most));
                (takers.TryGetValue(wood.Stack, out var list) ? list : takers[wood.Stack] = []).Add((part, most));
            }

            program.AtMost(0, sum);
        }

        NotAll(finished);
        foreach (var (stack, sum) in takers.Where(one => one.Value.Count > 1))
        {
            program.AtMost(tables.Stacks[stack].YieldTenths, sum);
        }
    }

    // Two or three orders that ask together for more than all their wood yields are not all met.
    private void NotAll(List<(OrderTable Order, int Variable)> finished)
    {
        bool Enough(params ReadOnlySpan<int> orders)
        {
            var (wood, asked) = (new HashSet<int>(), 0L);
            foreach (var o in orders)
            {
                wood.UnionWith(finished[o].Order.Wood.Select(one => one.Stack));
                asked += finished[o].Order.QuantityTenths;
            }

            return asked <= wood.Sum(stack => (long)tables.Stacks[stack].YieldTenths);
        }

        bool Meet(int a, int b) => finished[a].Order.Wood.Any(one => finished[b].Order.Wood.Any(other => other.Stack == one.Stack));
        for (var a = 0; a < finished.Count; a++)
        {
            for (var b = 0; b < a; b++)
            {
                if (Meet(a, b) && !Enough(a, b))
                {
                    program.AtMost(1, [(finished[a].Variable, 1), (finished[b].Variable, 1)]);
                    continue;
                }

                for (var c = 0; Meet(a, b) && c < finished.Count; c++)
                {
                    if (c != a && c != b && Meet(b, c) && Enough(a, c) && Enough(b, c) && !Enough(a, b, c))
                    {
                        program.AtMost(2, [(finished[a].Variable, 1), (finished[b].Variable, 1), (finished[c].Variable, 1)]);
                    }
                }
            }
        }
    }

    // Whether wood is there by a day for certain, or the variable that says so; neither where it cannot be.
    private (bool Sure, int Variable) By(OrderWoodTable wood, OrderTable order, int day, Dictionary<(int Unit, int Runs), int[]> done)
    {
        var stack = tables.Stacks[wood.Stack];
        var runs = order.Order.PlanerRuns;
        if (stack.Started)
        {
            return (wood.Kilned && tables.ReadyDay(runs, OutOfStanding(wood.Stack)) <= day, -1);
        }

        if (!wood.Kilned)
        {
            return (tables.ReadyDay(runs, stack.AvailableDay) <= day, -1);
        }

        if (day < 0)
        {
            return (false, -1);
        }

        var unit = unitOf[wood.Stack];
        if (!done.TryGetValue((unit, runs), out var by))
        {
            by = done[(unit, runs)] = Done(unit, runs);
        }

        return (false, by[Math.Min(day, by.Length - 1)]);
    }

    private int OutOfStanding(int stack)
    {
        var kiln = Array.FindIndex(tables.Kilns, k => k.StartedStacks.Contains(stack));
        return tables.Calendar.DayOf(tables.UnloadFrom(kiln, most ? tables.Kilns[kiln].StartedDryMost : tables.Kilns[kiln].StartedDry));
    }

    // By day: the variable that says that a unit is out and planed; -1 before the first such day.
    private int[] Done(int unit, int runs)
    {
        var ready = outs[unit].Select(way => (Day: tables.ReadyDay(runs, way.Day), way.Variable)).ToLookup(way => way.Day, way => way.Variable);
        var by = new int[Math.Max(tables.Calendar.Days, ready.Select(group => group.Key).DefaultIfEmpty(0).Max()) + 1];
        var before = -1;
        for (var day = 0; day < by.Length; day++)
        {
            if (ready.Contains(day))
            {
                var variable = program.Variable();
                var sum = ready[day].Select(way => (way, -1L)).Append((variable, 1));
                program.AtMost(0, before < 0 ? sum : sum.Append((before, -1)));
                before = variable;
            }

            by[day] = before;
        }

        return by;
    }
}
