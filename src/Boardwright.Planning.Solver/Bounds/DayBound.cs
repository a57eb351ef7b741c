namespace Boardwright.Planning.Solver;

/// <summary>How late the orders of a yard are at least: the plan with days for hours and parts for wholes, solved as a linear program.</summary>
/// <remarks>
/// Every plan keeps its rules: a charge stands from its load day to the day its slowest stack is out at the earliest; a kiln has one charge a day; stacks that
/// may not share it take turns; room, crew at loading and heat suffice each day; yields are not sold twice. Nothing is rounded but to the plan's favour, so what
/// the program cannot do better no plan can. Method: docs/methods/kiln-plan.md.
/// </remarks>
internal sealed partial class DayBound
{
    private const double Used = 0.01;

    private readonly PlanTables tables;
    private readonly bool most;
    private readonly LinearProgram program = new();
    private readonly List<DayUnit> units = [];
    private readonly int[] unitOf;
    private readonly List<(int Day, int Variable)>[] outs; // by unit: the day it is out, and the variable of that way
    private readonly List<(int Variable, long Factor)>[] heat;
    private readonly List<(int Variable, long Factor)>[] loading;
    private readonly List<Begun> begun = [];
    private readonly HashSet<(int Kiln, int Low, int High)> apart = [];
    private long constant;

    private DayBound(PlanTables tables, bool most)
    {
        this.tables = tables;
        this.most = most;
        unitOf = Enumerable.Repeat(-1, tables.Stacks.Length).ToArray();
        foreach (var stack in tables.Orders.Where(Counts).SelectMany(order => order.Wood).Where(wood => wood.Kilned && !tables.Stacks[wood.Stack].Started).Select(wood => wood.Stack).Distinct())
        {
            if (unitOf[stack] < 0)
            {
                Unit(stack);
            }
        }

        outs = [.. units.Select(_ => new List<(int, int)>())];
        heat = [.. Enumerable.Range(0, tables.Periods).Select(_ => new List<(int, long)>())];
        loading = [.. Enumerable.Range(0, tables.Calendar.Days).Select(_ => new List<(int, long)>())];
        for (var kiln = 0; kiln < tables.Kilns.Length; kiln++)
        {
            Kiln(kiln);
        }

        foreach (var ways in outs)
        {
            program.AtMost(1, ways.Select(way => (way.Variable, 1L)));
        }

        CrewAndHeat();
        Orders();
    }

    /// <summary>Cents of lateness that no plan is below.</summary>
    /// <param name="tables">The yard.</param>
    /// <param name="most">With the drying times that are enough nine times in ten.</param>
    /// <param name="seconds">Time for it.</param>
    /// <param name="cancel">Ends it; the bound is then weak but true.</param>
    public static long Of(PlanTables tables, bool most, double seconds, CancellationToken cancel = default)
    {
        var bound = new DayBound(tables, most);
        var cents = (long)Math.Ceiling(bound.program.Bound(seconds, bound.TakeTurns, cancel) + bound.constant - 1e-3);
        var step = tables.Orders.Where(order => order.CentsPerDay > 0).Select(order => order.CentsPerDay).DefaultIfEmpty(1).Aggregate(Divisor);
        return Math.Max(0, (cents + step - 1) / step * step);
    }

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);

    private static bool Counts(OrderTable order) => order.UnmetDays > 0 && order.CentsPerDay > 0;

    private void Unit(int stack)
    {
        int[] stacks = tables.Stacks[stack].Stack.MatchedSet is not { } set ? [stack]
            : [.. Enumerable.Range(0, tables.Stacks.Length).Where(s => tables.Stacks[s].Stack.MatchedSet == set && !tables.Stacks[s].Started)];
        foreach (var one in stacks)
        {
            unitOf[one] = units.Count;
        }

        units.Add(new(tables, stacks));
    }

    private void Kiln(int kiln)
    {
        var cliques = Cliques(kiln);
        var standing = Enumerable.Range(0, tables.Calendar.Days).Select(_ => new List<(int, long)>()).ToArray();
        for (var day = 0; day < tables.Calendar.Days; day++)
        {
            var ways = Enumerable.Range(0, units.Count).Select(unit => (Unit: unit, Way: units[unit].Way(kiln, day, most))).Where(one => one.Way is not null).Select(one => new Loaded(one.Unit, one.Way!, program.Variable())).ToList();
            if (ways.Count > 0)
            {
                Start(kiln, day, ways, cliques, standing);
            }
        }

        foreach (var sum in standing)
        {
            program.AtMost(1, sum);
        }
    }

    // Charges begun on a day: one variable for each length says that the charge stands at least so long.
    private void Start(int kiln, int day, List<Loaded> ways, List<int[]> cliques, List<(int, long)>[] standing)
    {
        var k = tables.Kilns[kiln];
        var lengths = ways.Select(one => one.Way.OutDay - day).Distinct().Order().ToList();
        var lasts = lengths.ToDictionary(length => length, _ => program.Variable());
        for (var i = 0; i < lengths.Count; i++)
        {
            var length = lengths[i];
            var longer = ways.Where(one => one.Way.OutDay - day >= length).ToList();
            if (i > 0)
            {
                program.AtMost(0, [(lasts[length], 1), (lasts[lengths[i - 1]], -1)]);
            }

            foreach (var clique in cliques)
            {
                var members = longer.Where(one => clique.Contains(one.Unit)).ToList();
                if (members.Any(one => one.Way.OutDay - day == length))
                {
                    program.AtMost(0, members.Select(one => (one.Variable, 1L)).Append((lasts[length], -1)));
                }
            }

            if (longer.Sum(one => (long)units[one.Unit].LoadTenths) > k.CapacityTenths)
            {
                program.AtMost(0, longer.Select(one => (one.Variable, (long)units[one.Unit].LoadTenths)).Append((lasts[length], -k.CapacityTenths)));
            }
        }

        begun.Add(new(kiln, day, ways, lasts));
        for (var t = day; t < tables.Calendar.Days && t - day < lengths[^1]; t++)
        {
            standing[t].Add((lasts[lengths.First(length => length > t - day)], 1));
        }

        loading[day].Add((lasts[lengths[0]], k.Loading));
        foreach (var one in ways)
        {
            outs[one.Unit].Add((one.Way.ReadyDay, one.Variable));
        }

        if (k.OnBoiler)
        {
            Draw(k, ways, lengths, lasts, day);
        }
    }

    // Heat that is drawn for certain: from the end of the latest loading of that day to the earliest time at which it could be dry.
    private void Draw(KilnTable k, List<Loaded> ways, List<int> lengths, Dictionary<int, int> lasts, int day)
    {
        foreach (var one in ways)
        {
            foreach (var period in Periods(one.Way.HeatFrom, one.Way.Dry))
            {
                heat[period].Add((one.Variable, one.Way.DrawTenths));
            }
        }

        var held = new HashSet<int>();
        foreach (var length in lengths)
        {
            var longer = ways.Where(one => one.Way.OutDay - day >= length).ToList();
            foreach (var period in Periods(longer.Max(one => one.Way.HeatFrom), longer.Min(one => one.Way.Dry)).Where(held.Add))
            {
                heat[period].Add((lasts[length], k.HoldTenths[period]));
            }
        }
    }

    private IEnumerable<int> Periods(int from, int to)
    {
        for (var period = from / tables.PeriodSteps; from < to && period < tables.Periods && period * tables.PeriodSteps < to; period++)
        {
            yield return period;
        }
    }

    // Groups of units of which no two may share a charge; each unit in one of them.
    private List<int[]> Cliques(int kiln)
    {
        var left = Enumerable.Range(0, units.Count).Where(unit => units[unit].IsOpen(kiln)).ToList();
        var found = new List<int[]>();
        while (left.Count > 0)
        {
            var clique = new List<int> { left[0] };
            foreach (var unit in left.Skip(1))
            {
                if (clique.All(other => !Together(kiln, unit, other)))
                {
                    clique.Add(unit);
                }
            }

            found.Add([.. clique]);
            left.RemoveAll(clique.Contains);
        }

        return found;
    }

    private bool Together(int kiln, int a, int b) =>
        units[a].LoadTenths + units[b].LoadTenths <= tables.Kilns[kiln].CapacityTenths
        && units[a].Stacks.All(one => units[b].Stacks.All(other => tables.Together[one, other]));

    private void CrewAndHeat()
    {
        var crew = new long[tables.Calendar.Days];
        foreach (var window in tables.Calendar.CrewWindows)
        {
            crew[tables.Calendar.DayOf(window.From)] += (long)window.Length * tables.Calendar.KilnsAtOnce;
        }

        for (var day = 0; day < crew.Length; day++)
        {
            if (loading[day].Sum(one => one.Factor) > crew[day])
            {
                program.AtMost(crew[day], loading[day]);
            }
        }

        for (var period = 0; period < tables.Periods; period++)
        {
            program.AtMost(tables.SpareTenths[period] + tables.ShortMostTenths[period] - tables.StartedTenths[period], heat[period]);
        }
    }

    // Pairs in different groups that the last solution mixes although they may not share: they take turns in that kiln from now on.
    private bool TakeTurns(Func<int, double> value)
    {
        var found = new List<(int Kiln, int A, int B)>();
        foreach (var start in begun)
        {
            var used = start.Ways.Where(one => value(one.Variable) > Used).ToList();
            foreach (var (a, b) in used.SelectMany((a, i) => used.Take(i).Select(b => (a, b))))
            {
                var shorter = Math.Min(a.Way.OutDay, b.Way.OutDay) - start.Day;
                var key = (start.Kiln, Math.Min(a.Unit, b.Unit), Math.Max(a.Unit, b.Unit));
                if (!Together(start.Kiln, a.Unit, b.Unit) && !apart.Contains(key) && value(a.Variable) + value(b.Variable) > value(start.Lasts[shorter]) + Used)
                {
                    found.Add(key);
                }
            }
        }

        foreach (var (kiln, a, b) in found)
        {
            if (apart.Add((kiln, a, b)))
            {
                Apart(kiln, a, b);
            }
        }

        return found.Count > 0;
    }

    private void Apart(int kiln, int a, int b)
    {
        var clique = new List<int> { a, b };
        foreach (var unit in Enumerable.Range(0, units.Count).Where(unit => units[unit].IsOpen(kiln) && clique.All(other => other != unit && !Together(kiln, unit, other))))
        {
            clique.Add(unit);
        }

        apart.UnionWith(clique.SelectMany(one => clique.Where(other => other > one).Select(other => (kiln, one, other))));
        foreach (var start in begun.Where(start => start.Kiln == kiln))
        {
            var members = start.Ways.Where(one => clique.Contains(one.Unit)).ToList();
            foreach (var length in members.Select(one => one.Way.OutDay - start.Day).Distinct())
            {
                program.AtMost(0, members.Where(one => one.Way.OutDay - start.Day >= length).Select(one => (one.Variable, 1L)).Append((start.Lasts[length], -1)));
            }
        }
    }

    private sealed record Begun(int Kiln, int Day, List<Loaded> Ways, Dictionary<int, int> Lasts);

    private readonly record struct Loaded(int Unit, DayWay Way, int Variable);
}
