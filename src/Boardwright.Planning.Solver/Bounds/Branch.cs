namespace Boardwright.Planning.Solver;

/// <summary>A part of all plans: those that have each order no sooner and no later than here, and load each unit in these days into these kilns, or not at all.</summary>
internal sealed class Branch
{
    private Branch(int[] lateFrom, int[] lateTo, int[] loadFrom, int[] loadTo, ulong[] kilns, int[] readyBy) =>
        (LateFrom, LateTo, LoadFrom, LoadTo, Kilns, ReadyBy) = (lateFrom, lateTo, loadFrom, loadTo, kilns, readyBy);

    public int[] LateFrom { get; }

    /// <summary>By order; as many days as an order not met counts means that it need not be met.</summary>
    public int[] LateTo { get; }

    public int[] LoadFrom { get; }

    public int[] LoadTo { get; }

    /// <summary>By unit: its kilns as bits.</summary>
    public ulong[] Kilns { get; }

    /// <summary>By unit: the last day on which it is ready for the orders that cannot do without it.</summary>
    public int[] ReadyBy { get; }

    public static Branch All(ChargeYard yard)
    {
        var units = yard.Units.Length;
        return new(
            new int[yard.Asked.Length], [.. yard.Asked.Select(asked => asked.UnmetDays)], new int[units], [.. Enumerable.Repeat(yard.Days, units)],
            [.. Enumerable.Repeat(ulong.MaxValue, units)], [.. Enumerable.Repeat(yard.Days, units)]);
    }

    /// <summary>Those with an order at most so late, and the others.</summary>
    public (Branch Sooner, Branch Later) ByLate(ChargeYard yard, int asked, int late)
    {
        var readyBy = (int[])ReadyBy.Clone();
        for (var slot = 0; slot < yard.Asked[asked].Units.Length; slot++)
        {
            if (yard.Asked[asked].Ways.All(way => way.Slots.Contains(slot)))
            {
                var unit = yard.Asked[asked].Units[slot];
                readyBy[unit] = Math.Min(readyBy[unit], Array.FindLastIndex(yard.LateOn[asked], days => days <= late));
            }
        }

        return (new(LateFrom, With(LateTo, asked, late), LoadFrom, LoadTo, Kilns, readyBy), new(With(LateFrom, asked, late + 1), LateTo, LoadFrom, LoadTo, Kilns, ReadyBy));
    }

    /// <summary>Those that load a unit by a day, and the others.</summary>
    public (Branch Sooner, Branch Later) ByLoad(int unit, int day) =>
        (new(LateFrom, LateTo, LoadFrom, With(LoadTo, unit, day), Kilns, ReadyBy), new(LateFrom, LateTo, With(LoadFrom, unit, day + 1), LoadTo, Kilns, ReadyBy));

    /// <summary>Those that load a unit into a kiln, and the others.</summary>
    public (Branch Here, Branch Elsewhere) ByKiln(int unit, int kiln) =>
        (new(LateFrom, LateTo, LoadFrom, LoadTo, With(Kilns, unit, Kilns[unit] & 1UL << kiln), ReadyBy), new(LateFrom, LateTo, LoadFrom, LoadTo, With(Kilns, unit, Kilns[unit] & ~(1UL << kiln)), ReadyBy));

    private static T[] With<T>(T[] values, int index, T value)
    {
        var copy = (T[])values.Clone();
        copy[index] = value;
        return copy;
    }
}
