namespace Boardwright.Planning.Solver;

/// <summary>How late the orders of a yard are at least: prices for what they share, and cases where prices do not settle it.</summary>
/// <remarks>
/// A case is a part of all plans. The case with the lowest bound is parted in two at what its solutions leave open: whether an order is ready by a day, whether a
/// unit goes into a kiln or is loaded by a day. No plan is below the lowest case (branch and bound). Method: docs/methods/kiln-plan.md.
/// </remarks>
internal sealed class ChargeBound
{
    private const double FirstMove = 0.3; // of a mean order's day late, in the prices of the first steps
    private const int FirstSteps = 250; // doubled until nothing is gained
    private const int FirstStepsMost = 2000;
    private const double Gained = 0.002;
    private const double NextMove = 0.03;
    private const int NextSteps = 80;
    private const double Decided = 0.05; // of a day: what spreads less is not in doubt

    private readonly ChargeYard yard;
    private readonly PriceAscent ascent;
    private readonly long step;
    private readonly Func<long> target;
    private readonly Func<int, bool> more;
    private readonly PriorityQueue<Case, long> cases = new();
    private int steps;

    private ChargeBound(ChargeYard yard, Func<long> target, Func<int, bool> more)
    {
        (this.yard, this.target, this.more) = (yard, target, more);
        ascent = new(yard);
        step = yard.Asked.Select(asked => asked.Order.CentsPerDay).DefaultIfEmpty(1).Aggregate(Divisor);
    }

    /// <summary>Cents of lateness that no plan is below.</summary>
    /// <param name="tables">The yard.</param>
    /// <param name="most">With the drying times that are enough nine times in ten.</param>
    /// <param name="target">Lateness of the best plan known, cents; asked now and then.</param>
    /// <param name="more">Asked with the number of steps done whether there is time for more.</param>
    /// <param name="better">Told of each better bound.</param>
    public static long Of(PlanTables tables, bool most, Func<long> target, Func<int, bool> more, Action<long>? better = null)
    {
        var yard = new ChargeYard(tables, most);
        var turns = yard.Loads.Any(kiln => kiln.Any(day => day.Any(load => load.Windows.Any(window => window.NextDay <= load.Day))));
        return turns || !yard.IsCountable ? 0 : new ChargeBound(yard, target, more).Run(better); // a kiln loaded twice on a day is not foreseen
    }

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);

    private long Run(Action<long>? better)
    {
        long proven = 0;
        Keep(First());
        while (cases.TryPeek(out _, out var lowest))
        {
            Tell(lowest);
            if (proven >= target() || !more(steps))
            {
                return proven;
            }

            var one = cases.Dequeue();
            if (Part(one) is not (var (left, right)))
            {
                return proven; // nothing left to decide by: the bound stays
            }

            Keep(Priced(left, one.Prices, one.Bound, NextMove, NextSteps));
            Keep(Priced(right, one.Prices, one.Bound, NextMove, NextSteps));
        }

        return Math.Max(proven, target()); // every case is as late as the best plan

        // All plans: prices until nothing is gained.
        Case First()
        {
            var root = Priced(Branch.All(yard), ascent.First(), long.MinValue, FirstMove, FirstSteps);
            for (var most = 2 * FirstSteps; most <= FirstStepsMost && IsOpen(root); most *= 2)
            {
                Tell(root.Bound);
                var again = Priced(root.Branch, root.Prices, root.Bound, FirstMove, most);
                (root, var gained) = (again, again.Bound > root.Bound * (1.0 + Gained));
                if (!gained)
                {
                    break;
                }
            }

            return root;
        }

        void Tell(long bound)
        {
            if (bound > proven)
            {
                proven = bound;
                better?.Invoke(proven);
            }
        }
    }

    private bool IsOpen(Case one) => one.Bound < target() && more(steps);

    private Case Priced(Branch branch, double[] prices, long parent, double move, int most)
    {
        var use = new ChargeUse(yard);
        var (bound, found) = ascent.Run(prices, branch, use, (target() - step) * ChargePrices.Parts + 1, move, most, () => more(++steps));
        return new(branch, found, use, Math.Max(parent, Up(bound)));
    }

    private void Keep(Case one)
    {
        if (one.Bound < target())
        {
            cases.Enqueue(one, one.Bound);
        }
    }

    // Lateness comes in whole multiples of what all orders' days have in common.
    private long Up(long parts)
    {
        if (parts <= 0)
        {
            return 0;
        }

        var cents = (parts + ChargePrices.Parts - 1) / ChargePrices.Parts;
        return (cents + step - 1) / step * step;
    }

    private (Branch, Branch)? Part(Case one)
    {
        var (worst, spread) = (-1, 0.0);
        for (var a = 0; a < yard.Asked.Length; a++)
        {
            var doubt = Spread(one.Use.Late[a], one.Use.LateSquare[a], one.Use.Weight) * yard.Asked[a].Order.CentsPerDay;
            if (one.Branch.LateFrom[a] < one.Branch.LateTo[a] && doubt > spread)
            {
                (worst, spread) = (a, doubt);
            }
        }

        if (worst >= 0 && spread > Decided * yard.Asked[worst].Order.CentsPerDay)
        {
            var late = (int)Math.Floor(one.Use.Late[worst] / one.Use.Weight);
            return one.Branch.ByLate(yard, worst, Math.Clamp(late, one.Branch.LateFrom[worst], Math.Min(one.Branch.LateTo[worst], yard.Asked[worst].UnmetDays) - 1));
        }

        return ByUnit(one);
    }

    private (Branch, Branch)? ByUnit(Case one)
    {
        var kilns = yard.Tables.Kilns.Length;
        var (branch, most) = (((Branch, Branch)?)null, Decided);
        for (var u = 0; u < yard.Units.Length; u++)
        {
            var often = one.Use.Often.AsSpan(u * kilns, kilns);
            var all = 0.0;
            var main = 0;
            for (var kiln = 0; kiln < kilns; kiln++)
            {
                all += often[kiln];
                main = often[kiln] > often[main] ? kiln : main;
            }

            if (all <= Decided)
            {
                continue;
            }

            var share = 1.0 - often[main] / all;
            if (share > most && main < 64)
            {
                (branch, most) = (one.Branch.ByKiln(u, main), share);
            }

            var doubt = Spread(one.Use.Day[u], one.Use.DaySquare[u], all) / 10.0;
            var day = (int)Math.Floor(one.Use.Day[u] / all);
            if (doubt > most && one.Branch.LoadFrom[u] <= day && day < one.Branch.LoadTo[u])
            {
                (branch, most) = (one.Branch.ByLoad(u, day), doubt);
            }
        }

        return branch;
    }

    private static double Spread(double sum, double squares, double weight) => weight <= 0.0 ? 0.0 : Math.Sqrt(Math.Max(0.0, squares / weight - sum / weight * (sum / weight)));

    private sealed record Case(Branch Branch, double[] Prices, ChargeUse Use, long Bound);
}
