namespace Boardwright.Planning;

/// <summary>The whole input in whole numbers: what the scores, the search of tiny yards and the solver's model count with.</summary>
internal sealed class PlanTables
{
    private readonly int[] planerDays;

    public PlanTables(PlanInput input)
    {
        Input = input;
        Calendar = input.Calendar;
        planerDays = [.. Calendar.PlanerDays];
        var started = input.Started.ToDictionary(charge => charge.Kiln, StringComparer.Ordinal);
        var inKiln = input.Started.SelectMany(charge => charge.Stacks).ToHashSet(StringComparer.Ordinal);
        Kilns = [.. input.Kilns.Select(kiln => new KilnTable(kiln, started.GetValueOrDefault(kiln.Id), input))];
        Stacks = [.. input.Stacks.Select(stack => new StackTable(stack, inKiln.Contains(stack.Id), Kilns, Calendar))];
        Orders = [.. input.Orders.Select(order => new OrderTable(order, Stacks, input))];
        PeriodSteps = input.Heat.PeriodSteps;
        Periods = Calendar.Steps / PeriodSteps;
        SpareTenths = [.. Enumerable.Range(0, Periods).Select(Spare)];
        StartedTenths = [.. Enumerable.Range(0, Periods).Select(StartedDemand)];
        var giveWay = Tenths.Down(input.Heat.ShopGivesWay.Kilowatts);
        ShortMostTenths = [.. Enumerable.Range(0, Periods).Select(p => Math.Max(0, Math.Max(Math.Min(giveWay, Tenths.Down(input.Heat.Shop[p].Kilowatts)), StartedTenths[p] - SpareTenths[p])))];
        ShortCents = Cents.Of(input.Heat.MoneyPerKwhGivenWay * (decimal)(0.1 * PeriodSteps * Calendar.StepHours));
        Together = new bool[Stacks.Length, Stacks.Length];
        for (var a = 0; a < Stacks.Length; a++)
        {
            for (var b = 0; b < Stacks.Length; b++)
            {
                Together[a, b] = Sharing.Fault(input.Stacks[a], input.Stacks[b], input.Sharing) is null;
            }
        }
    }

    public PlanInput Input { get; }

    public PlanCalendar Calendar { get; }

    public KilnTable[] Kilns { get; }

    public StackTable[] Stacks { get; }

    public OrderTable[] Orders { get; }

    public int PeriodSteps { get; }

    public int Periods { get; }

    /// <summary>Heat the boilers give less what the shop takes, by period, not below 0.</summary>
    public int[] SpareTenths { get; }

    /// <summary>Heat the started charges draw, by period.</summary>
    public int[] StartedTenths { get; }

    /// <summary>How far demand may exceed the spare heat: what the shop can give way, or what started charges exceed it by anyway.</summary>
    public int[] ShortMostTenths { get; }

    /// <summary>Cents for a tenth of a kilowatt short through one period.</summary>
    public long ShortCents { get; }

    /// <summary>Whether two stacks may share a charge.</summary>
    public bool[,] Together { get; }

    /// <summary>Day on which wood unloaded on a day is ready after so many planer days; days after the plan's end all count as planer days.</summary>
    public int ReadyDay(int planerRuns, int day)
    {
        if (planerRuns == 0)
        {
            return day;
        }

        var next = Array.BinarySearch(planerDays, day + 1);
        var last = (next < 0 ? ~next : next) + planerRuns - 1;
        return last < planerDays.Length ? planerDays[last] : Math.Max(planerDays.Length == 0 ? day : Math.Max(day, planerDays[^1]), Calendar.Days - 1) + last - planerDays.Length + 1;
    }

    /// <summary>First step at which a kiln could be unloaded, from a step on, if the crew had nothing else to do.</summary>
    public int UnloadFrom(int kiln, int step)
    {
        var starts = Kilns[kiln].UnloadStarts;
        var index = Array.BinarySearch(starts, step);
        index = index < 0 ? ~index : index;
        var perDay = Calendar.StepsPerDay;
        return index < starts.Length ? starts[index] : Math.Max(Calendar.Days, (step + perDay - 1) / perDay) * perDay;
    }

    private int Spare(int period)
    {
        var steps = new StepRange(period * PeriodSteps, (period + 1) * PeriodSteps);
        var given = Input.Heat.Boilers.Where(boiler => !boiler.Outages.Any(steps.Touches)).Sum(boiler => boiler.Output.Kilowatts);
        return Math.Max(0, Tenths.Down(given - Input.Heat.Shop[period].Kilowatts));
    }

    private int StartedDemand(int period) => Kilns
        .Where(kiln => kiln.Started is not null && kiln.OnBoiler && kiln.StartedDry > period * PeriodSteps)
        .Sum(kiln => kiln.HoldTenths[period] + kiln.StartedRunTenths);
}
