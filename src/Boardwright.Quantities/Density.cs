using System.Diagnostics;

namespace Boardwright.Quantities;

/// <summary>Mass per volume. Say which: green, dry, basic.</summary>
/// <remarks>Held in kilograms per cubic metre. The default value is the zero value. Equality is exact.</remarks>
public readonly record struct Density : IComparable<Density>
{
    private Density(double kilogramsPerCubicMetre) => KilogramsPerCubicMetre = kilogramsPerCubicMetre;

    /// <summary>Kilograms per cubic metre.</summary>
    public double KilogramsPerCubicMetre { get; }

    /// <summary>Grams per cubic centimetre (also kilograms per litre).</summary>
    public double GramsPerCubicCentimetre => KilogramsPerCubicMetre / 1000.0;

    /// <summary>Pounds per cubic foot.</summary>
    public double PoundsPerCubicFoot => KilogramsPerCubicMetre / 16.018463373960142;

    /// <summary>From kilograms per cubic metre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 30000 kg/m3.</exception>
    public static Density FromKilogramsPerCubicMetre(double kilogramsPerCubicMetre) => Checked(kilogramsPerCubicMetre, kilogramsPerCubicMetre, nameof(kilogramsPerCubicMetre));

    /// <summary>From grams per cubic centimetre (also kilograms per litre).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 30000 kg/m3.</exception>
    public static Density FromGramsPerCubicCentimetre(double gramsPerCubicCentimetre) => Checked(gramsPerCubicCentimetre * 1000.0, gramsPerCubicCentimetre, nameof(gramsPerCubicCentimetre));

    /// <summary>From pounds per cubic foot.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 30000 kg/m3.</exception>
    public static Density FromPoundsPerCubicFoot(double poundsPerCubicFoot) => Checked(poundsPerCubicFoot * 16.018463373960142, poundsPerCubicFoot, nameof(poundsPerCubicFoot));

    /// <summary>True when a KilogramsPerCubicMetre value lies inside the accepted range (0 to 30000 kg/m3).</summary>
    public static bool Accepts(double kilogramsPerCubicMetre) => kilogramsPerCubicMetre is >= 0.0 and <= 30000.0;


    /// <inheritdoc/>
    public int CompareTo(Density other) => KilogramsPerCubicMetre.CompareTo(other.KilogramsPerCubicMetre);

    /// <summary>Compares two values.</summary>
    public static bool operator <(Density left, Density right) => left.KilogramsPerCubicMetre < right.KilogramsPerCubicMetre;

    /// <summary>Compares two values.</summary>
    public static bool operator >(Density left, Density right) => left.KilogramsPerCubicMetre > right.KilogramsPerCubicMetre;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(Density left, Density right) => left.KilogramsPerCubicMetre <= right.KilogramsPerCubicMetre;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(Density left, Density right) => left.KilogramsPerCubicMetre >= right.KilogramsPerCubicMetre;

    internal static Density Trusted(double kilogramsPerCubicMetre)
    {
        Debug.Assert(Accepts(kilogramsPerCubicMetre), $"Density {kilogramsPerCubicMetre} KilogramsPerCubicMetre");
        return new(kilogramsPerCubicMetre);
    }

    private static Density Checked(double canonical, double given, string parameter) => Accepts(canonical)
        ? new(canonical)
        : throw new ArgumentOutOfRangeException(parameter, given, "Accepted: 0 to 30000 kg/m3.");
}
