namespace Boardwright.Quantities;

/// <summary>A count of board feet under the rule that produced it; never a solid volume.</summary>
/// <remarks>
/// One board foot is 1 ft by 1 ft by 1 in of nominal thickness. There is no conversion to <see cref="Volume"/> here:
/// nominal footage and real wood differ, and log rules differ from each other. <see cref="NominalVolume"/> says what it means.
/// Accepted: 0 to 1e9. The default value is zero. Equality is exact.
/// </remarks>
public readonly record struct BoardFeet : IComparable<BoardFeet>
{
    /// <summary>Cubic metres of nominal wood in one board foot: 1 ft x 1 ft x 1 in, exactly.</summary>
    public const double CubicMetresNominal = 0.3048 * 0.3048 * 0.0254;

    private BoardFeet(double count) => Count = count;

    /// <summary>Number of board feet.</summary>
    public double Count { get; }

    /// <summary>The volume the footage stands for if every board had exactly its nominal thickness.</summary>
    public Volume NominalVolume => Volume.FromCubicMetres(Count * CubicMetresNominal);

    /// <summary>From a count.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1e9.</exception>
    public static BoardFeet From(double count) => count is >= 0.0 and <= 1e9
        ? new(count)
        : throw new ArgumentOutOfRangeException(nameof(count), count, "Accepted: 0 to 1e9 board feet.");

    /// <summary>Sum.</summary>
    public static BoardFeet operator +(BoardFeet left, BoardFeet right) => new(left.Count + right.Count);

    /// <summary>Compares two values.</summary>
    public static bool operator <(BoardFeet left, BoardFeet right) => left.Count < right.Count;

    /// <summary>Compares two values.</summary>
    public static bool operator >(BoardFeet left, BoardFeet right) => left.Count > right.Count;

    /// <summary>Compares two values.</summary>
    public static bool operator <=(BoardFeet left, BoardFeet right) => left.Count <= right.Count;

    /// <summary>Compares two values.</summary>
    public static bool operator >=(BoardFeet left, BoardFeet right) => left.Count >= right.Count;

    /// <inheritdoc/>
    public int CompareTo(BoardFeet other) => Count.CompareTo(other.Count);
}
