using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>An angle between growth rings and a face, or a turn of a log.</summary>
/// <remarks>Held in radians. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Angle : IComparable<Angle>
{
    private Angle(double radians) => Radians = radians;

    /// <summary>Radians.</summary>
    public double Radians { get; }

    /// <summary>Degrees.</summary>
    public double Degrees => Radians / (Math.PI / 180.0);

    /// <summary>From radians.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside -2 pi to 2 pi rad.</exception>
    public static Angle FromRadians(double radians) => Checked(radians, radians, nameof(radians));

    /// <summary>From degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside -2 pi to 2 pi rad.</exception>
    public static Angle FromDegrees(double degrees) => Checked(degrees * (Math.PI / 180.0), degrees, nameof(degrees));

    /// <summary>True when a Radians value lies inside the accepted range (-2 pi to 2 pi rad).</summary>
    public static bool Accepts(double radians) => radians is >= -6.2831853071795872 and <= 6.2831853071795872;


    /// <inheritdoc/>
    public int CompareTo(Angle other) => Radians.CompareTo(other.Radians);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Angle left, Angle right) => left.Radians < right.Radians;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Angle left, Angle right) => left.Radians > right.Radians;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Angle left, Angle right) => left.Radians <= right.Radians;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Angle left, Angle right) => left.Radians >= right.Radians;

    internal static Angle Trusted(double radians)
    {
        Debug.Assert(Accepts(radians), $"Angle {radians} Radians");
        return new(radians);
    }

    private static Angle Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: -2 pi to 2 pi rad.");
}
