using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Sawing;

/// <summary>One board of a tally, as it was read from the rule or the tape.</summary>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Width">Width.</param>
/// <param name="Length">Length.</param>
public sealed record TalliedBoard(NominalThickness Thickness, Length Width, Length Length)
{
    // A sixty-fourth of an inch is 0.4 mm; what differs by less than this is the same reading.
    private const double SameMetres = 1e-5;

    /// <summary>Species; null where the tally does not say.</summary>
    public Species? Species { get; init; }

    /// <summary>Grade; null where the tally does not say.</summary>
    public string? Grade { get; init; }

    /// <summary>How many of thickness, width, length, species and grade differ.</summary>
    public int Differences(TalliedBoard other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return (Thickness == other.Thickness ? 0 : 1) + (Same(Width, other.Width) ? 0 : 1) + (Same(Length, other.Length) ? 0 : 1)
            + (Equals(Species, other.Species) ? 0 : 1) + (string.Equals(Grade, other.Grade, StringComparison.OrdinalIgnoreCase) ? 0 : 1);
    }

    private static bool Same(Length left, Length right) => Math.Abs(left.Metres - right.Metres) < SameMetres;
}
