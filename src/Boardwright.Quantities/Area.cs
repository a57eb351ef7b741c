using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>A surface.</summary>
/// <remarks>Held in square metres. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Area : IComparable<Area>
{
    private Area(double squareMetres) => SquareMetres = squareMetres;

    /// <summary>Square metres.</summary>
    public double SquareMetres { get; }

    /// <summary>Square feet.</summary>
    public double SquareFeet => SquareMetres / 0.09290304;

    /// <summary>From square metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e6 m2.</exception>
    public static Area FromSquareMetres(double squareMetres) => Checked(squareMetres, squareMetres, nameof(squareMetres));

    /// <summary>From square feet.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e6 m2.</exception>
    public static Area FromSquareFeet(double squareFeet) => Checked(squareFeet * 0.09290304, squareFeet, nameof(squareFeet));

    /// <summary>True when a SquareMetres value lies inside the accepted range (0 to 1e6 m2).</summary>
    public static bool Accepts(double squareMetres) => squareMetres is >= 0.0 and <= 1e6;

    /// <summary>Sum.</summary>
    public static Area operator +(Area left, Area right) => new(left.SquareMetres + right.SquareMetres);

    /// <summary>Difference; the caller keeps it inside the accepted range.</summary>
    public static Area operator -(Area left, Area right) => new(left.SquareMetres - right.SquareMetres);

    /// <summary>Scaled by a plain number.</summary>
    public static Area operator *(Area left, double factor) => new(left.SquareMetres * factor);

    /// <summary>Ratio of two values.</summary>
    public static double operator /(Area left, Area right) => left.SquareMetres / right.SquareMetres;

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareMetres.CompareTo(other.SquareMetres);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Area left, Area right) => left.SquareMetres < right.SquareMetres;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Area left, Area right) => left.SquareMetres > right.SquareMetres;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Area left, Area right) => left.SquareMetres <= right.SquareMetres;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Area left, Area right) => left.SquareMetres >= right.SquareMetres;

    internal static Area Trusted(double squareMetres)
    {
        Debug.Assert(Accepts(squareMetres), $"Area {squareMetres} SquareMetres");
        return new(squareMetres);
    }

    private static Area Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 1e6 m2.");
}
