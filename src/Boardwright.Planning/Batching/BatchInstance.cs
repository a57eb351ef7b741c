namespace Boardwright.Planning.Batching;

/// <summary>A batch-scheduling instance: jobs of one attribute share an oven, as stacks share a kiln. Whole time units, attributes and machines from 0.</summary>
/// <param name="Ovens">The machines.</param>
/// <param name="Jobs">The jobs.</param>
/// <param name="SetupTimes">Time from a batch of the first attribute to one of the second.</param>
/// <param name="SetupCosts">Cost of the same.</param>
/// <param name="Weights">What counts how much.</param>
/// <source id="lackner-2023" locator="section 2"/>
/// <method page="docs/methods/batching.md"/>
public sealed record BatchInstance(IReadOnlyList<BatchOven> Ovens, IReadOnlyList<BatchJob> Jobs, int[,] SetupTimes, int[,] SetupCosts, BatchWeights Weights);

/// <summary>A machine.</summary>
/// <param name="Capacity">Sum of job sizes it takes at once.</param>
/// <param name="InitialAttribute">What it was last used for.</param>
/// <param name="Open">When it can be used: start and end of each interval, in order.</param>
public sealed record BatchOven(int Capacity, int InitialAttribute, IReadOnlyList<(int From, int To)> Open);

/// <summary>A job.</summary>
/// <param name="Attribute">Jobs of one attribute may share a batch.</param>
/// <param name="Size">Room it takes.</param>
/// <param name="LeastTime">Shortest batch it may be in.</param>
/// <param name="MostTime">Longest batch it may be in.</param>
/// <param name="EarliestStart">Not started before.</param>
/// <param name="Due">Late when its batch ends after this.</param>
/// <param name="Ovens">Machines it may be in.</param>
public sealed record BatchJob(int Attribute, int Size, int LeastTime, int MostTime, int EarliestStart, int Due, IReadOnlyList<int> Ovens);

/// <summary>Weights of the cost, and what it is divided by.</summary>
/// <param name="Running">Each time unit a batch runs.</param>
/// <param name="Late">Each late job.</param>
/// <param name="SetupTime">Each time unit of set-up.</param>
/// <param name="SetupCost">Each unit of set-up cost.</param>
/// <param name="Divisor">The cost is told as a share of this.</param>
public sealed record BatchWeights(long Running, long Late, long SetupTime, long SetupCost, long Divisor);

/// <summary>A batch.</summary>
/// <param name="Oven">The machine.</param>
/// <param name="Start">Its start, after its set-up.</param>
/// <param name="Length">How long it runs.</param>
/// <param name="Jobs">The jobs in it.</param>
public sealed record Batch(int Oven, int Start, int Length, IReadOnlyList<int> Jobs)
{
    /// <summary>First time unit after it.</summary>
    public int End => Start + Length;
}
