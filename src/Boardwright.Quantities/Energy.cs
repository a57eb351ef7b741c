using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>An amount of heat or work.</summary>
/// <remarks>Held in joules. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Energy : IComparable<Energy>
{
    private Energy(double joules) => Joules = joules;

    /// <summary>Joules.</summary>
    public double Joules { get; }

    /// <summary>Kilojoules.</summary>
    public double Kilojoules => Joules / 1000.0;

    /// <summary>Kilowatt-hours.</summary>
    public double KilowattHours => Joules / 3600000.0;

    /// <summary>British thermal units (International Table).</summary>
    public double BritishThermalUnits => Joules / 1055.05585262;

    /// <summary>From joules.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e15 J.</exception>
    public static Energy FromJoules(double joules) => Checked(joules, joules, nameof(joules));

    /// <summary>From kilojoules.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e15 J.</exception>
    public static Energy FromKilojoules(double kilojoules) => Checked(kilojoules * 1000.0, kilojoules, nameof(kilojoules));

    /// <summary>From kilowatt-hours.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e15 J.</exception>
    public static Energy FromKilowattHours(double kilowattHours) => Checked(kilowattHours * 3600000.0, kilowattHours, nameof(kilowattHours));

    /// <summary>From british thermal units (International Table).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e15 J.</exception>
    public static Energy FromBritishThermalUnits(double britishThermalUnits) => Checked(britishThermalUnits * 1055.05585262, britishThermalUnits, nameof(britishThermalUnits));

    /// <summary>True when a Joules value lies inside the accepted range (0 to 1e15 J).</summary>
    public static bool Accepts(double joules) => joules is >= 0.0 and <= 1e15;

    /// <summary>Sum.</summary>
    public static Energy operator +(Energy left, Energy right) => new(left.Joules + right.Joules);

    /// <summary>Difference; the caller keeps it inside the accepted range.</summary>
    public static Energy operator -(Energy left, Energy right) => new(left.Joules - right.Joules);

    /// <summary>Scaled by a plain number.</summary>
    public static Energy operator *(Energy left, double factor) => new(left.Joules * factor);

    /// <summary>Ratio of two values.</summary>
    public static double operator /(Energy left, Energy right) => left.Joules / right.Joules;

    /// <inheritdoc/>
    public int CompareTo(Energy other) => Joules.CompareTo(other.Joules);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Energy left, Energy right) => left.Joules < right.Joules;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Energy left, Energy right) => left.Joules > right.Joules;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Energy left, Energy right) => left.Joules <= right.Joules;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Energy left, Energy right) => left.Joules >= right.Joules;

    internal static Energy Trusted(double joules)
    {
        Debug.Assert(Accepts(joules), $"Energy {joules} Joules");
        return new(joules);
    }

    private static Energy Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 1e15 J.");
}
