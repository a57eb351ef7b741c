using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>A length of time in the physics, apart from calendar days.</summary>
/// <remarks>Held in seconds. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Elapsed : IComparable<Elapsed>
{
    private Elapsed(double seconds) => Seconds = seconds;

    /// <summary>Seconds.</summary>
    public double Seconds { get; }

    /// <summary>Minutes.</summary>
    public double Minutes => Seconds / 60.0;

    /// <summary>Hours.</summary>
    public double Hours => Seconds / 3600.0;

    /// <summary>Days of 24 hours.</summary>
    public double Days => Seconds / 86400.0;

    /// <summary>From seconds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e11 s.</exception>
    public static Elapsed FromSeconds(double seconds) => Checked(seconds, seconds, nameof(seconds));

    /// <summary>From minutes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e11 s.</exception>
    public static Elapsed FromMinutes(double minutes) => Checked(minutes * 60.0, minutes, nameof(minutes));

    /// <summary>From hours.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e11 s.</exception>
    public static Elapsed FromHours(double hours) => Checked(hours * 3600.0, hours, nameof(hours));

    /// <summary>From days of 24 hours.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e11 s.</exception>
    public static Elapsed FromDays(double days) => Checked(days * 86400.0, days, nameof(days));

    /// <summary>True when a Seconds value lies inside the accepted range (0 to 1e11 s).</summary>
    public static bool Accepts(double seconds) => seconds is >= 0.0 and <= 1e11;

    /// <summary>Sum.</summary>
    public static Elapsed operator +(Elapsed left, Elapsed right) => new(left.Seconds + right.Seconds);

    /// <summary>Difference; the caller keeps it inside the accepted range.</summary>
    public static Elapsed operator -(Elapsed left, Elapsed right) => new(left.Seconds - right.Seconds);

    /// <summary>Scaled by a plain number.</summary>
    public static Elapsed operator *(Elapsed left, double factor) => new(left.Seconds * factor);

    /// <summary>Ratio of two values.</summary>
    public static double operator /(Elapsed left, Elapsed right) => left.Seconds / right.Seconds;

    /// <inheritdoc/>
    public int CompareTo(Elapsed other) => Seconds.CompareTo(other.Seconds);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Elapsed left, Elapsed right) => left.Seconds < right.Seconds;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Elapsed left, Elapsed right) => left.Seconds > right.Seconds;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Elapsed left, Elapsed right) => left.Seconds <= right.Seconds;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Elapsed left, Elapsed right) => left.Seconds >= right.Seconds;

    internal static Elapsed Trusted(double seconds)
    {
        Debug.Assert(Accepts(seconds), $"Elapsed {seconds} Seconds");
        return new(seconds);
    }

    private static Elapsed Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 1e11 s.");
}
