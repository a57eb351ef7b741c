namespace Boardwright.Sawing;

/// <summary>Ontario Scalers' Rule of 1952.</summary>
/// <remarks>Equation: (0.55 D² - 1.2 D) L/12 board feet, D in inches, L in feet; to the board foot, halves up. Printed for 4 to 40 in and 8 to 18 ft.</remarks>
/// <source id="ontario-scaling-manual" locator="rule of 1952, from memory"/>
/// <method page="docs/methods/log-scale.md"/>
public static class OntarioRule
{
    /// <summary>Board feet before rounding.</summary>
    public static double BoardFeet(double diameterIn, double lengthFt) =>
        Math.Max(0.0, (0.55 * diameterIn - 1.2) * diameterIn) * lengthFt / 12.0;
}
