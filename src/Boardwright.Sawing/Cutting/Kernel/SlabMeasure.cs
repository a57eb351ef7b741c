namespace Boardwright.Sawing;

/// <summary>Where and how the widths of a slab with natural edges are taken: at five equal steps from end to end, mean of both faces, bark left out (<see cref="LiveEdgeMeasure"/>).</summary>
internal static class SlabMeasure
{
    public const int Places = 5;

    /// <summary>Mean and least width of a slab between two heights, each the mean of both faces; zero where a face has no wood or rot meets the slab.</summary>
    public static (double MeanMm, double LeastMm) Of(TurnedLog log, int[] places, double bottomMm, double topMm, double rotRadiusMm)
    {
        var (sum, least) = (0.0, double.PositiveInfinity);
        foreach (var j in places)
        {
            log.Chord(j, bottomMm, out var low1, out var high1);
            log.Chord(j, topMm, out var low2, out var high2);
            if (low1 >= high1 || low2 >= high2 || (log.Up[j] > bottomMm - rotRadiusMm && log.Up[j] < topMm + rotRadiusMm && rotRadiusMm > 0.0))
                return (0.0, 0.0);

            var width = ((high1 - low1) + (high2 - low2)) / 2.0;
            (sum, least) = (sum + width, Math.Min(least, width));
        }

        return (sum / places.Length, least);
    }
}
