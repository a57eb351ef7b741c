using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>Share of the vapour that air at this temperature could hold over water.</summary>
/// <remarks>Held as a fraction. The default value is bone-dry air. Equality is exact.</remarks>
public readonly record struct RelativeHumidity : IComparable<RelativeHumidity>
{
    private RelativeHumidity(double fraction) => Fraction = fraction;

    /// <summary>Fraction, 0 to 1.</summary>
    public double Fraction { get; }

    /// <summary>Percent.</summary>
    public double Percent => Fraction / 0.01;

    /// <summary>From a fraction, 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 100 %.</exception>
    public static RelativeHumidity FromFraction(double fraction) => Checked(fraction, fraction, nameof(fraction));

    /// <summary>From percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 100 %.</exception>
    public static RelativeHumidity FromPercent(double percent) => Checked(percent * 0.01, percent, nameof(percent));

    /// <summary>True when a Fraction value lies inside the accepted range (0 to 100 %).</summary>
    public static bool Accepts(double fraction) => fraction is >= 0.0 and <= 1.0;


    /// <inheritdoc/>
    public int CompareTo(RelativeHumidity other) => Fraction.CompareTo(other.Fraction);

    /// <summary>Compares two values.</summary>
    public static bool operator <(RelativeHumidity left, RelativeHumidity right) => left.Fraction < right.Fraction;

    /// <summary>Compares two values.</summary>
    public static bool operator >(RelativeHumidity left, RelativeHumidity right) => left.Fraction > right.Fraction;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(RelativeHumidity left, RelativeHumidity right) => left.Fraction <= right.Fraction;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(RelativeHumidity left, RelativeHumidity right) => left.Fraction >= right.Fraction;

    internal static RelativeHumidity Trusted(double fraction)
    {
        Debug.Assert(Accepts(fraction), $"RelativeHumidity {fraction} Fraction");
        return new(fraction);
    }

    private static RelativeHumidity Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 100 %.");
}
