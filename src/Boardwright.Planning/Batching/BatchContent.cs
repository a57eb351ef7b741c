namespace Boardwright.Planning.Batching;

/// <summary>What is in a batch of the search, and what follows from it: sums and extremes of its jobs.</summary>
internal record struct BatchContent
{
    public int First; // of its jobs; below 0 when empty
    public int Count;
    public int Size;
    public int Length;
    public int Most;
    public int Earliest;
    public int DueFirst;
    public int DueLast;
    public int Attribute;
    public int Oven;
    public ulong Ovens; // that all its jobs may be in

    public static BatchContent Empty(int attribute, int oven) => new()
    {
        First = -1,
        Most = int.MaxValue,
        DueFirst = int.MaxValue,
        DueLast = int.MinValue,
        Attribute = attribute,
        Oven = oven,
        Ovens = ulong.MaxValue,
    };
}

/// <summary>When a batch runs, and what that costs.</summary>
/// <param name="Start">Its start, after its set-up.</param>
/// <param name="Interval">The open interval it lies in.</param>
/// <param name="Late">Late jobs in it.</param>
/// <param name="Setup">Weighted cost of the set-up before it.</param>
internal readonly record struct BatchTiming(int Start, int Interval, int Late, long Setup);
