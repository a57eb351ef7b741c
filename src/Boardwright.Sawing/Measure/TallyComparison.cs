namespace Boardwright.Sawing;

/// <summary>Two tallies of one pack laid beside each other: which boards differ, which are missing.</summary>
/// <remarks>
/// <para>A missed board shifts every number after it, so boards are not compared by number. The two lists are aligned in order at the least cost, by dynamic
/// programming over both lists (edit distance, n x m steps): a missing board costs 5, a pair 3 for the first thing that differs and 2 for each more.</para>
/// <para>Two boards are thus paired rather than called one missing and one too many; equal neighbours of which one is missing cannot be told apart, and the later is named.</para>
/// </remarks>
/// <method page="docs/methods/pack-tally.md"/>
public static class TallyComparison
{
    private const int MissingCost = 5;
    private const int FirstDifferenceCost = 3;
    private const int FurtherDifferenceCost = 2;

    /// <summary>Every difference, in the order of the tallies; empty when they agree board by board.</summary>
    public static IReadOnlyList<TallyDifference> Of(IReadOnlyList<TalliedBoard> first, IReadOnlyList<TalliedBoard> second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        var cost = Costs(first, second);
        var differences = new List<TallyDifference>();
        for (int i = 0, j = 0; i < first.Count || j < second.Count;)
        {
            if (i < first.Count && j < second.Count && cost[i, j] == cost[i + 1, j + 1] + PairCost(first[i], second[j]))
            {
                if (first[i].Differences(second[j]) > 0)
                    differences.Add(new(i + 1, j + 1, first[i], second[j]));
                i++;
                j++;
            }
            else if (i < first.Count && cost[i, j] == cost[i + 1, j] + MissingCost)
            {
                differences.Add(new(i + 1, null, first[i], null));
                i++;
            }
            else
            {
                differences.Add(new(null, j + 1, null, second[j]));
                j++;
            }
        }

        return differences;
    }

    // cost[i, j]: least cost of aligning what follows board i of the first and board j of the second.
    private static int[,] Costs(IReadOnlyList<TalliedBoard> first, IReadOnlyList<TalliedBoard> second)
    {
        var cost = new int[first.Count + 1, second.Count + 1];
        for (var i = first.Count; i >= 0; i--)
        {
            for (var j = second.Count; j >= 0; j--)
            {
                if (i == first.Count || j == second.Count)
                {
                    cost[i, j] = MissingCost * (first.Count - i + second.Count - j);
                    continue;
                }

                var missing = Math.Min(cost[i + 1, j], cost[i, j + 1]) + MissingCost;
                cost[i, j] = Math.Min(missing, cost[i + 1, j + 1] + PairCost(first[i], second[j]));
            }
        }

        return cost;
    }

    private static int PairCost(TalliedBoard left, TalliedBoard right) => left.Differences(right) is > 0 and var count
        ? FirstDifferenceCost + FurtherDifferenceCost * (count - 1)
        : 0;
}

/// <summary>One difference between two tallies.</summary>
/// <param name="FirstNumber">Number of the board in the first tally, from 1; null when it is missing there.</param>
/// <param name="SecondNumber">Number of the board in the second tally, from 1; null when it is missing there.</param>
/// <param name="First">The board as the first tally has it.</param>
/// <param name="Second">The board as the second tally has it.</param>
public sealed record TallyDifference(int? FirstNumber, int? SecondNumber, TalliedBoard? First, TalliedBoard? Second);
