namespace Boardwright.Web.Drawings;

/// <summary>Moves labels apart that would cover each other, each as little as possible.</summary>
public static class Spread
{
    /// <summary>Positions at least <paramref name="gap"/> apart, in the given order, least sum of squared moves.</summary>
    /// <remarks>Pooling: neighbours that clash become one block whose mean move is zero. Exact for equal weights.</remarks>
    /// <param name="wanted">Rising positions.</param>
    /// <param name="gap">Least distance of neighbours, same unit.</param>
    public static IReadOnlyList<double> Apart(IReadOnlyList<double> wanted, double gap)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        var blocks = new List<(double Mean, int Count)>();
        for (var index = 0; index < wanted.Count; index++)
        {
            blocks.Add((wanted[index] - (index * gap), 1));
            while (blocks.Count > 1 && blocks[^2].Mean > blocks[^1].Mean)
            {
                var (a, b) = (blocks[^2], blocks[^1]);
                blocks.RemoveRange(blocks.Count - 2, 2);
                blocks.Add((((a.Mean * a.Count) + (b.Mean * b.Count)) / (a.Count + b.Count), a.Count + b.Count));
            }
        }

        var placed = blocks.SelectMany(block => Enumerable.Repeat(block.Mean, block.Count)).ToList();
        return [.. placed.Select((mean, index) => mean + (index * gap))];
    }
}
