using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>A mass, as a scale shows it.</summary>
/// <remarks>Held in kilograms. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double kilograms) => Kilograms = kilograms;

    /// <summary>Kilograms.</summary>
    public double Kilograms { get; }

    /// <summary>Grams.</summary>
    public double Grams => Kilograms / 0.001;

    /// <summary>Pounds (exactly 0.45359237 kg).</summary>
    public double Pounds => Kilograms / 0.45359237;

    /// <summary>From kilograms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e7 kg.</exception>
    public static Mass FromKilograms(double kilograms) => Checked(kilograms, kilograms, nameof(kilograms));

    /// <summary>From grams.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e7 kg.</exception>
    public static Mass FromGrams(double grams) => Checked(grams * 0.001, grams, nameof(grams));

    /// <summary>From pounds (exactly 0.45359237 kg).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e7 kg.</exception>
    public static Mass FromPounds(double pounds) => Checked(pounds * 0.45359237, pounds, nameof(pounds));

    /// <summary>True when a Kilograms value lies inside the accepted range (0 to 1e7 kg).</summary>
    public static bool Accepts(double kilograms) => kilograms is >= 0.0 and <= 1e7;

    /// <summary>Sum.</summary>
    public static Mass operator +(Mass left, Mass right) => new(left.Kilograms + right.Kilograms);

    /// <summary>Difference; the caller keeps it inside the accepted range.</summary>
    public static Mass operator -(Mass left, Mass right) => new(left.Kilograms - right.Kilograms);

    /// <summary>Scaled by a plain number.</summary>
    public static Mass operator *(Mass left, double factor) => new(left.Kilograms * factor);

    /// <summary>Ratio of two values.</summary>
    public static double operator /(Mass left, Mass right) => left.Kilograms / right.Kilograms;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Mass left, Mass right) => left.Kilograms < right.Kilograms;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Mass left, Mass right) => left.Kilograms > right.Kilograms;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Mass left, Mass right) => left.Kilograms <= right.Kilograms;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Mass left, Mass right) => left.Kilograms >= right.Kilograms;

    internal static Mass Trusted(double kilograms)
    {
        Debug.Assert(Accepts(kilograms), $"Mass {kilograms} Kilograms");
        return new(kilograms);
    }

    private static Mass Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 1e7 kg.");
}
