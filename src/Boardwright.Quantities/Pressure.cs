using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>An absolute pressure.</summary>
/// <remarks>Held in pascals; never a gauge reading. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Pressure : IComparable<Pressure>
{
    private Pressure(double pascals) => Pascals = pascals;

    /// <summary>Pascals.</summary>
    public double Pascals { get; }

    /// <summary>Kilopascals.</summary>
    public double Kilopascals => Pascals / 1000.0;

    /// <summary>Millibars.</summary>
    public double Millibars => Pascals / 100.0;

    /// <summary>Millimetres of mercury.</summary>
    public double MillimetresOfMercury => Pascals / 133.322387415;

    /// <summary>Inches of mercury at 0 C.</summary>
    public double InchesOfMercury => Pascals / 3386.388640341;

    /// <summary>From pascals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e7 Pa.</exception>
    public static Pressure FromPascals(double pascals) => Checked(pascals, pascals, nameof(pascals));

    /// <summary>From kilopascals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e7 Pa.</exception>
    public static Pressure FromKilopascals(double kilopascals) => Checked(kilopascals * 1000.0, kilopascals, nameof(kilopascals));

    /// <summary>From millibars.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e7 Pa.</exception>
    public static Pressure FromMillibars(double millibars) => Checked(millibars * 100.0, millibars, nameof(millibars));

    /// <summary>From millimetres of mercury.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e7 Pa.</exception>
    public static Pressure FromMillimetresOfMercury(double millimetresOfMercury) => Checked(millimetresOfMercury * 133.322387415, millimetresOfMercury, nameof(millimetresOfMercury));

    /// <summary>From inches of mercury at 0 C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e7 Pa.</exception>
    public static Pressure FromInchesOfMercury(double inchesOfMercury) => Checked(inchesOfMercury * 3386.388640341, inchesOfMercury, nameof(inchesOfMercury));

    /// <summary>True when a Pascals value lies inside the accepted range (0 to 1e7 Pa).</summary>
    public static bool Accepts(double pascals) => pascals is >= 0.0 and <= 1e7;


    /// <inheritdoc/>
    public int CompareTo(Pressure other) => Pascals.CompareTo(other.Pascals);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Pressure left, Pressure right) => left.Pascals < right.Pascals;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Pressure left, Pressure right) => left.Pascals > right.Pascals;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Pressure left, Pressure right) => left.Pascals <= right.Pascals;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Pressure left, Pressure right) => left.Pascals >= right.Pascals;

    internal static Pressure Trusted(double pascals)
    {
        Debug.Assert(Accepts(pascals), $"Pressure {pascals} Pascals");
        return new(pascals);
    }

    private static Pressure Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 1e7 Pa.");
}
