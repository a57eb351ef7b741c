namespace Boardwright.Planning.Solver;

/// <summary>A way to serve an order.</summary>
/// <param name="Stacks">From these stacks.</param>
/// <param name="Slots">Those of them that a plan dries, as slots of the order.</param>
/// <param name="FirstLate">How late it is at least because of those that no plan touches.</param>
/// <param name="Beside">Stacks that may give a part each.</param>
internal readonly record struct AskedWay(int[] Stacks, int[] Slots, int FirstLate, int[] Beside);

/// <summary>An order as the bound sees it: the ways to serve it, and by how late it may be served so.</summary>
internal sealed class Asked
{
    private const int FewWoods = 5; // among so few all choices are listed, those too that could do without a stack but take less of others with it
    private const int WoodMost = 12; // of more, only choices that could do without no stack; beyond so many, the rest is taken as one great stack that is there when the first of them is

    public Asked(PlanTables tables, OrderTable order, int[] unitOf, bool most)
    {
        Order = order;
        Units = [.. order.Wood.Where(wood => wood.Kilned && unitOf[wood.Stack] >= 0).Select(wood => unitOf[wood.Stack]).Distinct()];
        Ways = [.. All(tables, order, unitOf, most)];
    }

    public OrderTable Order { get; }

    /// <summary>The units that may serve it, one slot of prices for each.</summary>
    public int[] Units { get; }

    public AskedWay[] Ways { get; }

    /// <summary>Days late that count when it is not met.</summary>
    public int UnmetDays => Order.UnmetDays;

    /// <summary>Days late when its wood is out of the kiln on a day.</summary>
    public int LateOn(PlanTables tables, int day) => Math.Max(0, tables.ReadyDay(Order.Order.PlanerRuns, day) - Order.DueDay);

    private IEnumerable<AskedWay> All(PlanTables tables, OrderTable order, int[] unitOf, bool most)
    {
        // Yield and day of each wood; that of the plan's units is theirs to say.
        var woods = order.Wood.Select(wood => (wood.Stack, Slot: wood.Kilned ? Array.IndexOf(Units, unitOf[wood.Stack]) : -1, Yield: (long)tables.Stacks[wood.Stack].YieldTenths, Late: Fixed(tables, wood, most)))
            .Where(wood => wood.Slot >= 0 || wood.Late < UnmetDays).OrderByDescending(wood => wood.Yield).ToList();
        if (woods.Count > WoodMost)
        {
            var rest = woods.Skip(WoodMost - 1).ToList();
            woods = [.. woods.Take(WoodMost - 1), (-1, -1, order.QuantityTenths, rest.Min(wood => wood.Slot >= 0 ? 0 : wood.Late))];
        }

        var few = woods.Count <= FewWoods;
        for (var bits = 0; bits < 1 << woods.Count; bits++)
        {
            var chosen = woods.Where((_, w) => (bits >> w & 1) != 0).ToList();
            var spare = chosen.Sum(wood => wood.Yield) - order.QuantityTenths;
            if (spare >= 0 && (few || chosen.All(wood => wood.Yield > spare)))
            {
                int[] stacks = [.. chosen.Where(wood => wood.Stack >= 0).Select(wood => wood.Stack)];
                yield return new(
                    stacks, [.. chosen.Where(wood => wood.Slot >= 0).Select(wood => wood.Slot).Distinct()],
                    chosen.Where(wood => wood.Slot < 0).Select(wood => wood.Late).DefaultIfEmpty(0).Max(), few ? stacks : [.. order.Wood.Select(wood => wood.Stack)]);
            }
        }
    }

    // Days late of wood that goes into no kiln any more, whatever the plan.
    private int Fixed(PlanTables tables, OrderWoodTable wood, bool most)
    {
        var stack = tables.Stacks[wood.Stack];
        if (!stack.Started)
        {
            return wood.Kilned ? 0 : LateOn(tables, stack.AvailableDay);
        }

        var kiln = Array.FindIndex(tables.Kilns, k => k.StartedStacks.Contains(wood.Stack));
        return wood.Kilned ? LateOn(tables, tables.Calendar.DayOf(tables.UnloadFrom(kiln, most ? tables.Kilns[kiln].StartedDryMost : tables.Kilns[kiln].StartedDry))) : int.MaxValue;
    }
}
