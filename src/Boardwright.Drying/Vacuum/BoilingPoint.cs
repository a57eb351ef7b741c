using Boardwright.Quantities;

namespace Boardwright.Drying.Vacuum;

/// <summary>Temperature at which water boils at a pressure, and the pressure at which it boils.</summary>
/// <remarks>
/// <para>Validity: 0 to 310 °C, 611.657 Pa to 10 MPa; reproduces the release's check values to all digits.</para>
/// <para>Pressure is absolute. A gauge in inches of vacuum reads down from the local barometer: at 500 m the same reading is 5.9 kPa
/// lower than at sea level.</para>
/// </remarks>
/// <source id="iapws-if97" locator="eqs 30 and 31"/>
/// <method page="docs/methods/vacuum-drying.md"/>
public static class BoilingPoint
{
    private static readonly double[] N =
    [
        0.0, 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
        0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
    ];

    /// <summary>Lowest pressure of liquid water, the triple point.</summary>
    public static Pressure Min => Pressure.FromPascals(611.657);

    /// <summary>Highest pressure taken.</summary>
    public static Pressure Max => Pressure.FromPascals(1.0e7);

    /// <summary>Boiling point at an absolute pressure.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside <see cref="Min"/> to <see cref="Max"/>.</exception>
    public static Temperature At(Pressure pressure) => pressure >= Min && pressure <= Max
        ? Temperature.FromKelvins(Kelvins(pressure.Pascals))
        : throw new ArgumentOutOfRangeException(nameof(pressure), pressure.Pascals, "Accepted: 611.657 Pa to 10 MPa.");

    /// <summary>Pressure at which water boils.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 310 °C.</exception>
    public static Pressure PressureAt(Temperature temperature) => temperature.Celsius is >= 0.0 and <= 310.0
        ? Pressure.FromPascals(Pascals(temperature.Kelvins))
        : throw new ArgumentOutOfRangeException(nameof(temperature), temperature.Celsius, "Accepted: 0 to 310 C.");

    internal static double Pascals(double kelvins)
    {
        var theta = kelvins + N[9] / (kelvins - N[10]);
        var a = theta * theta + N[1] * theta + N[2];
        var b = N[3] * theta * theta + N[4] * theta + N[5];
        var c = N[6] * theta * theta + N[7] * theta + N[8];
        return 1e6 * Math.Pow(2.0 * c / (-b + Math.Sqrt(b * b - 4.0 * a * c)), 4.0);
    }

    private static double Kelvins(double pascals)
    {
        var beta = Math.Pow(pascals / 1e6, 0.25);
        var e = beta * beta + N[3] * beta + N[6];
        var f = N[1] * beta * beta + N[4] * beta + N[7];
        var g = N[2] * beta * beta + N[5] * beta + N[8];
        var d = 2.0 * g / (-f - Math.Sqrt(f * f - 4.0 * e * g));
        return (N[10] + d - Math.Sqrt((N[10] + d) * (N[10] + d) - 4.0 * (N[9] + N[10] * d))) / 2.0;
    }
}
