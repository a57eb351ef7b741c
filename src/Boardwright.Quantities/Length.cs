using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>A distance: a diameter, a thickness, a width, a length of wood.</summary>
/// <remarks>Held in metres. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Length : IComparable<Length>
{
    private Length(double metres) => Metres = metres;

    /// <summary>Metres.</summary>
    public double Metres { get; }

    /// <summary>Millimetres.</summary>
    public double Millimetres => Metres / 0.001;

    /// <summary>Inches (exactly 25.4 mm).</summary>
    public double Inches => Metres / 0.0254;

    /// <summary>Feet (exactly 304.8 mm).</summary>
    public double Feet => Metres / 0.3048;

    /// <summary>From metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1000 m.</exception>
    public static Length FromMetres(double metres) => Checked(metres, metres, nameof(metres));

    /// <summary>From millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1000 m.</exception>
    public static Length FromMillimetres(double millimetres) => Checked(millimetres * 0.001, millimetres, nameof(millimetres));

    /// <summary>From inches (exactly 25.4 mm).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1000 m.</exception>
    public static Length FromInches(double inches) => Checked(inches * 0.0254, inches, nameof(inches));

    /// <summary>From feet (exactly 304.8 mm).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1000 m.</exception>
    public static Length FromFeet(double feet) => Checked(feet * 0.3048, feet, nameof(feet));

    internal const double Longest = 1000.0;

    /// <summary>True when a Metres value lies inside the accepted range (0 to 1000 m).</summary>
    public static bool Accepts(double metres) => metres is >= 0.0 and <= Longest;

    /// <summary>Sum.</summary>
    public static Length operator +(Length left, Length right) => new(left.Metres + right.Metres);

    /// <summary>Difference; the caller keeps it inside the accepted range.</summary>
    public static Length operator -(Length left, Length right) => new(left.Metres - right.Metres);

    /// <summary>Scaled by a plain number.</summary>
    public static Length operator *(Length left, double factor) => new(left.Metres * factor);

    /// <summary>Ratio of two values.</summary>
    public static double operator /(Length left, Length right) => left.Metres / right.Metres;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Length left, Length right) => left.Metres < right.Metres;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Length left, Length right) => left.Metres > right.Metres;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Length left, Length right) => left.Metres <= right.Metres;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Length left, Length right) => left.Metres >= right.Metres;

    internal static Length Trusted(double metres)
    {
        Debug.Assert(Accepts(metres), $"Length {metres} Metres");
        return new(metres);
    }

    private static Length Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 1000 m.");
}
