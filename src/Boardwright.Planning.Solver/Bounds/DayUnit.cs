namespace Boardwright.Planning.Solver;

/// <summary>What is best for a unit loaded into a kiln on a day.</summary>
/// <param name="OutDay">The earliest day on which it is out.</param>
/// <param name="ReadyDay">That day, or the one on which it is out nine times in ten.</param>
/// <param name="HeatFrom">Step by which its loading has ended, whenever on that day it began.</param>
/// <param name="Dry">The earliest step at which it is dry.</param>
/// <param name="DrawTenths">Heat it draws between these two for certain, the kiln's holding heat apart.</param>
internal sealed record DayWay(int OutDay, int ReadyDay, int HeatFrom, int Dry, int DrawTenths);

/// <summary>A stack, or a matched set, that goes into a kiln as one.</summary>
internal sealed class DayUnit(PlanTables tables, int[] stacks)
{
    public int[] Stacks { get; } = stacks;

    public int LoadTenths { get; } = stacks.Sum(stack => tables.Stacks[stack].LoadTenths);

    public bool IsOpen(int kiln) => Stacks.All(stack => tables.Stacks[stack].Uses[kiln] is not null) && LoadTenths <= tables.Kilns[kiln].CapacityTenths && Warm(kiln) is not null;

    /// <summary>The best way to load it into a kiln on a day; null when there is none.</summary>
    public DayWay? Way(int kiln, int day, bool most)
    {
        if (!IsOpen(kiln))
        {
            return null;
        }

        var k = tables.Kilns[kiln];
        var free = k.Started is null ? 0 : tables.UnloadFrom(kiln, k.StartedDry) + k.Unloading;
        var from = Math.Max(free, Stacks.Max(stack => tables.Stacks[stack].AvailableStep));
        var uses = Stacks.Select(stack => tables.Stacks[stack].Uses[kiln]!).ToList();
        var (half, mostHalf) = (uses.Max(use => use.Half[day]), uses.Max(use => use.Most[day]));
        var warmUp = Warm(kiln)!.Value;
        DayWay? best = null;
        var first = Array.BinarySearch(k.LoadStarts, day * tables.Calendar.StepsPerDay);
        for (var i = first < 0 ? ~first : first; i < k.LoadStarts.Length && tables.Calendar.DayOf(k.LoadStarts[i]) == day; i++)
        {
            var load = k.LoadStarts[i];
            var warm = load + k.Loading + k.WarmSteps[warmUp];
            var unload = tables.UnloadFrom(kiln, warm + half);
            if (load < from || unload >= tables.Calendar.Steps || k.Kiln.Outages.Any(new StepRange(load, unload + k.Unloading).Touches))
            {
                continue;
            }

            var outDay = tables.Calendar.DayOf(unload);
            var ready = most ? tables.Calendar.DayOf(tables.UnloadFrom(kiln, Math.Max(unload, warm + mostHalf))) : outDay;
            var draw = uses.Sum(use => Math.Min(use.RunTenths, use.WarmTenths.Min()));
            best = best is null ? new(outDay, ready, load + k.Loading, warm + half, draw)
                : new(Math.Min(best.OutDay, outDay), Math.Min(best.ReadyDay, ready), load + k.Loading, Math.Min(best.Dry, warm + half), draw);
        }

        return best;
    }

    // The quickest warm-up that the coil has heat for.
    private int? Warm(int kiln)
    {
        var k = tables.Kilns[kiln];
        return Enumerable.Range(0, k.WarmSteps.Length).Where(warmUp => !k.OnBoiler || Coil(k, kiln, warmUp) <= k.CoilTenths).Select(warmUp => (int?)warmUp).MinBy(warmUp => k.WarmSteps[warmUp!.Value]);
    }

    private int Coil(KilnTable k, int kiln, int warmUp) => k.HoldMostTenths + Math.Max(
        k.StructureTenths[warmUp] + Stacks.Sum(stack => tables.Stacks[stack].Uses[kiln]!.WarmTenths[warmUp]), Stacks.Sum(stack => tables.Stacks[stack].Uses[kiln]!.RunTenths));
}
