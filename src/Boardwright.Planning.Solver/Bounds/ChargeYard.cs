namespace Boardwright.Planning.Solver;

/// <summary>A yard as the bound of its lateness sees it: units, ways to serve orders, and by kiln and day what loading leads to; with a place for the price of each limit.</summary>
internal sealed class ChargeYard
{
    /// <summary>Days after the plan's end on which a unit is still ready sooner than an order not met counts.</summary>
    private const int DaysAfterEnd = OrderTable.DaysAfterEndWhenUnmet + 1;

    private const double TenthsMost = 1e5; // ten megawatts
    private const double Countable = 1L << 50; // times 1024 parts of a cent

    private readonly int[] unitOf;

    /// <param name="tables">The yard.</param>
    /// <param name="most">With the drying times that are enough nine times in ten.</param>
    public ChargeYard(PlanTables tables, bool most)
    {
        Tables = tables;
        IsMost = most;
        Days = tables.Calendar.Days + DaysAfterEnd;
        unitOf = Enumerable.Repeat(-1, tables.Stacks.Length).ToArray();
        var counted = tables.Orders.Where(order => order is { UnmetDays: > 0, CentsPerDay: > 0 }).ToList();
        var units = new List<DayUnit>();
        foreach (var stack in counted.SelectMany(order => order.Wood).Where(wood => wood.Kilned && !tables.Stacks[wood.Stack].Started).Select(wood => wood.Stack))
        {
            if (unitOf[stack] < 0)
            {
                units.Add(Unit(stack, units.Count));
            }
        }

        Units = [.. units];
        Asked = [.. counted.Select(order => new Asked(tables, order, unitOf, most))];
        Taken = [.. SoldOnce.Rows(tables, Asked)];
        RowsOf = [.. Asked.Select((asked, a) => asked.Ways.Select((_, w) => Enumerable.Range(0, Taken.Length).Where(row => Taken[row].Ways.Contains((a, w))).ToArray()).ToArray())];
        Together = [.. Units.Select(one => Units.Select(other => other != one && one.Together(other)).ToArray())];
        Loads = [.. Enumerable.Range(0, tables.Kilns.Length).Select(kiln => Enumerable.Range(0, tables.Calendar.Days).Select(day => LoadsOf(kiln, day)).ToArray())];
        Serves = [.. Units.Select((_, u) => Asked.SelectMany((asked, a) => asked.Units.Select((unit, slot) => (Asked: a, Slot: slot, Unit: unit))).Where(one => one.Unit == u).Select(one => (one.Asked, one.Slot)).ToArray())];
        LateOn = [.. Asked.Select(asked => Enumerable.Range(0, Days).Select(day => Math.Min(asked.UnmetDays, asked.LateOn(tables, day))).ToArray())];
        var next = 0;
        int Place(int count)
        {
            next += count;
            return next - count;
        }

        LatePrices = [.. Asked.Select(asked => asked.Units.Select(_ => Place(asked.UnmetDays)).ToArray())];
        OncePrices = Place(Units.Length);
        HeatPrices = Place(tables.Periods);
        CrewPrices = Place(tables.Calendar.Days);
        TakenPrices = Place(Taken.Length);
        Prices = next;
        HeatMost = [.. Enumerable.Range(0, tables.Periods).Select(p => Math.Max(0, tables.SpareTenths[p] + tables.ShortMostTenths[p] - tables.StartedTenths[p]))];
        CrewMost = new int[tables.Calendar.Days];
        foreach (var window in tables.Calendar.CrewWindows)
        {
            CrewMost[tables.Calendar.DayOf(window.From)] += window.Length * tables.Calendar.KilnsAtOnce;
        }
    }

    public PlanTables Tables { get; }

    public bool IsMost { get; }

    /// <summary>Days on which a unit can be ready and count for something.</summary>
    public int Days { get; }

    public DayUnit[] Units { get; }

    public Asked[] Asked { get; }

    public TakenRow[] Taken { get; }

    /// <summary>By order and way: the rows it is in.</summary>
    public int[][][] RowsOf { get; }

    /// <summary>Whether two units may share a charge.</summary>
    public bool[][] Together { get; }

    /// <summary>By kiln and day: the way that is quickest for each unit, then one for each warm-up time where heat is limited.</summary>
    public LoadDay[][][] Loads { get; }

    /// <summary>By unit: the orders it may serve, and its slot there.</summary>
    public (int Asked, int Slot)[][] Serves { get; }

    /// <summary>By order and day on which the last of its wood is out: how late it is.</summary>
    public int[][] LateOn { get; }

    /// <summary>Number of prices.</summary>
    public int Prices { get; }

    /// <summary>By order and slot: where the prices of having the wood by so many days late begin.</summary>
    public int[][] LatePrices { get; }

    /// <summary>Where the prices of drying a unit once begin.</summary>
    public int OncePrices { get; }

    public int HeatPrices { get; }

    public int CrewPrices { get; }

    public int TakenPrices { get; }

    public int[] HeatMost { get; }

    public int[] CrewMost { get; }

    /// <summary>Whether sums of prices stay within whole numbers; not for money beyond all measure.</summary>
    public bool IsCountable => Asked.Sum(asked => (double)asked.Order.CentsPerDay * asked.UnmetDays) < PriceMost(OncePrices);

    public bool IsHeat(int price) => price >= HeatPrices && price < HeatPrices + HeatMost.Length;

    /// <summary>The highest price that can be counted with, cents: what every charge of every day pays together does not overflow.</summary>
    public double PriceMost(int price) => Countable / ((double)Days * Prices) / (IsHeat(price) ? TenthsMost : 1.0);

    private DayUnit Unit(int stack, int index)
    {
        int[] stacks = Tables.Stacks[stack].Stack.MatchedSet is not { } set ? [stack]
            : [.. Enumerable.Range(0, Tables.Stacks.Length).Where(s => Tables.Stacks[s].Stack.MatchedSet == set && !Tables.Stacks[s].Started)];
        foreach (var one in stacks)
        {
            unitOf[one] = index;
        }

        return new(Tables, stacks);
    }

    private LoadDay[] LoadsOf(int kiln, int day)
    {
        int?[] warmUps = Tables.Kilns[kiln].OnBoiler ? [null, .. Enumerable.Range(0, Tables.Kilns[kiln].WarmSteps.Length)] : [null];
        return [.. warmUps.Select(warmUp => LoadDay.Of(Tables, Units, kiln, day, warmUp, IsMost)).OfType<LoadDay>()];
    }
}
