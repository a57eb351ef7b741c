using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>A part of a whole: an efficiency, a loss, a chance.</summary>
/// <remarks>Held as a fraction. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Share : IComparable<Share>
{
    private Share(double fraction) => Fraction = fraction;

    /// <summary>Fraction, 0 to 1.</summary>
    public double Fraction { get; }

    /// <summary>Percent.</summary>
    public double Percent => Fraction / 0.01;

    /// <summary>From a fraction, 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 100 %.</exception>
    public static Share FromFraction(double fraction) => Checked(fraction, fraction, nameof(fraction));

    /// <summary>From percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 100 %.</exception>
    public static Share FromPercent(double percent) => Checked(percent * 0.01, percent, nameof(percent));

    /// <summary>True when a Fraction value lies inside the accepted range (0 to 100 %).</summary>
    public static bool Accepts(double fraction) => fraction is >= 0.0 and <= 1.0;


    /// <inheritdoc/>
    public int CompareTo(Share other) => Fraction.CompareTo(other.Fraction);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Share left, Share right) => left.Fraction < right.Fraction;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Share left, Share right) => left.Fraction > right.Fraction;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Share left, Share right) => left.Fraction <= right.Fraction;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Share left, Share right) => left.Fraction >= right.Fraction;

    internal static Share Trusted(double fraction)
    {
        Debug.Assert(Accepts(fraction), $"Share {fraction} Fraction");
        return new(fraction);
    }

    private static Share Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 100 %.");
}
