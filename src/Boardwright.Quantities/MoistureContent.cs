using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>Mass of water per mass of oven-dry wood. Zero is oven-dry; green wood may exceed 1.</summary>
/// <remarks>Held as a fraction of the oven-dry mass. The default value is oven-dry. Equality is exact.</remarks>
public readonly record struct MoistureContent : IComparable<MoistureContent>
{
    private MoistureContent(double fraction) => Fraction = fraction;

    /// <summary>Fraction of the oven-dry mass.</summary>
    public double Fraction { get; }

    /// <summary>Percent of the oven-dry mass.</summary>
    public double Percent => Fraction / 0.01;

    /// <summary>From a fraction of the oven-dry mass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 500 % of oven-dry mass.</exception>
    public static MoistureContent FromFraction(double fraction) => Checked(fraction, fraction, nameof(fraction));

    /// <summary>From percent of the oven-dry mass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 500 % of oven-dry mass.</exception>
    public static MoistureContent FromPercent(double percent) => Checked(percent * 0.01, percent, nameof(percent));

    /// <summary>True when a Fraction value lies inside the accepted range (0 to 500 % of oven-dry mass).</summary>
    public static bool Accepts(double fraction) => fraction is >= 0.0 and <= 5.0;

    /// <summary>Oven-dry wood, 0 %.</summary>
    public static MoistureContent OvenDry => default;

    /// <inheritdoc/>
    public int CompareTo(MoistureContent other) => Fraction.CompareTo(other.Fraction);

    /// <summary>Compares two values.</summary>
    public static bool operator <(MoistureContent left, MoistureContent right) => left.Fraction < right.Fraction;

    /// <summary>Compares two values.</summary>
    public static bool operator >(MoistureContent left, MoistureContent right) => left.Fraction > right.Fraction;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(MoistureContent left, MoistureContent right) => left.Fraction <= right.Fraction;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(MoistureContent left, MoistureContent right) => left.Fraction >= right.Fraction;

    internal static MoistureContent Trusted(double fraction)
    {
        Debug.Assert(Accepts(fraction), $"MoistureContent {fraction} Fraction");
        return new(fraction);
    }

    private static MoistureContent Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 500 % of oven-dry mass.");
}
