namespace Boardwright.Planning.Solver;

/// <summary>A charge that is unloaded at a step at the latest: the day on which that is, and the first day on which the kiln can be loaded again.</summary>
internal readonly record struct OutWindow(int Unload, int OutDay, int NextDay);

/// <summary>What a charge draws for certain in a period, holding heat apart.</summary>
internal enum DrawnKind
{
    /// <summary>The warm-up's heat.</summary>
    WarmUp,

    /// <summary>The lesser of warm-up and drying: one of the two.</summary>
    Either,

    /// <summary>The drying's heat.</summary>
    Drying,
}

/// <summary>A period in which a charge draws heat for certain.</summary>
internal readonly record struct DrawnPeriod(int Period, DrawnKind Kind);

/// <summary>What follows, at best, from loading a kiln on a day: when each unit could be out. Whatever step of that day the loading begins, nothing is sooner.</summary>
internal sealed class LoadDay
{
    private LoadDay(int day, int warmUp, bool isQuickest, int[] unload, int[] ready, int firstDry, OutWindow[] windows, DrawnPeriod[] heat) =>
        (Day, WarmUp, IsQuickest, Unload, Ready, FirstDry, Windows, Heat) = (day, warmUp, isQuickest, unload, ready, firstDry, windows, heat);

    public int Day { get; }

    /// <summary>The warm-up time.</summary>
    public int WarmUp { get; }

    /// <summary>Each unit has the quickest warm-up that its coil allows: the best there is where heat costs nothing.</summary>
    public bool IsQuickest { get; }

    /// <summary>By unit: the earliest step at which it could be unloaded; a great number where it cannot be loaded.</summary>
    public int[] Unload { get; }

    /// <summary>By unit: the day on which it is out by itself, or out nine times in ten.</summary>
    public int[] Ready { get; }

    /// <summary>No charge is dry before this step.</summary>
    public int FirstDry { get; }

    public OutWindow[] Windows { get; }

    public DrawnPeriod[] Heat { get; }

    /// <summary>The day; null when nothing can be loaded then.</summary>
    /// <param name="tables">The yard.</param>
    /// <param name="units">What may be loaded.</param>
    /// <param name="kiln">The kiln.</param>
    /// <param name="day">The day.</param>
    /// <param name="warmUp">The warm-up time; null for each unit's quickest.</param>
    /// <param name="most">With the drying times that are enough nine times in ten.</param>
    public static LoadDay? Of(PlanTables tables, IReadOnlyList<DayUnit> units, int kiln, int day, int? warmUp, bool most)
    {
        var k = tables.Kilns[kiln];
        var free = k.Started is null ? 0 : tables.UnloadFrom(kiln, k.StartedDry) + k.Unloading;
        var loads = k.LoadStarts.Where(step => tables.Calendar.DayOf(step) == day && step >= free).ToArray();
        var unload = new int[units.Count];
        var ready = new int[units.Count];
        Array.Fill(unload, int.MaxValue);
        var firstDry = int.MaxValue;
        for (var u = 0; u < units.Count; u++)
        {
            var warmUps = units[u].WarmUps(kiln).ToList();
            if (warmUps.Count == 0 || warmUp is { } one && !warmUps.Contains(one))
            {
                continue;
            }

            var after = k.Loading + (warmUp is { } chosen ? k.WarmSteps[chosen] : warmUps.Min(quick => k.WarmSteps[quick]));
            foreach (var load in loads.Where(step => step >= units[u].AvailableStep))
            {
                var dry = load + after + units[u].Half(kiln, day);
                var step = tables.UnloadFrom(kiln, dry);
                if (step < tables.Calendar.Steps && !k.Kiln.Outages.Any(new StepRange(load, step + k.Unloading).Touches))
                {
                    firstDry = Math.Min(firstDry, dry);
                    var sure = most ? tables.UnloadFrom(kiln, Math.Max(step, load + after + units[u].Most(kiln, day))) : step;
                    (unload[u], ready[u]) = unload[u] == int.MaxValue ? (step, tables.Calendar.DayOf(sure)) : (Math.Min(unload[u], step), Math.Min(ready[u], tables.Calendar.DayOf(sure)));
                }
            }
        }

        var windows = Out(tables, k, unload);
        var warm = warmUp ?? Array.IndexOf(k.WarmSteps, k.WarmSteps.Min());
        return windows.Length == 0 ? null : new(day, warm, warmUp is null, unload, ready, firstDry, windows, k.OnBoiler ? Drawn(tables, k, loads, warm, windows[^1].Unload) : []);
    }

    // One for each step at which some unit is out first; of steps of one day after which the kiln is loaded again no sooner, the last has more to choose from.
    private static OutWindow[] Out(PlanTables tables, KilnTable k, int[] unload)
    {
        var windows = new List<OutWindow>();
        foreach (var step in unload.Where(step => step < int.MaxValue).Distinct().Order())
        {
            var next = Array.BinarySearch(k.LoadStarts, step + k.Unloading);
            next = next < 0 ? ~next : next;
            var window = new OutWindow(step, tables.Calendar.DayOf(step), next < k.LoadStarts.Length ? tables.Calendar.DayOf(k.LoadStarts[next]) : tables.Calendar.Days);
            if (windows.Count > 0 && windows[^1].OutDay == window.OutDay && windows[^1].NextDay == window.NextDay)
            {
                windows.RemoveAt(windows.Count - 1);
            }

            windows.Add(window);
        }

        return [.. windows];
    }

    // Periods touched whichever step of the day the loading begins.
    private static DrawnPeriod[] Drawn(PlanTables tables, KilnTable k, int[] loads, int warmUp, int last)
    {
        var drawn = new List<DrawnPeriod>();
        var (latestHeat, earliestWarm, latestWarm) = (loads[^1] + k.Loading, loads[0] + k.Loading + k.WarmSteps[warmUp], loads[^1] + k.Loading + k.WarmSteps[warmUp]);
        for (var period = loads[0] / tables.PeriodSteps; period < tables.Periods && period * tables.PeriodSteps < last; period++)
        {
            if (latestHeat < (period + 1) * tables.PeriodSteps)
            {
                var from = period * tables.PeriodSteps;
                drawn.Add(new(period, from < earliestWarm ? DrawnKind.WarmUp : from < latestWarm ? DrawnKind.Either : DrawnKind.Drying));
            }
        }

        return [.. drawn];
    }
}
