using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>Heat or work per time.</summary>
/// <remarks>Held in watts. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Power : IComparable<Power>
{
    private Power(double watts) => Watts = watts;

    /// <summary>Watts.</summary>
    public double Watts { get; }

    /// <summary>Kilowatts.</summary>
    public double Kilowatts => Watts / 1000.0;

    /// <summary>British thermal units per hour.</summary>
    public double BritishThermalUnitsPerHour => Watts / 0.29307107017222;

    /// <summary>From watts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e9 W.</exception>
    public static Power FromWatts(double watts) => Checked(watts, watts, nameof(watts));

    /// <summary>From kilowatts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e9 W.</exception>
    public static Power FromKilowatts(double kilowatts) => Checked(kilowatts * 1000.0, kilowatts, nameof(kilowatts));

    /// <summary>From british thermal units per hour.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e9 W.</exception>
    public static Power FromBritishThermalUnitsPerHour(double britishThermalUnitsPerHour) => Checked(britishThermalUnitsPerHour * 0.29307107017222, britishThermalUnitsPerHour, nameof(britishThermalUnitsPerHour));

    /// <summary>True when a Watts value lies inside the accepted range (0 to 1e9 W).</summary>
    public static bool Accepts(double watts) => watts is >= 0.0 and <= 1e9;

    /// <summary>Sum.</summary>
    public static Power operator +(Power left, Power right) => new(left.Watts + right.Watts);

    /// <summary>Difference; the caller keeps it inside the accepted range.</summary>
    public static Power operator -(Power left, Power right) => new(left.Watts - right.Watts);

    /// <summary>Scaled by a plain number.</summary>
    public static Power operator *(Power left, double factor) => new(left.Watts * factor);

    /// <summary>Ratio of two values.</summary>
    public static double operator /(Power left, Power right) => left.Watts / right.Watts;

    /// <inheritdoc/>
    public int CompareTo(Power other) => Watts.CompareTo(other.Watts);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Power left, Power right) => left.Watts < right.Watts;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Power left, Power right) => left.Watts > right.Watts;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Power left, Power right) => left.Watts <= right.Watts;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Power left, Power right) => left.Watts >= right.Watts;

    internal static Power Trusted(double watts)
    {
        Debug.Assert(Accepts(watts), $"Power {watts} Watts");
        return new(watts);
    }

    private static Power Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 1e9 W.");
}
