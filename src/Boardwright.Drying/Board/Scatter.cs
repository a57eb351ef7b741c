using Boardwright.Numerics;

namespace Boardwright.Drying.Board;

/// <summary>Evenly spread chance for a small ensemble: each quantity takes every slice of its distribution once, in an order of its own.</summary>
internal static class Scatter
{
    /// <summary>Standard normal deviates, one a member; the same seed and branch give the same.</summary>
    public static double[] Normal(int members, ulong seed, ulong branch)
    {
        var random = new RandomSequence(seed, branch);
        var values = new double[members];
        for (var m = 0; m < members; m++)
        {
            values[m] = Distributions.NormalQuantile((m + 0.5) / members);
        }

        for (var m = members - 1; m > 0; m--)
        {
            var other = random.NextIndex(m + 1);
            (values[m], values[other]) = (values[other], values[m]);
        }

        return values;
    }

    /// <summary>Standard normal deviates without correlation with those of the other branches: what chance makes them share would be taken by a reading for knowledge.</summary>
    /// <param name="members">Members of the ensemble.</param>
    /// <param name="seed">Of the forecast.</param>
    /// <param name="branch">One of them.</param>
    /// <param name="before">Branches it has to be free of, themselves free of each other in this order.</param>
    public static double[] Apart(int members, ulong seed, ulong branch, params ReadOnlySpan<ulong> before)
    {
        var values = Normal(members, seed, branch);
        for (var i = 0; i < before.Length; i++)
        {
            var other = Apart(members, seed, before[i], before[..i]);
            var (with, own) = (0.0, 0.0);
            for (var m = 0; m < members; m++)
            {
                with += values[m] * other[m];
                own += other[m] * other[m];
            }

            for (var m = 0; m < members && own > 0.0; m++)
            {
                values[m] -= with / own * other[m];
            }
        }

        return Whole(values);
    }

    /// <summary>Stretched to a standard deviation of 1: the middles of few slices of a distribution spread less than the distribution.</summary>
    public static double[] Whole(double[] normal)
    {
        ArgumentNullException.ThrowIfNull(normal);
        var deviation = Math.Sqrt(normal.Average(one => one * one));
        return deviation > 0.0 ? [.. normal.Select(one => one / deviation)] : normal;
    }

    /// <summary>Value of a rank in sorted values, the nearest member: 0 the lowest, 1 the highest.</summary>
    public static double Ranked(ReadOnlySpan<double> sorted, double rank) => sorted[RankIndex(sorted.Length, rank)];

    /// <summary>Value of a rank in sorted values, the mean of the members within a twentieth of it: steadier from day to day than the nearest one.</summary>
    public static double Around(ReadOnlySpan<double> sorted, double rank)
    {
        var (middle, reach) = (RankIndex(sorted.Length, rank), sorted.Length / 20);
        var sum = 0.0;
        for (var i = middle - reach; i <= middle + reach; i++)
        {
            sum += sorted[i];
        }

        return sum / (2 * reach + 1);
    }

    /// <summary>Value below which a share of what may come lies, between the two members about it: of so many members and one more, that one is as likely in any place.</summary>
    public static double Quantile(ReadOnlySpan<double> sorted, double share)
    {
        var place = Math.Clamp(share * (sorted.Length + 1) - 1.0, 0.0, sorted.Length - 1.0);
        var (low, high) = (sorted[(int)Math.Floor(place)], sorted[(int)Math.Ceiling(place)]);
        return double.IsPositiveInfinity(high) ? high : low + (place - Math.Floor(place)) * (high - low);
    }

    /// <summary>Index of a rank among so many sorted values.</summary>
    public static int RankIndex(int count, double rank) => (int)Math.Round(rank * (count - 1), MidpointRounding.AwayFromZero);
}
