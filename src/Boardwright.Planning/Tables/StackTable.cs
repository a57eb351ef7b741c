using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>A stack in whole numbers, with the kilns that are open to it.</summary>
internal sealed class StackTable
{
    public StackTable(Stack stack, bool started, IReadOnlyList<KilnTable> kilns, PlanCalendar calendar)
    {
        Stack = stack;
        Started = started;
        LoadTenths = Tenths.Up(stack.Load.Count);
        WeightKg = (int)Math.Ceiling(stack.Weight.Kilograms - 1e-6);
        YieldTenths = Tenths.Down(stack.Yield.Count);
        AvailableDay = Math.Max(0, calendar.DayNumber(stack.AvailableFrom));
        AvailableStep = AvailableDay * calendar.StepsPerDay;
        GainCents = Cents.Of(stack.GainWhenDry);
        WaitCentsPerDay = Cents.Of(stack.WaitingMoneyPerDay);
        Uses = [.. kilns.Select(kiln => started ? null : Use(stack, kiln, calendar))];
    }

    public Stack Stack { get; }

    public bool Started { get; }

    public int LoadTenths { get; }

    public int WeightKg { get; }

    public int YieldTenths { get; }

    public int AvailableDay { get; }

    public int AvailableStep { get; }

    public long GainCents { get; }

    public long WaitCentsPerDay { get; }

    /// <summary>One for each kiln; null where the kiln is closed to this stack.</summary>
    public KilnUse?[] Uses { get; }

    private KilnUse? Use(Stack stack, KilnTable kiln, PlanCalendar calendar)
    {
        var time = stack.DryingTimes.FirstOrDefault(t => t.KilnKind == kiln.Kiln.Kind);
        var closed = time is null || stack.NeverKiln || stack.LongestPiece > kiln.Kiln.LongestPiece || LoadTenths > kiln.CapacityTenths || WeightKg > kiln.WeightMostKg
            || stack.HeatedTo > kiln.Kiln.Hottest;
        return closed ? null : new(
            ByDay(time!.HalfByDay, calendar), ByDay(time.MostByDay, calendar),
            [.. kiln.Kiln.WarmUps.Select(warmUp => Tenths.Up(time.WarmUpHeat.KilowattHours / warmUp.Hours))],
            Tenths.Up(time.Running.Kilowatts),
            Cents.Of(kiln.Kiln.MoneyPerKwh * (decimal)(time.WarmUpHeat.KilowattHours + time.DryingHeat.KilowattHours)));
    }

    private static int[] ByDay(IReadOnlyList<Elapsed> times, PlanCalendar calendar) =>
        [.. Enumerable.Range(0, calendar.Days).Select(day => calendar.StepsFor(times[Math.Min(day, times.Count - 1)]))];
}
