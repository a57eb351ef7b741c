using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>One cutting on a face.</summary>
/// <param name="FromLeft">Left end of the board to the cutting.</param>
/// <param name="FromEdge">Lower edge of the board to the cutting.</param>
/// <param name="Length">Along the board.</param>
/// <param name="Width">Across the board.</param>
public readonly record struct Cutting(Length FromLeft, Length FromEdge, Length Length, Length Width)
{
    /// <summary>Cutting units: width in inches times length in feet, fractions kept.</summary>
    /// <source id="nhla-rules" locator="paragraph 37"/>
    /// <method page="docs/methods/board-grade.md"/>
    public double Units => Width.Inches * Length.Feet;
}

/// <summary>What a face yields in one of the ways a grade admits.</summary>
/// <param name="Way">The way.</param>
/// <param name="Units">Cutting units found.</param>
/// <param name="CeilingUnits">No set of cuttings gives more; equal to <paramref name="Units"/> where the search ended.</param>
/// <param name="RequiredUnits">Cutting units the grade asks.</param>
/// <param name="Cuttings">The cuttings that give them.</param>
public sealed record CuttingYield(GradeYield Way, double Units, double CeilingUnits, double RequiredUnits, IReadOnlyList<Cutting> Cuttings)
{
    // Below the last digit of any size that is written.
    private const double Noise = 1e-6;

    /// <summary>Enough for the grade.</summary>
    public bool IsMet => Units >= RequiredUnits - Noise;

    /// <summary>The units found are the most there are.</summary>
    public bool IsProven => CeilingUnits <= Units + Noise;

    /// <summary>Not enough was found, and it is not shown that there is not enough.</summary>
    public bool IsOpen => !IsMet && CeilingUnits >= RequiredUnits - Noise;

    /// <summary>Units that are missing.</summary>
    public double ShortUnits => Math.Max(0.0, RequiredUnits - Units);
}
