namespace Boardwright.Quantities;

/// <summary>Rough thickness as the trade names it: a count of quarters of an inch. 4/4 is one inch.</summary>
/// <remarks>A name, not a measurement: rough 4/4 may be sawn at 1-1/8 in. Accepted: 1/4 to 48/4. The default value is not a thickness.</remarks>
public readonly record struct NominalThickness : IComparable<NominalThickness>
{
    private NominalThickness(int quarters) => Quarters = quarters;

    /// <summary>Quarters of an inch.</summary>
    public int Quarters { get; }

    /// <summary>Nominal inches: quarters over four.</summary>
    public double Inches => Quarters / 4.0;

    /// <summary>The nominal inches as a length.</summary>
    public Length Length => Length.FromInches(Inches);

    /// <summary>From quarters of an inch.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 48 quarters.</exception>
    public static NominalThickness FromQuarters(int quarters) => quarters is >= 1 and <= 48
        ? new(quarters)
        : throw new ArgumentOutOfRangeException(nameof(quarters), quarters, "Accepted: 1/4 to 48/4.");

    /// <summary>Compares two values.</summary>
    public static bool operator <(NominalThickness left, NominalThickness right) => left.Quarters < right.Quarters;

    /// <summary>Compares two values.</summary>
    public static bool operator >(NominalThickness left, NominalThickness right) => left.Quarters > right.Quarters;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(NominalThickness left, NominalThickness right) => left.Quarters <= right.Quarters;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(NominalThickness left, NominalThickness right) => left.Quarters >= right.Quarters;

    /// <inheritdoc/>
    public int CompareTo(NominalThickness other) => Quarters.CompareTo(other.Quarters);

    /// <summary>As the trade writes it, for example 5/4.</summary>
    public override string ToString() => $"{Quarters}/4";
}
