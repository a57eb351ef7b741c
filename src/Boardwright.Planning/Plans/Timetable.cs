namespace Boardwright.Planning;

/// <summary>Charges placed one after the other, each as early as kiln, crew and heat allow.</summary>
/// <remarks>Keeps what is taken of crew and heat by step and period, so that placing a charge costs little: searches place thousands.</remarks>
internal sealed class Timetable
{
    private readonly PlanTables tables;
    private readonly List<TimedCharge> charges = [];
    private readonly int[] crew;
    private readonly int[] demand;
    private readonly int[] freeFrom;
    private int tight; // the period that had too little heat for the last start that was tried

    public Timetable(PlanTables tables)
    {
        this.tables = tables;
        crew = new int[tables.Calendar.Steps];
        demand = new int[tables.Periods];
        freeFrom = new int[tables.Kilns.Length];
    }

    public IReadOnlyList<TimedCharge> Charges => charges;

    /// <summary>Heat drawn in each period, tenths of a kilowatt.</summary>
    public ReadOnlySpan<int> DemandTenths => demand;

    /// <summary>Step from which a kiln is empty for good.</summary>
    public int FreeFrom(int kiln) => freeFrom[kiln];

    /// <summary>Nothing but the started charges, each unloaded as soon as it is dry and the crew is free.</summary>
    public void Clear()
    {
        charges.Clear();
        Array.Clear(crew);
        Array.Clear(demand);
        Array.Clear(freeFrom);
        for (var k = 0; k < tables.Kilns.Length; k++)
        {
            if (tables.Kilns[k].Started is not null)
            {
                Add(TimedCharge.Standing(tables, k, tables.Kilns[k].StartedStacks, Unload(tables.Kilns[k], tables.Kilns[k].StartedDry) ?? tables.Calendar.Steps));
            }
        }
    }

    /// <summary>Whether stacks may stand together in a kiln: it is open to each, holds them, and they may share it.</summary>
    public bool Fits(int kiln, ReadOnlySpan<int> stacks)
    {
        var (load, weight) = (0, 0);
        for (var a = 0; a < stacks.Length; a++)
        {
            if (tables.Stacks[stacks[a]].Uses[kiln] is null)
            {
                return false;
            }

            load += tables.Stacks[stacks[a]].LoadTenths;
            weight += tables.Stacks[stacks[a]].WeightKg;
            for (var b = 0; b < a; b++)
            {
                if (!tables.Together[stacks[a], stacks[b]])
                {
                    return false;
                }
            }
        }

        return load <= tables.Kilns[kiln].CapacityTenths && weight <= tables.Kilns[kiln].WeightMostKg;
    }

    /// <summary>The earliest charge of these stacks after all others of the kiln; null when there is none.</summary>
    /// <param name="kiln">The kiln.</param>
    /// <param name="stacks">Stacks that fit.</param>
    /// <param name="from">Not before this step.</param>
    public TimedCharge? First(int kiln, int[] stacks, int from = 0)
    {
        var k = tables.Kilns[kiln];
        from = Math.Max(from, freeFrom[kiln]);
        foreach (var stack in stacks)
        {
            from = Math.Max(from, tables.Stacks[stack].AvailableStep);
        }

        tight = -1;
        for (var start = LowerBound(k.LoadStarts, from); start < k.LoadStarts.Length; start++)
        {
            var load = k.LoadStarts[start];
            if (!CrewFree(load, k.Loading))
            {
                continue;
            }

            var half = TimedCharge.HalfAt(tables, kiln, stacks, load);
            for (var warmUp = 0; warmUp < k.WarmSteps.Length; warmUp++)
            {
                var warmEnd = load + k.Loading + k.WarmSteps[warmUp];
                if (Unload(k, warmEnd + half) is { } unload && !Out(k, load, unload + k.Unloading)
                    && HeatAllows(kiln, stacks, warmUp, load + k.Loading, warmEnd, warmEnd + half))
                {
                    return TimedCharge.Begun(tables, kiln, stacks, warmUp, load, unload);
                }
            }
        }

        return null;
    }

    // What HeatAllows(Begun(...), null) says, without the charge; the period that was too tight for the start before is looked at first.
    private bool HeatAllows(int kiln, int[] stacks, int warmUp, int loadEnd, int warmEnd, int dry)
    {
        var k = tables.Kilns[kiln];
        var (warm, run) = (k.StructureTenths[warmUp], 0);
        foreach (var stack in stacks)
        {
            var use = tables.Stacks[stack].Uses[kiln]!;
            warm += use.WarmTenths[warmUp];
            run += use.RunTenths;
        }

        if (k.HoldMostTenths + Math.Max(warm, run) > k.CoilTenths)
        {
            return false;
        }

        var (from, to) = k.OnBoiler ? (loadEnd / tables.PeriodSteps, Math.Min(tables.Periods, (dry + tables.PeriodSteps - 1) / tables.PeriodSteps)) : (0, 0);
        if (tight >= from && tight < to && TooMuch(tight))
        {
            return false;
        }

        for (var period = from; period < to; period++)
        {
            if (TooMuch(period))
            {
                tight = period;
                return false;
            }
        }

        return true;

        bool TooMuch(int period) =>
            demand[period] + TimedCharge.DemandTenths(tables, kiln, period, loadEnd, warmEnd, dry, warm, run) - tables.SpareTenths[period] > tables.ShortMostTenths[period];
    }

    public void Add(TimedCharge charge)
    {
        charges.Add(charge);
        Take(charge, 1);
        freeFrom[charge.Kiln] = Math.Max(freeFrom[charge.Kiln], charge.UnloadEnd);
    }

    /// <summary>Puts other stacks into a placed charge whose times stay; false when heat or drying do not allow it.</summary>
    public bool Replace(int index, int[] stacks)
    {
        var old = charges[index];
        var changed = TimedCharge.Begun(tables, old.Kiln, stacks, old.WarmUp, old.Load, old.Unload);
        if (changed.Dry > old.Unload || !HeatAllows(changed, old))
        {
            return false;
        }

        Take(old, -1);
        charges[index] = changed;
        Take(changed, 1);
        return true;
    }

    private void Take(TimedCharge charge, int sign)
    {
        var k = tables.Kilns[charge.Kiln];
        if (!charge.Started)
        {
            Work(charge.Load, k.Loading, sign);
        }

        if (charge.Unload < tables.Calendar.Steps)
        {
            Work(charge.Unload, k.Unloading, sign);
        }

        for (var (period, end) = Periods(charge); period < end; period++)
        {
            demand[period] += sign * charge.DemandTenths(tables, period);
        }
    }

    private void Work(int from, int steps, int sign)
    {
        for (var step = from; step < from + steps; step++)
        {
            crew[step] += sign;
        }
    }

    private bool CrewFree(int from, int steps)
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

    private int? Unload(KilnTable k, int dry)
    {
        for (var start = LowerBound(k.UnloadStarts, dry); start < k.UnloadStarts.Length; start++)
        {
            if (CrewFree(k.UnloadStarts[start], k.Unloading))
            {
                return k.UnloadStarts[start];
            }
        }

        return null;
    }

    private static bool Out(KilnTable k, int from, int to)
    {
        foreach (var outage in k.Kiln.Outages)
        {
            if (outage.From < to && from < outage.To)
            {
                return true;
            }
        }

        return false;
    }

    private bool HeatAllows(TimedCharge charge, TimedCharge? instead)
    {
        var k = tables.Kilns[charge.Kiln];
        if (k.HoldMostTenths + Math.Max(charge.WarmTenths, charge.RunTenths) > k.CoilTenths)
        {
            return false;
        }

        for (var (period, end) = Periods(charge); period < end; period++)
        {
            var others = demand[period] - (instead?.DemandTenths(tables, period) ?? 0);
            if (others + charge.DemandTenths(tables, period) - tables.SpareTenths[period] > tables.ShortMostTenths[period])
            {
                return false;
            }
        }

        return true;
    }

    // Periods in which it may draw heat: the first, and the one after the last.
    private (int From, int To) Periods(TimedCharge charge) => tables.Kilns[charge.Kiln].OnBoiler
        ? (charge.LoadEnd / tables.PeriodSteps, Math.Min(tables.Periods, (charge.Dry + tables.PeriodSteps - 1) / tables.PeriodSteps)) : (0, 0);

    private static int LowerBound(int[] steps, int from)
    {
        var index = Array.BinarySearch(steps, from);
        return index < 0 ? ~index : index;
    }
}
