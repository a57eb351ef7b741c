using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>Air speed.</summary>
/// <remarks>Held in metres per second. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Speed : IComparable<Speed>
{
    private Speed(double metresPerSecond) => MetresPerSecond = metresPerSecond;

    /// <summary>Metres per second.</summary>
    public double MetresPerSecond { get; }

    /// <summary>Feet per minute.</summary>
    public double FeetPerMinute => MetresPerSecond / 0.00508;

    /// <summary>From metres per second.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 200 m/s.</exception>
    public static Speed FromMetresPerSecond(double metresPerSecond) => Checked(metresPerSecond, metresPerSecond, nameof(metresPerSecond));

    /// <summary>From feet per minute.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 200 m/s.</exception>
    public static Speed FromFeetPerMinute(double feetPerMinute) => Checked(feetPerMinute * 0.00508, feetPerMinute, nameof(feetPerMinute));

    /// <summary>True when a MetresPerSecond value lies inside the accepted range (0 to 200 m/s).</summary>
    public static bool Accepts(double metresPerSecond) => metresPerSecond is >= 0.0 and <= 200.0;


    /// <inheritdoc/>
    public int CompareTo(Speed other) => MetresPerSecond.CompareTo(other.MetresPerSecond);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Speed left, Speed right) => left.MetresPerSecond < right.MetresPerSecond;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Speed left, Speed right) => left.MetresPerSecond > right.MetresPerSecond;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Speed left, Speed right) => left.MetresPerSecond <= right.MetresPerSecond;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Speed left, Speed right) => left.MetresPerSecond >= right.MetresPerSecond;

    internal static Speed Trusted(double metresPerSecond)
    {
        Debug.Assert(Accepts(metresPerSecond), $"Speed {metresPerSecond} MetresPerSecond");
        return new(metresPerSecond);
    }

    private static Speed Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 200 m/s.");
}
