using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>A solid volume, never a number of board feet.</summary>
/// <remarks>Held in cubic metres. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Volume : IComparable<Volume>
{
    private Volume(double cubicMetres) => CubicMetres = cubicMetres;

    /// <summary>Cubic metres.</summary>
    public double CubicMetres { get; }

    /// <summary>Litres.</summary>
    public double Litres => CubicMetres / 0.001;

    /// <summary>Cubic feet.</summary>
    public double CubicFeet => CubicMetres / 0.028316846592;

    /// <summary>From cubic metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e6 m3.</exception>
    public static Volume FromCubicMetres(double cubicMetres) => Checked(cubicMetres, cubicMetres, nameof(cubicMetres));

    /// <summary>From litres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e6 m3.</exception>
    public static Volume FromLitres(double litres) => Checked(litres * 0.001, litres, nameof(litres));

    /// <summary>From cubic feet.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e6 m3.</exception>
    public static Volume FromCubicFeet(double cubicFeet) => Checked(cubicFeet * 0.028316846592, cubicFeet, nameof(cubicFeet));

    /// <summary>True when a CubicMetres value lies inside the accepted range (0 to 1e6 m3).</summary>
    public static bool Accepts(double cubicMetres) => cubicMetres is >= 0.0 and <= 1e6;

    /// <summary>Sum.</summary>
    public static Volume operator +(Volume left, Volume right) => new(left.CubicMetres + right.CubicMetres);

    /// <summary>Difference; the caller keeps it inside the accepted range.</summary>
    public static Volume operator -(Volume left, Volume right) => new(left.CubicMetres - right.CubicMetres);

    /// <summary>Scaled by a plain number.</summary>
    public static Volume operator *(Volume left, double factor) => new(left.CubicMetres * factor);

    /// <summary>Ratio of two values.</summary>
    public static double operator /(Volume left, Volume right) => left.CubicMetres / right.CubicMetres;

    /// <inheritdoc/>
    public int CompareTo(Volume other) => CubicMetres.CompareTo(other.CubicMetres);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Volume left, Volume right) => left.CubicMetres < right.CubicMetres;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Volume left, Volume right) => left.CubicMetres > right.CubicMetres;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Volume left, Volume right) => left.CubicMetres <= right.CubicMetres;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Volume left, Volume right) => left.CubicMetres >= right.CubicMetres;

    internal static Volume Trusted(double cubicMetres)
    {
        Debug.Assert(Accepts(cubicMetres), $"Volume {cubicMetres} CubicMetres");
        return new(cubicMetres);
    }

    private static Volume Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 1e6 m3.");
}
