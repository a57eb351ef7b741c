namespace Boardwright.Sawing;

/// <summary>Rounding as trade rules word it, safe against the last bits a unit conversion leaves behind.</summary>
/// <remarks>18 in written in metres and read back may be 17.999999999999996 in. A rule that rounds an exact half must still see the half.</remarks>
public static class TradeRounding
{
    // Far above the noise of a conversion (1e-12 of a thousand board feet), far below any printed digit.
    private const double Noise = 1e-8;

    /// <summary>The nearest multiple of a step, an exact half going up.</summary>
    public static double NearestHalfUp(double value, double step = 1.0) => Math.Floor(value / step + 0.5 + Noise) * step;

    /// <summary>The whole number below, a value within conversion noise of a whole number being that number.</summary>
    public static int WholeDown(double value) => (int)Math.Floor(value + Noise);

    /// <summary>The value, or the multiple of a step it was before a unit conversion left noise on it.</summary>
    public static double Clean(double value, double step) => IsWhole(value / step) ? Math.Round(value / step) * step : value;

    /// <summary>True when the value is a whole number but for conversion noise.</summary>
    public static bool IsWhole(double value) => Math.Abs(value - Math.Round(value)) < Noise;

    /// <summary>True when the value lies exactly half way between two whole numbers but for conversion noise.</summary>
    public static bool IsHalf(double value) => IsWhole(value + 0.5);
}
