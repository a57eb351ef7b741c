namespace Boardwright.Planning.Solver;

/// <summary>A stack, or a matched set, that goes into a kiln as one.</summary>
internal sealed class DayUnit
{
    private readonly PlanTables tables;
    private readonly int[][] warm;
    private readonly int[] run;

    public DayUnit(PlanTables tables, int[] stacks)
    {
        this.tables = tables;
        Stacks = stacks;
        LoadTenths = stacks.Sum(stack => tables.Stacks[stack].LoadTenths);
        AvailableStep = stacks.Max(stack => tables.Stacks[stack].AvailableStep);
        warm = [.. tables.Kilns.Select((k, kiln) => k.WarmSteps.Select((_, warmUp) => stacks.Sum(stack => tables.Stacks[stack].Uses[kiln]?.WarmTenths[warmUp] ?? 0)).ToArray())];
        run = [.. tables.Kilns.Select((_, kiln) => stacks.Sum(stack => tables.Stacks[stack].Uses[kiln]?.RunTenths ?? 0))];
    }

    public int[] Stacks { get; }

    public int LoadTenths { get; }

    public int AvailableStep { get; }

    /// <summary>Warm-up times of a kiln that its coil has heat for, when the unit stands in it alone; none when it is closed to the unit.</summary>
    public IEnumerable<int> WarmUps(int kiln)
    {
        var k = tables.Kilns[kiln];
        return Stacks.Any(stack => tables.Stacks[stack].Uses[kiln] is null) || LoadTenths > k.CapacityTenths || Stacks.Sum(stack => tables.Stacks[stack].WeightKg) > k.WeightMostKg ? []
            : Enumerable.Range(0, k.WarmSteps.Length).Where(warmUp => k.HoldMostTenths + Math.Max(k.StructureTenths[warmUp] + WarmTenths(kiln, warmUp), RunTenths(kiln)) <= k.CoilTenths);
    }

    public int WarmTenths(int kiln, int warmUp) => warm[kiln][warmUp];

    public int RunTenths(int kiln) => run[kiln];

    public int Half(int kiln, int day) => Stacks.Max(stack => tables.Stacks[stack].Uses[kiln]!.Half[day]);

    public int Most(int kiln, int day) => Stacks.Max(stack => tables.Stacks[stack].Uses[kiln]!.Most[day]);

    public bool Together(DayUnit other) => Stacks.All(one => other.Stacks.All(another => tables.Together[one, another]));
}
