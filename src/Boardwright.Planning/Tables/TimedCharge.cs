namespace Boardwright.Planning;

/// <summary>A charge with every time that follows from its choices, in steps.</summary>
/// <param name="Kiln">Index of the kiln.</param>
/// <param name="Stacks">Indexes of the stacks.</param>
/// <param name="Started">Whether it already stands in the kiln.</param>
/// <param name="WarmUp">Index of the warm-up time.</param>
/// <param name="Load">Loading begins.</param>
/// <param name="LoadEnd">Loading ends and warm-up begins; 0 for a started charge.</param>
/// <param name="WarmEnd">Warm-up ends and drying begins; 0 for a started charge.</param>
/// <param name="Dry">Dry, as often as not.</param>
/// <param name="DryMost">Dry, nine times in ten.</param>
/// <param name="Unload">Unloading begins.</param>
/// <param name="UnloadEnd">Unloading ends.</param>
/// <param name="UnloadMost">Unloading begins, nine times in ten, if the crew has nothing else to do.</param>
/// <param name="WarmTenths">Heat of the warm-up on top of holding.</param>
/// <param name="RunTenths">Heat of the drying on top of holding.</param>
internal sealed record TimedCharge(
    int Kiln, int[] Stacks, bool Started, int WarmUp, int Load, int LoadEnd, int WarmEnd, int Dry, int DryMost, int Unload, int UnloadEnd, int UnloadMost,
    int WarmTenths, int RunTenths)
{
    public static TimedCharge Begun(PlanTables tables, int kiln, int[] stacks, int warmUp, int load, int unload)
    {
        var k = tables.Kilns[kiln];
        var day = Math.Min(tables.Calendar.DayOf(load), tables.Calendar.Days - 1);
        var loadEnd = load + k.Loading;
        var warmEnd = loadEnd + k.WarmSteps[warmUp];
        int half = 0, most = 0, warm = k.StructureTenths[warmUp], run = 0;
        foreach (var stack in stacks)
        {
            var use = tables.Stacks[stack].Uses[kiln]!;
            half = Math.Max(half, use.Half[day]);
            most = Math.Max(most, use.Most[day]);
            warm += use.WarmTenths[warmUp];
            run += use.RunTenths;
        }

        return new(
            kiln, stacks, false, warmUp, load, loadEnd, warmEnd, warmEnd + half, warmEnd + most, unload, unload + k.Unloading,
            tables.UnloadFrom(kiln, Math.Max(unload, warmEnd + most)), warm, run);
    }

    /// <summary>Steps from the end of the warm-up until stacks loaded at a step are dry, as often as not.</summary>
    public static int HalfAt(PlanTables tables, int kiln, int[] stacks, int load)
    {
        var day = Math.Min(tables.Calendar.DayOf(load), tables.Calendar.Days - 1);
        var half = 0;
        foreach (var stack in stacks)
        {
            half = Math.Max(half, tables.Stacks[stack].Uses[kiln]!.Half[day]);
        }

        return half;
    }

    public static TimedCharge Standing(PlanTables tables, int kiln, int[] stacks, int unload)
    {
        var k = tables.Kilns[kiln];
        var end = unload == tables.Calendar.Steps ? unload : unload + k.Unloading; // left standing at the plan's end
        return new(
            kiln, stacks, true, 0, 0, 0, 0, k.StartedDry, k.StartedDryMost, unload, end,
            tables.UnloadFrom(kiln, Math.Max(unload, k.StartedDryMost)), 0, k.StartedRunTenths);
    }

    /// <summary>The most heat it draws in a period, holding included; 0 when it draws none.</summary>
    public int DemandTenths(PlanTables tables, int period) => DemandTenths(tables, Kiln, period, LoadEnd, WarmEnd, Dry, WarmTenths, RunTenths);

    /// <summary>The same of a charge that is not there yet.</summary>
    public static int DemandTenths(PlanTables tables, int kiln, int period, int loadEnd, int warmEnd, int dry, int warmTenths, int runTenths)
    {
        var steps = new StepRange(period * tables.PeriodSteps, (period + 1) * tables.PeriodSteps);
        if (!tables.Kilns[kiln].OnBoiler || !steps.Touches(new(loadEnd, dry)))
        {
            return 0;
        }

        var warm = warmEnd > loadEnd && steps.Touches(new(loadEnd, warmEnd)) ? warmTenths : 0;
        var run = dry > warmEnd && steps.Touches(new(warmEnd, dry)) ? runTenths : 0;
        return tables.Kilns[kiln].HoldTenths[period] + Math.Max(warm, run);
    }

    /// <summary>Cents it costs to have it stand, warm up and dry, less what its wood gains.</summary>
    public long CostCents(PlanTables tables)
    {
        var kiln = tables.Kilns[Kiln];
        var cents = (UnloadEnd - Load) * kiln.StandCentsPerStep + (Dry - LoadEnd) * kiln.HoldCentsPerStep;
        if (Started)
        {
            return cents;
        }

        cents += kiln.StructureCents;
        foreach (var stack in Stacks)
        {
            cents += tables.Stacks[stack].Uses[Kiln]!.HeatCents - tables.Stacks[stack].GainCents;
        }

        return cents;
    }

    /// <summary>Cents of heat in <see cref="CostCents"/>: holding, warming up and drying.</summary>
    public long HeatCents(PlanTables tables)
    {
        var kiln = tables.Kilns[Kiln];
        var hold = (Dry - LoadEnd) * kiln.HoldCentsPerStep;
        return Started ? hold : hold + kiln.StructureCents + Stacks.Sum(stack => tables.Stacks[stack].Uses[Kiln]!.HeatCents);
    }
}
