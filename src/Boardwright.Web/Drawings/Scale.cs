namespace Boardwright.Web.Drawings;

/// <summary>A straight scale: values to positions.</summary>
public readonly record struct Scale(double FromValue, double ToValue, double FromPosition, double ToPosition)
{
    private static readonly double[] RoundFactors = [1, 2, 2.5, 5, 10, 20];

    public double At(double value) => FromPosition + ((value - FromValue) / (ToValue - FromValue) * (ToPosition - FromPosition));

    /// <summary>Round steps (1, 2, 2.5 or 5 times a power of ten) that give at most <paramref name="countMax"/> ticks.</summary>
    public IEnumerable<double> Ticks(int countMax)
    {
        var span = ToValue - FromValue;
        var power = Math.Pow(10, Math.Floor(Math.Log10(span / countMax)));
        var step = RoundFactors.Select(factor => factor * power).First(size => span / size <= countMax);
        for (var index = (int)Math.Ceiling((FromValue / step) - 1e-9); index * step <= ToValue + (step * 1e-9); index++)
        {
            yield return index * step;
        }
    }
}
