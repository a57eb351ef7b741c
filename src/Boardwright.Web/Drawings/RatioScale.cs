namespace Boardwright.Web.Drawings;

/// <summary>A ratio (logarithmic) scale: equal ratios lie equally far apart, so the last points of drying stay readable beside green wood.</summary>
public readonly record struct RatioScale(double FromValue, double ToValue, double FromPosition, double ToPosition)
{
    private static readonly double[] Steps = [2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 30, 40, 60, 80, 100, 120, 150, 200];

    public double At(double value) =>
        FromPosition + (Math.Log(value / FromValue) / Math.Log(ToValue / FromValue) * (ToPosition - FromPosition));

    /// <summary>The printed steps that lie at least <paramref name="gap"/> apart, from the dry end on.</summary>
    public IEnumerable<double> Ticks(double gap)
    {
        double? last = null;
        foreach (var value in Steps)
        {
            if (value >= FromValue && value <= ToValue && (last is null || Math.Abs(At(value) - last.Value) >= gap))
            {
                last = At(value);
                yield return value;
            }
        }
    }
}
