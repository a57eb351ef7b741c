using Boardwright.Numerics;

namespace Boardwright.Planning;

/// <summary>A plan played through many times, each charge drying a little slower or faster than forecast: when each order is ready then.</summary>
/// <remarks>
/// <para>Drying times are drawn log-normal through p50 and p90, for each charge its own. The order of the charges in each kiln is the plan's; a charge is loaded
/// at its hour, or later when the one before it is still in, or its people are busy; wood that waits longer dries from the day it is loaded. A charge that is
/// dry early comes out early; the next one still waits for its hour, for its heat is planned then.</para>
/// <para>Draws are spread evenly over each charge's chances (Latin hypercube), so that for one charge alone the share in time is that of the distribution to
/// one part in the number of trials. The heat of a charge that runs late is not looked at again.</para>
/// </remarks>
/// <source id="mckay-1979" locator="Latin hypercube sampling"/>
/// <method page="docs/methods/kiln-plan.md"/>
internal sealed class PlanTrials
{
    /// <summary>Trials where none are asked for: the share in time is then told to a quarter of one in ten and better.</summary>
    public const int Usual = 400;

    private const double TenPercentQuantile = 1.2815515655446004;
    private const ulong Seed = 1;

    private readonly PlanTables tables;
    private readonly List<TimedCharge> charges;
    private readonly List<(OrderTable Order, List<int> Charges, int Standing)?> orders;
    private readonly int[] crew;
    private readonly int[] crewPlanned;
    private readonly int[] unload;
    private readonly int[] next; // by kiln: place in its queue
    private readonly int[][] queue; // by kiln: its charges in the plan's order
    private readonly int[] free; // by kiln: empty from
    private readonly bool[] loaded;
    private readonly int[] dry;

    private PlanTrials(PlanTables tables, Plan plan)
    {
        this.tables = tables;
        charges = [.. plan.Charges.Select(charge => PlanOutlook.Timed(tables, charge))];
        crew = new int[tables.Calendar.Steps];
        crewPlanned = new int[tables.Calendar.Steps];
        unload = new int[charges.Count];
        dry = new int[charges.Count];
        loaded = new bool[charges.Count];
        next = new int[tables.Kilns.Length];
        free = new int[tables.Kilns.Length];
        queue = [.. tables.Kilns.Select((_, kiln) => Enumerable.Range(0, charges.Count).Where(c => charges[c].Kiln == kiln).OrderBy(c => charges[c].Started ? -1 : charges[c].Load).ToArray())];
        foreach (var charge in charges)
        {
            Plan(charge, load: true, 1, crewPlanned);
            Plan(charge, load: false, 1, crewPlanned);
        }

        var chargeOfStack = Scoring.ChargeOfStack(tables, charges);
        orders = [.. tables.Orders.Select(order => Needs(order, plan, chargeOfStack))];
    }

    /// <summary>Day number on which each order is ready, by order and trial; the plan's days and more where it is not ready inside the plan. Empty for an order the plan does not meet.</summary>
    public static int[][] ReadyDays(PlanTables tables, Plan plan, int trials = Usual)
    {
        var play = new PlanTrials(tables, plan);
        var draws = play.Draws(trials);
        var ready = play.orders.Select(order => order is null ? [] : new int[trials]).ToArray();
        for (var trial = 0; trial < trials; trial++)
        {
            play.Play(draws, trial);
            for (var o = 0; o < ready.Length; o++)
            {
                if (play.orders[o] is var (order, needs, standing))
                {
                    ready[o][trial] = Math.Max(standing, needs.Count == 0 ? 0 : needs.Max(charge => tables.ReadyDay(order.Order.PlanerRuns, tables.Calendar.DayOf(play.unload[charge]))));
                }
            }
        }

        return ready;
    }

    private (OrderTable, List<int>, int)? Needs(OrderTable order, Plan plan, TimedCharge?[] chargeOfStack)
    {
        var served = plan.Servings.Where(serving => serving.Order == order.Order.Id && serving.Quantity.Count > 0).ToList();
        if (Tenths.Up(served.Sum(serving => serving.Quantity.Count)) < order.QuantityTenths)
        {
            return null;
        }

        var stacks = served.Select(serving => Array.FindIndex(tables.Stacks, stack => stack.Stack.Id == serving.Stack)).ToList();
        return (order, [.. stacks.Select(stack => chargeOfStack[stack]).OfType<TimedCharge>().Distinct().Select(charge => charges.IndexOf(charge))],
            stacks.Where(stack => chargeOfStack[stack] is null).Select(stack => tables.ReadyDay(order.Order.PlanerRuns, tables.Stacks[stack].AvailableDay)).DefaultIfEmpty(0).Max());
    }

    // For each charge one draw in each of the equal shares of its chances, in an order of its own.
    private double[][] Draws(int trials) =>
    [
        .. charges.Select((_, charge) =>
        {
            var chance = new RandomSequence(Seed, (ulong)charge);
            var draws = Enumerable.Range(0, trials).Select(share => Distributions.NormalQuantile((share + 0.5) / trials)).ToArray();
            for (var last = trials - 1; last > 0; last--)
            {
                var other = chance.NextIndex(last + 1);
                (draws[last], draws[other]) = (draws[other], draws[last]);
            }

            return draws;
        }),
    ];

    // What is wanted first is done first; every act keeps its own hour in the plan, so that nobody else's delay takes it.
    private void Play(double[][] draws, int trial)
    {
        crewPlanned.CopyTo(crew, 0);
        Array.Clear(next);
        Array.Clear(free);
        Array.Clear(loaded);
        while (true)
        {
            var (first, wanted) = (-1, int.MaxValue);
            for (var kiln = 0; kiln < queue.Length; kiln++)
            {
                if (next[kiln] < queue[kiln].Length && Wanted(queue[kiln][next[kiln]], draws, trial) is var want && want < wanted)
                {
                    (first, wanted) = (kiln, want);
                }
            }

            if (first < 0)
            {
                return;
            }

            Act(first, queue[first][next[first]], wanted, draws, trial);
        }
    }

    private int Wanted(int charge, double[][] draws, int trial)
    {
        var one = charges[charge];
        if (one.Started && !loaded[charge])
        {
            (loaded[charge], dry[charge]) = (true, Dry(one, draws[charge][trial]));
        }

        return loaded[charge] ? dry[charge] : Math.Max(one.Load, free[one.Kiln]);
    }

    private void Act(int kiln, int charge, int wanted, double[][] draws, int trial)
    {
        var (one, k) = (charges[charge], tables.Kilns[kiln]);
        if (loaded[charge])
        {
            Plan(one, load: false, -1, crew);
            unload[charge] = Slot(k.UnloadStarts, wanted, k.Unloading) ?? tables.UnloadFrom(kiln, Math.Max(wanted, tables.Calendar.Steps));
            Take(unload[charge], k.Unloading);
            free[kiln] = unload[charge] + k.Unloading;
            next[kiln]++;
            return;
        }

        Plan(one, load: true, -1, crew);
        loaded[charge] = true;
        if (Slot(k.LoadStarts, wanted, k.Loading) is not { } load)
        {
            dry[charge] = tables.Calendar.Steps; // never loaded inside the plan
            return;
        }

        Take(load, k.Loading);
        var again = load == one.Load ? one : TimedCharge.Begun(tables, kiln, one.Stacks, one.WarmUp, load, one.Unload);
        dry[charge] = Dry(again, draws[charge][trial]);
    }

    // Log-normal through p50 and p90; while its kiln is out of use a charge does not dry.
    private int Dry(TimedCharge charge, double draw)
    {
        var (half, most) = (charge.Dry - charge.WarmEnd, charge.DryMost - charge.WarmEnd);
        var at = charge.WarmEnd + (half <= 0 || most <= half ? half : (int)Math.Ceiling(half * Math.Exp(draw / TenPercentQuantile * Math.Log((double)most / half)) - 1e-9));
        var counted = charge.Started ? charge.Dry : charge.WarmEnd; // outages until then are in the forecast of a started charge
        foreach (var outage in tables.Kilns[charge.Kiln].Kiln.Outages)
        {
            at += outage.From >= counted && outage.From < at ? outage.Length : 0;
        }

        return at;
    }

    private int? Slot(int[] starts, int from, int steps)
    {
        var index = Array.BinarySearch(starts, from);
        for (index = index < 0 ? ~index : index; index < starts.Length; index++)
        {
            if (Free(starts[index], steps))
            {
                return starts[index];
            }
        }

        return null;
    }

    private bool Free(int from, int steps)
    {
        for (var step = from; step < from + steps; step++)
        {
            if (crew[step] >= tables.Calendar.KilnsAtOnce)
            {
                return false;
            }
        }

        return true;
    }

    private void Plan(TimedCharge charge, bool load, int sign, int[] taken)
    {
        var k = tables.Kilns[charge.Kiln];
        if (load ? charge.Started : charge.Unload >= tables.Calendar.Steps)
        {
            return;
        }

        var (from, steps) = load ? (charge.Load, k.Loading) : (charge.Unload, k.Unloading);
        for (var step = from; step < from + steps; step++)
        {
            taken[step] += sign;
        }
    }

    private void Take(int from, int steps)
    {
        for (var step = from; step < Math.Min(from + steps, crew.Length); step++)
        {
            crew[step]++;
        }
    }
}
