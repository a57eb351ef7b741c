using Boardwright.Numerics;
using Boardwright.Planning.Batching;

namespace Boardwright.Planning.Tests.Batching;

/// <summary>Instances by chance, small enough to try every schedule or large enough to search.</summary>
internal static class RandomInstance
{
    public static BatchInstance Tiny(RandomSequence chance) => Of(chance, chance.NextIndex(4) + 2, chance.NextIndex(2) + 1);

    /// <summary>Ovens with two open intervals, the second long enough for most jobs.</summary>
    public static BatchInstance Of(RandomSequence chance, int jobs, int attributes)
    {
        int Between(int low, int high) => low + chance.NextIndex(high - low + 1);
        var ovens = Between(1, 2);
        int[,] Square(int most)
        {
            var square = new int[attributes, attributes];
            for (var index = 0; index < square.Length; index++)
            {
                square[index / attributes, index % attributes] = Between(0, most);
            }

            return square;
        }

        BatchJob Job()
        {
            var least = Between(1, 6);
            var oven = Between(0, ovens - 1);
            return new(Between(0, attributes - 1), Between(1, 5), least, least + Between(0, 5), Between(0, 4), Between(4, 20), Between(0, 1) == 0 ? [oven] : [.. Enumerable.Range(0, ovens)]);
        }

        return new(
            [.. Enumerable.Range(0, ovens).Select(_ => new BatchOven(Between(5, 10), Between(0, attributes - 1), [(0, Between(6, 14)), (15, Between(24, 40) + 6 * Math.Max(0, jobs - 5))]))],
            [.. Enumerable.Range(0, jobs).Select(_ => Job())], Square(3), Square(4), new(Between(1, 4), Between(10, 60), Between(0, 2), Between(0, 3), 1000));
    }
}
