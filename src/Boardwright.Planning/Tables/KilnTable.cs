namespace Boardwright.Planning;

/// <summary>A kiln in whole numbers: steps, tenths of a kilowatt, tenths of a board foot, cents.</summary>
internal sealed class KilnTable
{
    public KilnTable(Kiln kiln, StartedCharge? started, PlanInput input)
    {
        var calendar = input.Calendar;
        Kiln = kiln;
        Started = started;
        Loading = calendar.StepsFor(kiln.Loading);
        Unloading = calendar.StepsFor(kiln.Unloading);
        CapacityTenths = Tenths.Down(kiln.Capacity.Count);
        WeightMostKg = kiln.MostWeight is { } most ? (int)Math.Floor(most.Kilograms + 1e-6) : int.MaxValue;
        WarmSteps = [.. kiln.WarmUps.Select(calendar.StepsFor)];
        OnBoiler = kiln.Coil is not null;
        CoilTenths = kiln.Coil is { } coil ? Tenths.Down(coil.Kilowatts) : int.MaxValue;
        HoldTenths = [.. kiln.Holding.Select(power => Tenths.Up(power.Kilowatts))];
        HoldMostTenths = HoldTenths.Max();
        StructureTenths = [.. kiln.WarmUps.Select(time => Tenths.Up(kiln.StructureHeat.KilowattHours / time.Hours))];
        StructureCents = Cents.Of(kiln.MoneyPerKwh * (decimal)kiln.StructureHeat.KilowattHours);
        StandCentsPerStep = Cents.Of(kiln.MoneyPerDay / calendar.StepsPerDay);
        HoldCentsPerStep = Cents.Of(kiln.MoneyPerKwh * (decimal)(kiln.Holding.Average(power => power.Kilowatts) * calendar.StepHours));
        LoadStarts = Starts(calendar, Loading);
        UnloadStarts = Starts(calendar, Unloading);
        StartedStacks = started is null ? [] : [.. Enumerable.Range(0, input.Stacks.Count).Where(stack => started.Stacks.Contains(input.Stacks[stack].Id))];
        StartedDry = started is null ? 0 : calendar.StepsFor(started.DryHalf);
        StartedDryMost = started is null ? 0 : calendar.StepsFor(started.DryMost);
        StartedRunTenths = started is null ? 0 : Tenths.Up(started.Running.Kilowatts);
    }

    public Kiln Kiln { get; }

    public StartedCharge? Started { get; }

    public int Loading { get; }

    public int Unloading { get; }

    public int CapacityTenths { get; }

    /// <summary>A great number where nobody says.</summary>
    public int WeightMostKg { get; }

    public int[] WarmSteps { get; }

    public bool OnBoiler { get; }

    public int CoilTenths { get; }

    public int[] HoldTenths { get; }

    public int HoldMostTenths { get; }

    public int[] StructureTenths { get; }

    public long StructureCents { get; }

    public long StandCentsPerStep { get; }

    public long HoldCentsPerStep { get; }

    /// <summary>Steps at which loading may begin: the crew is there for all of it and the kiln can be used.</summary>
    public int[] LoadStarts { get; }

    public int[] UnloadStarts { get; }

    /// <summary>Indexes of the stacks of the started charge.</summary>
    public int[] StartedStacks { get; }

    public int StartedDry { get; }

    public int StartedDryMost { get; }

    public int StartedRunTenths { get; }

    private int[] Starts(PlanCalendar calendar, int steps) =>
    [
        .. calendar.CrewWindows
            .SelectMany(window => Enumerable.Range(window.From, Math.Max(0, window.Length - steps + 1)))
            .Where(start => !Kiln.Outages.Any(outage => outage.Touches(new(start, start + steps)))),
    ];
}
