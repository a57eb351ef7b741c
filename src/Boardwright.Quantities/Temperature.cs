using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>A point on the temperature scale, of air or wood; a rise or fall is a <see cref="TemperatureDifference"/>.</summary>
/// <remarks>Held in kelvins. Accepted: absolute zero to 2000 K. The default value is absolute zero. Equality is exact.</remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    private const double IcePoint = 273.15;

    private Temperature(double kelvins) => Kelvins = kelvins;

    /// <summary>Kelvins.</summary>
    public double Kelvins { get; }

    /// <summary>Degrees Celsius.</summary>
    public double Celsius => Kelvins - IcePoint;

    /// <summary>Degrees Fahrenheit.</summary>
    public double Fahrenheit => (Kelvins - IcePoint) * 1.8 + 32.0;

    /// <summary>From kelvins.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 2000 K.</exception>
    public static Temperature FromKelvins(double kelvins) => Checked(kelvins, kelvins, nameof(kelvins));

    /// <summary>From degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 2000 K.</exception>
    public static Temperature FromCelsius(double celsius) => Checked(celsius + IcePoint, celsius, nameof(celsius));

    /// <summary>From degrees Fahrenheit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 2000 K.</exception>
    public static Temperature FromFahrenheit(double fahrenheit) =>
        Checked((fahrenheit - 32.0) / 1.8 + IcePoint, fahrenheit, nameof(fahrenheit));

    /// <summary>True when a value in kelvins lies inside the accepted range (0 to 2000 K).</summary>
    public static bool Accepts(double kelvins) => kelvins is >= 0.0 and <= 2000.0;

    /// <summary>A temperature moved by a difference.</summary>
    public static Temperature operator +(Temperature point, TemperatureDifference difference) => Trusted(point.Kelvins + difference.Kelvins);

    /// <summary>A temperature moved down by a difference.</summary>
    public static Temperature operator -(Temperature point, TemperatureDifference difference) => Trusted(point.Kelvins - difference.Kelvins);

    /// <summary>The difference of two temperatures.</summary>
    public static TemperatureDifference operator -(Temperature left, Temperature right) => TemperatureDifference.FromKelvins(left.Kelvins - right.Kelvins);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Temperature left, Temperature right) => left.Kelvins < right.Kelvins;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Temperature left, Temperature right) => left.Kelvins > right.Kelvins;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left.Kelvins <= right.Kelvins;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left.Kelvins >= right.Kelvins;

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Kelvins.CompareTo(other.Kelvins);

    internal static Temperature Trusted(double kelvins)
    {
        Debug.Assert(Accepts(kelvins), $"Temperature {kelvins} K");
        return new(kelvins);
    }

    private static Temperature Checked(double kelvins, double given, string parameter) => Accepts(kelvins)
        ? new(kelvins)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 2000 K (-273.15 to 1726.85 C).");
}
