namespace Boardwright.Planning;

/// <summary>Which stacks may share a charge.</summary>
/// <param name="ThicknessRatioMost">Thickest over thinnest, at most.</param>
/// <param name="MoistureGapMostPercent">Wettest less driest mean moisture content, at most, in points.</param>
public sealed record SharingRules(double ThicknessRatioMost, double MoistureGapMostPercent)
{
    /// <summary>The house rule: thickness within 1.5 times, moisture within 12 points.</summary>
    public static SharingRules Usual { get; } = new(1.5, 12.0);
}
